package ribband.past;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import ribband.measure.Hours;
import ribband.measure.Unreadable;

/** Reads lengths of time as spreadsheets write them. */
final class HoursCell {
  static final Hours MOST_A_SESSION = Hours.ofMinutes(24 * 60L);

  private static final Pattern WITH_SECONDS =
      Pattern.compile("([0-9]{1,4}):([0-5][0-9]):([0-5][0-9])(?:[.,]0+)?");
  private static final Pattern OF_THE_DAY =
      Pattern.compile("[0-9]{1,2}:[0-9]{2}(?::[0-9]{2})? ?[AaPp]\\.?[Mm]\\.?");
  private static final Pattern LONG_DECIMAL = Pattern.compile("[0-9]{1,4}[.,][0-9]{5,}");
  private static final Pattern BARE = Pattern.compile("[0-9]{1,5}(?:[.,][0-9]{1,4})?");

  private HoursCell() {}

  /** What a bare number of a column counts. */
  enum Unit {
    HOURS,
    MINUTES
  }

  static Hours read(String text, Unit unit) throws Unreadable {
    Matcher seconds = WITH_SECONDS.matcher(text);
    if (seconds.matches()) {
      return new Hours(
          Long.parseLong(seconds.group(1)) * 3600
              + Long.parseLong(seconds.group(2)) * 60
              + Long.parseLong(seconds.group(3)));
    }
    if (OF_THE_DAY.matcher(text).matches()) {
      throw new Unreadable("is a time of day", "show the column as hours and minutes, as 2:45");
    }
    if (LONG_DECIMAL.matcher(text).matches()) {
      throw new Unreadable(
          "has more than 4 decimal places",
          "show the column as hours and minutes, as 2:45, or with 4 places");
    }
    boolean bare = BARE.matcher(text).matches();
    return unit == Unit.MINUTES && bare ? ofMinutes(text) : Hours.read(text);
  }

  /** To the nearest second, as hours are. */
  private static Hours ofMinutes(String text) {
    BigDecimal minutes = new BigDecimal(text.replace(',', '.'));
    return new Hours(
        minutes
            .multiply(BigDecimal.valueOf(60))
            .setScale(0, RoundingMode.HALF_UP)
            .longValueExact());
  }

  static void refuseMoreThanADay(Hours hours) throws Unreadable {
    if (hours.compareTo(MOST_A_SESSION) > 0) {
      throw new Unreadable("is more than a day has", "write one row for each night");
    }
  }
}
