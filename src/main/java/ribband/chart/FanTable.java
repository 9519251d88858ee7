package ribband.chart;

import java.time.YearMonth;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;
import ribband.measure.Saying;

/** The figures of a fan: what is left at the last day drawn of each month. */
record FanTable(
    List<Fan.Day> days,
    Fan.Done done,
    List<Fan.ColdMonth> cold,
    List<Fan.Rest> rests,
    Yardstick yardstick) {
  private static final String NONE = "–";

  Table table() {
    Map<YearMonth, Fan.Day> last = new TreeMap<>();
    days.forEach(day -> last.put(YearMonth.from(day.date()), day));
    Map<YearMonth, String> names =
        cold.stream().collect(Collectors.toMap(Fan.ColdMonth::month, Fan.ColdMonth::what));
    List<Table.Row> rows = new ArrayList<>();
    YearMonth end = YearMonth.from(done.p95());
    for (YearMonth m = YearMonth.from(days.get(0).date()); !m.isAfter(end); m = m.plusMonths(1)) {
      Optional<Fan.Day> day = Optional.ofNullable(last.get(m));
      Optional<String> what = Optional.ofNullable(names.get(m));
      // A drawing of many years has no day in some months; what is left then is not told.
      if (day.isPresent() || what.isPresent() || idleDays(m) > 0) {
        rows.add(Table.Row.of(MonthNames.full(m), cells(day, what.orElse(NONE), idle(m))));
      }
    }
    List<String> heads =
        heads(List.of("Left, P50", "Left, P80", "Left, P95"), "Too cold for", "Days without work");
    List<String> dates =
        heads(
            List.of(Saying.day(done.p50()), Saying.day(done.p80()), Saying.day(done.p95())),
            NONE,
            NONE);
    return new Table("Month", heads, rows, List.of(Table.Row.of("Nothing left by", dates)));
  }

  private List<String> cells(Optional<Fan.Day> day, String what, String idle) {
    return heads(
        day.map(
                d ->
                    List.of(
                        yardstick.figure(d.p50()),
                        yardstick.figure(d.p80()),
                        yardstick.figure(d.p95())))
            .orElse(List.of(NONE, NONE, NONE)),
        what,
        idle);
  }

  private String idle(YearMonth month) {
    long days = idleDays(month);
    return days == 0 ? NONE : "" + days;
  }

  private long idleDays(YearMonth month) {
    return month
        .atDay(1)
        .datesUntil(month.plusMonths(1).atDay(1))
        .filter(
            day -> rests.stream().anyMatch(r -> !day.isBefore(r.from()) && !day.isAfter(r.to())))
        .count();
  }

  /** With a column about the cold where any month is, and one about rests where there are any. */
  private List<String> heads(List<String> cells, String what, String idle) {
    List<String> all = new ArrayList<>(cells);
    if (!cold.isEmpty()) {
      all.add(what);
    }
    if (!rests.isEmpty()) {
      all.add(idle);
    }
    return all;
  }
}
