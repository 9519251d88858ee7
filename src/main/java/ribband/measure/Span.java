package ribband.measure;

import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A length of elapsed time, such as a cure or a lead time; a day is 24 hours.
 *
 * @param seconds more than 0
 */
public record Span(long seconds) implements Comparable<Span> {
  private static final Pattern PART =
      Pattern.compile(
          "("
              + Numbers.PATTERN
              + ") ?(minutes|minute|mins|min|m|hours|hour|hrs|hr|h|days|day|d|weeks|week)"
              + "(?= |[0-9]|$) ?");
  private static final long LONGEST = 3_653 * 86_400L;
  private static final String WRITE = "write 20 min, 8 h or 7 days";

  public Span {
    if (seconds <= 0) {
      throw new IllegalArgumentException("span of " + seconds + " s");
    }
  }

  /** Reads {@code 20 min}, {@code 8 h}, {@code 1 h 30 min}, {@code 7 days}, {@code 2 weeks}. */
  public static Span read(String text) throws Unreadable {
    String plain = text.strip().toLowerCase(Locale.ROOT).replaceAll("\\s+", " ");
    Matcher part = PART.matcher(plain);
    long seconds = 0;
    int end = 0;
    while (part.find() && part.start() == end) {
      seconds += secondsOf(part.group(1), part.group(2));
      end = part.end();
    }
    if (end != plain.length() || plain.isEmpty()) {
      throw plain.matches("[0-9./ ]+")
          ? new Unreadable("has no unit of time", "write " + plain + " min, h or days")
          : new Unreadable("is not a length of time", WRITE);
    }
    if (seconds <= 0) {
      throw new Unreadable("is no time at all", WRITE);
    }
    if (seconds > LONGEST) {
      throw new Unreadable("is more than ten years", WRITE);
    }
    return new Span(seconds);
  }

  private static long secondsOf(String number, String unit) throws Unreadable {
    long each =
        switch (unit.charAt(0)) {
          case 'm' -> 60;
          case 'h' -> 3600;
          case 'd' -> 86_400;
          default -> 7 * 86_400;
        };
    return Numbers.read(number)
        .orElseThrow(() -> new Unreadable("is not a length of time", WRITE))
        .multiply(each)
        .longValue();
  }

  /** As a deadline: to the minute before, a minute at least. */
  public Span minutesBefore() {
    return new Span(Math.max(60, Math.floorDiv(seconds, 60L) * 60));
  }

  /** As a wait: to the minute after. */
  public Span minutesAfter() {
    return new Span(-Math.floorDiv(-seconds, 60L) * 60);
  }

  @Override
  public int compareTo(Span other) {
    return Long.compare(seconds, other.seconds);
  }
}
