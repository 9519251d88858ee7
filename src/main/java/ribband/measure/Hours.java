package ribband.measure;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.math.RoundingMode;
import java.util.Collection;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * A length of working time in whole seconds.
 *
 * @param seconds 0 or more
 */
public record Hours(long seconds) implements Comparable<Hours> {
  public static final Hours ZERO = new Hours(0);

  private static final String WRITE = "write 2:45, 2.75 or 2 3/4";
  private static final BigDecimal SECONDS_AN_HOUR = BigDecimal.valueOf(3600);
  private static final Pattern CLOCKED = Pattern.compile("([0-9]{1,4}):([0-9]{2})");
  private static final Pattern SPOKEN =
      Pattern.compile(
          "([0-9]{1,4}) ?(?:h|hr|hrs|hour|hours) ?([0-9]{2}|[0-9](?= ?m))"
              + " ?(?:m|min|mins|minutes)?");
  private static final Pattern MINUTES =
      Pattern.compile("([0-9]{1,5}) ?(?:m|min|mins|minute|minutes)");
  private static final Pattern UNIT = Pattern.compile(" ?(?:h|hr|hrs|hour|hours)$");
  private static final Pattern DECIMAL = Pattern.compile("([0-9]{1,4})[.,]([0-9]+)");

  public Hours {
    if (seconds < 0) {
      throw new IllegalArgumentException("negative hours: " + seconds + " s");
    }
  }

  public static Hours ofMinutes(long minutes) {
    return new Hours(Math.multiplyExact(minutes, 60L));
  }

  /**
   * Reads a length of time.
   *
   * <p>spec: written {@code 2}, {@code 2.75}, {@code 2,75}, {@code 2:45}, {@code 2h45}, {@code
   * 0h05}, {@code 2h}, {@code 45m}, {@code 45 min}, {@code 1.5 h}, {@code 2 3/4}, {@code 3/4},
   * {@code 2¾}, {@code ¾}; a decimal has up to 4 places and is read to the nearest second.
   */
  public static Hours read(String text) throws Unreadable {
    String plain = text.strip().toLowerCase(Locale.ROOT);
    if (plain.startsWith("-") || plain.startsWith("−")) {
      throw new Unreadable("is below zero", "hours only add up, " + WRITE);
    }
    Matcher clocked = CLOCKED.matcher(plain);
    if (clocked.matches()) {
      return ofHoursAndMinutes(clocked.group(1), clocked.group(2));
    }
    Matcher spoken = SPOKEN.matcher(plain);
    if (spoken.matches()) {
      return ofHoursAndMinutes(spoken.group(1), spoken.group(2));
    }
    Matcher minutes = MINUTES.matcher(plain);
    if (minutes.matches()) {
      return ofMinutes(Long.parseLong(minutes.group(1)));
    }
    return ofNumber(UNIT.matcher(plain).replaceFirst(""), plain);
  }

  private static Hours ofHoursAndMinutes(String hours, String minutes) throws Unreadable {
    long whole = Long.parseLong(hours);
    long rest = Long.parseLong(minutes);
    if (rest > 59 && whole < 9999) {
      throw new Unreadable(
          "has " + rest + " minutes in its hour",
          "minutes go up to 59, write " + (whole + 1) + ":" + twoDigits(rest - 60));
    }
    if (rest > 59) {
      throw tooMany();
    }
    return ofMinutes(whole * 60 + rest);
  }

  private static Hours ofNumber(String number, String plain) throws Unreadable {
    Matcher decimal = DECIMAL.matcher(number);
    if (decimal.matches() && decimal.group(2).length() > 4) {
      throw new Unreadable("has more than 4 decimal places", "write it to the minute, as 2:45");
    }
    Optional<BigFraction> read = Numbers.read(number.replace(',', '.'));
    if (read.isEmpty() || number.contains(",") && !decimal.matches()) {
      throw refusal(plain);
    }
    BigFraction seconds = read.get().multiply(3600);
    if (seconds.compareTo(BigFraction.of(BigInteger.valueOf(36_000_000L))) > 0) {
      throw tooMany();
    }
    return new Hours(seconds.bigDecimalValue(0, RoundingMode.HALF_UP).longValueExact());
  }

  private static Unreadable tooMany() {
    return new Unreadable("is more than 10,000 hours", WRITE);
  }

  /** What is wrong with a text that is no length of time, and what it most likely means. */
  private static Unreadable refusal(String plain) {
    if (plain.matches("[0-9]{1,4}[:h][0-9]")) {
      return new Unreadable("has one digit of minutes", "write " + bothMinutes(plain));
    }
    if (plain.matches("[0-9]{1,4}:[0-5][0-9]:[0-9]{2}")) {
      return new Unreadable("has seconds", "write " + plain.substring(0, plain.lastIndexOf(':')));
    }
    if (plain.matches("0+[1-9][0-9]{0,3}")) {
      String bare = plain.replaceFirst("^0+", "");
      boolean asMinutes = bare.length() < 2 || bare.matches("[1-5][0-9]");
      return new Unreadable(
          "has a zero in front",
          "write " + bare + (asMinutes ? ", or 0:" + twoDigits(bare) + " for minutes" : ""));
    }
    if (plain.matches("\\.[0-9]{1,4}")) {
      return new Unreadable("has no figure before the point", "write 0" + plain);
    }
    if (plain.matches("\\+ ?[0-9].*") && reads(plain.substring(1))) {
      return new Unreadable("has a sign in front", "write " + plain.substring(1).strip());
    }
    return new Unreadable("is not a length of time", WRITE);
  }

  private static boolean reads(String text) {
    try {
      read(text);
      return true;
    } catch (Unreadable e) {
      return false;
    }
  }

  /** {@code 2:5} may be 2:05 or 2:50; {@code 2:7} only 2:07. */
  private static String bothMinutes(String plain) {
    String hours = plain.substring(0, plain.length() - 2);
    char minute = plain.charAt(plain.length() - 1);
    String single = hours + ":0" + minute;
    return minute > '5' || minute == '0'
        ? single
        : single + " or, for tens of minutes, " + hours + ":" + minute + "0";
  }

  private static String twoDigits(String figures) {
    return figures.length() == 1 ? "0" + figures : figures;
  }

  private static String twoDigits(long number) {
    return twoDigits(Long.toString(number));
  }

  /** The sum of all, {@link #ZERO} of none. */
  public static Hours sum(Collection<Hours> all) {
    return all.stream().reduce(ZERO, Hours::plus);
  }

  public Hours plus(Hours other) {
    return new Hours(Math.addExact(seconds, other.seconds));
  }

  public boolean isZero() {
    return seconds == 0;
  }

  /** For data files: decimal hours, at most 4 places, rounded half up, no zeros at the end. */
  public String decimal() {
    BigDecimal hours = BigDecimal.valueOf(seconds).divide(SECONDS_AN_HOUR, 4, RoundingMode.HALF_UP);
    return hours.signum() == 0 ? "0" : hours.stripTrailingZeros().toPlainString();
  }

  @Override
  public int compareTo(Hours other) {
    return Long.compare(seconds, other.seconds);
  }
}
