package ribband.chart;

import java.time.LocalDate;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.List;

/** Fans at their edges; all figures invented. */
final class FanSheets {
  private static final LocalDate START = LocalDate.of(2026, 11, 25);

  private FanSheets() {}

  static List<Sheets.Sheet> all() {
    return List.of(
        sheet("Fan: forty weeks, two winters", "fan40", 40, 7, 312 * 3600L, "epoxy"),
        sheet("Fan: one week", "fan1", 1, 7, 4 * 3600L, ""),
        sheet("Fan: twenty years", "fan20", 60, 120, 9000 * 3600L, "epoxy"),
        sheet("Fan: huge", "fanhuge", 60, 600, 4_000_000_000_000_000L, "a glue with a long name"),
        new Sheets.Sheet("Fan: all on one day", "fan", oneDay()));
  }

  private static Sheets.Sheet sheet(
      String title, String id, int points, int apart, long all, String cold) {
    List<Fan.Day> days = days(points, apart, all);
    Fan.Done done =
        new Fan.Done(done(days, Fan.Day::p50), done(days, Fan.Day::p80), done(days, Fan.Day::p95));
    return new Sheets.Sheet(
        title,
        "fan",
        Fan.chart(
            Sheets.caption(id), days, done, winters(done.p95(), cold), summers(), Sheets.HOURS));
  }

  /** A fan whose percentiles go down at 13, 11, 10, 9 and 8 tenths of the slowest one's speed. */
  static List<Fan.Day> days(int points, int apart, long all) {
    List<Fan.Day> days = new ArrayList<>();
    days.add(new Fan.Day(START, all, all, all, all, all));
    for (int i = 1; i <= points; i++) {
      LocalDate date = LocalDate.of(2026, 11, 29).plusDays((long) i * apart);
      days.add(
          new Fan.Day(
              date,
              left(all, i, points, 16),
              left(all, i, points, 14),
              left(all, i, points, 12),
              left(all, i, points, 11),
              left(all, i, points, 10)));
    }
    return days;
  }

  private static long left(long all, int i, int points, int tenths) {
    return Math.max(0, all - all / 10 * tenths / points * i - (i == points ? all % 1000 : 0));
  }

  static LocalDate done(List<Fan.Day> days, java.util.function.ToLongFunction<Fan.Day> left) {
    return days.stream()
        .filter(day -> left.applyAsLong(day) == 0)
        .findFirst()
        .orElse(days.get(days.size() - 1))
        .date();
  }

  private static List<Fan.ColdMonth> winters(LocalDate to, String cold) {
    List<Fan.ColdMonth> months = new ArrayList<>();
    YearMonth last = YearMonth.from(to);
    for (YearMonth m = YearMonth.from(START); !m.isAfter(last); m = m.plusMonths(1)) {
      if (!cold.isEmpty() && (m.getMonthValue() < 3 || m.getMonthValue() == 12)) {
        months.add(new Fan.ColdMonth(m, cold));
      }
    }
    return months;
  }

  private static List<Fan.Rest> summers() {
    return List.of(
        new Fan.Rest("nobody builds", LocalDate.of(2026, 12, 20), LocalDate.of(2027, 1, 3)),
        new Fan.Rest("nobody builds", LocalDate.of(2027, 7, 1), LocalDate.of(2027, 7, 20)));
  }

  private static Chart<Fan> oneDay() {
    LocalDate end = LocalDate.of(2027, 3, 7);
    return Fan.chart(
        Sheets.caption("fanone"),
        List.of(new Fan.Day(START, 100, 100, 100, 100, 100), new Fan.Day(end, 0, 0, 0, 0, 0)),
        new Fan.Done(end, end, end),
        List.of(
            new Fan.ColdMonth(YearMonth.of(2027, 1), "epoxy and glue"),
            new Fan.ColdMonth(YearMonth.of(2027, 2), "epoxy")),
        List.of(),
        Sheets.HOURS);
  }
}
