package ribband.chart;

import java.time.LocalDate;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.NavigableMap;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * A total that runs on from date to date.
 *
 * @param carried the total before the first date
 * @param after the total at the end of each date on which something was added; not empty
 */
record RunningTotal(long carried, NavigableMap<LocalDate, Long> after) {
  private static final int REST = 28;

  /** The total of steps, at least one, in any order. */
  static RunningTotal of(long carried, Collection<RunningCurve.Step> steps) {
    SortedMap<LocalDate, Long> added = new TreeMap<>();
    steps.forEach(step -> added.merge(step.date(), step.amount(), Math::addExact));
    NavigableMap<LocalDate, Long> after = new TreeMap<>();
    long total = carried;
    for (var day : added.entrySet()) {
      total = Math.addExact(total, day.getValue());
      after.put(day.getKey(), total);
    }
    if (after.isEmpty()) {
      throw new IllegalArgumentException("no steps");
    }
    return new RunningTotal(carried, after);
  }

  LocalDate first() {
    return after.firstKey();
  }

  LocalDate last() {
    return after.lastKey();
  }

  long total() {
    return after.lastEntry().getValue();
  }

  /** The total at the end of a date. */
  long at(LocalDate date) {
    var entry = after.floorEntry(date);
    return entry == null ? carried : entry.getValue();
  }

  long lowest() {
    return after.values().stream().reduce(carried, Math::min);
  }

  long highest() {
    return after.values().stream().reduce(carried, Math::max);
  }

  /** All months from the first date's to the last's. */
  List<YearMonth> months() {
    List<YearMonth> months = new ArrayList<>();
    YearMonth end = YearMonth.from(last());
    for (YearMonth at = YearMonth.from(first()); !at.isAfter(end); at = at.plusMonths(1)) {
      months.add(at);
    }
    return months;
  }

  /**
   * The dates through which a fair curve is drawn: the day before the first, then no two nearer
   * than the spacing, save the last, those kept, and those at which the total falls; a rest of more
   * than four weeks is drawn level.
   *
   * @param spacing days, 1 or more
   */
  List<LocalDate> knots(int spacing, Collection<LocalDate> kept) {
    List<LocalDate> knots = new ArrayList<>();
    LocalDate latest = first().minusDays(1);
    knots.add(latest);
    for (LocalDate date : after.keySet()) {
      LocalDate before = after.lowerKey(date);
      boolean falls = at(date) < at(date.minusDays(1));
      boolean fallsNext = after.higherKey(date) != null && at(after.higherKey(date)) < at(date);
      LocalDate restEnds = date.minusDays(spacing);
      if (before != null && before.plusDays(Math.max(REST, 3L * spacing)).isBefore(date)) {
        if (latest.isBefore(before)) {
          knots.add(before);
        }
        knots.add(restEnds);
        latest = restEnds;
      }
      boolean due = !latest.plusDays(spacing).isAfter(date);
      if (due || falls || fallsNext || date.equals(last()) || kept.contains(date)) {
        knots.add(date);
        latest = date;
      }
    }
    return knots;
  }
}
