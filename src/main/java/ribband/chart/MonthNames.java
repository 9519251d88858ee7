package ribband.chart;

import java.time.YearMonth;
import java.time.temporal.ChronoUnit;
import ribband.measure.Saying;

/** Months as the charts say and count them. */
final class MonthNames {
  private MonthNames() {}

  static String full(YearMonth month) {
    return Saying.month(month);
  }

  static int between(YearMonth first, YearMonth month) {
    return Math.toIntExact(ChronoUnit.MONTHS.between(first, month));
  }
}
