package ribband.measure;

import java.time.DayOfWeek;
import java.time.Month;
import java.util.List;

/** English names of months and days: our own, as those of the JDK change between its versions. */
final class CalendarNames {
  private static final List<String> MONTHS =
      List.of(
          "January",
          "February",
          "March",
          "April",
          "May",
          "June",
          "July",
          "August",
          "September",
          "October",
          "November",
          "December");
  private static final List<String> DAYS =
      List.of("Monday", "Tuesday", "Wednesday", "Thursday", "Friday", "Saturday", "Sunday");

  private CalendarNames() {}

  static String of(Month month) {
    return MONTHS.get(month.getValue() - 1);
  }

  static String of(DayOfWeek day) {
    return DAYS.get(day.getValue() - 1);
  }
}
