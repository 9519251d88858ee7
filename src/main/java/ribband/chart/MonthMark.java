package ribband.chart;

import java.time.YearMonth;
import java.util.ArrayList;
import java.util.List;
import java.util.function.ToIntFunction;
import ribband.measure.Saying;

/**
 * A mark under the plot at a month.
 *
 * @param name the month, or the year where only years are marked
 * @param year under the month where it is told; else empty
 */
public record MonthMark(int x, String name, String year) {
  private static final int MONTH_ROOM = 32;
  private static final int YEAR_ROOM = 42;

  /**
   * As many marks as there is room for: every month, every quarter, every year, every few years.
   *
   * @param room the width of one month
   * @param place where a month's mark stands
   */
  static List<MonthMark> along(
      YearMonth first, YearMonth last, double room, ToIntFunction<YearMonth> place) {
    if (room * 3 >= MONTH_ROOM) {
      return months(first, last, room >= MONTH_ROOM ? 1 : 3, room, place);
    }
    int every = 1;
    while (room * 12 * every < YEAR_ROOM) {
      every *= every % 2 == 0 ? 5 : 2;
    }
    return years(first, last, every, place);
  }

  private static List<MonthMark> months(
      YearMonth first, YearMonth last, int every, double room, ToIntFunction<YearMonth> place) {
    List<YearMonth> shown = new ArrayList<>();
    for (YearMonth month = first; !month.isAfter(last); month = month.plusMonths(1)) {
      if ((month.getMonthValue() - 1) % every == 0) {
        shown.add(month);
      }
    }
    if (shown.isEmpty()) {
      shown.add(first);
    }
    List<MonthMark> marks = new ArrayList<>();
    for (YearMonth month : shown) {
      boolean newYear = month.getMonthValue() == 1;
      boolean crowded = every * room < YEAR_ROOM && shown.contains(month.plusMonths(every));
      boolean told =
          newYear
              || month.equals(shown.get(0))
                  && !(crowded && month.plusMonths(every).getMonthValue() == 1);
      marks.add(
          new MonthMark(
              place.applyAsInt(month), Saying.shortMonth(month), told ? "" + month.getYear() : ""));
    }
    return marks;
  }

  private static List<MonthMark> years(
      YearMonth first, YearMonth last, int every, ToIntFunction<YearMonth> place) {
    List<MonthMark> marks = new ArrayList<>();
    for (int year = first.getYear(); year <= last.getYear(); year++) {
      YearMonth january = YearMonth.of(year, 1);
      if (!january.isBefore(first) && !january.isAfter(last) && year % every == 0) {
        marks.add(new MonthMark(place.applyAsInt(january), "" + year, ""));
      }
    }
    return marks;
  }
}
