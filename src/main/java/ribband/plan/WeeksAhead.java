package ribband.plan;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import ribband.journal.Away;

/**
 * The weeks in which work can go on.
 *
 * @param sundays the ends of those weeks, in order; the first is week 1
 */
record WeeksAhead(List<LocalDate> sundays) {
  /** As far as anyone should look. */
  static final int YEARS = 100;

  WeeksAhead {
    sundays = List.copyOf(sundays);
  }

  /** From the first whole ISO week after the as-of date's, {@code away} weeks passed over. */
  static WeeksAhead of(List<Away> away, LocalDate asOf) {
    AwayWeeks awayWeeks = new AwayWeeks(away);
    List<LocalDate> sundays = new ArrayList<>();
    LocalDate end = asOf.plusYears(YEARS);
    LocalDate monday = WeeksWorked.monday(asOf).plusWeeks(1);
    for (; !monday.isAfter(end); monday = monday.plusWeeks(1)) {
      if (!awayWeeks.has(monday)) {
        sundays.add(monday.plusDays(6));
      }
    }
    return new WeeksAhead(sundays);
  }

  int cap() {
    return sundays.size();
  }

  /**
   * The Sunday it ends with.
   *
   * @param week from 1
   */
  LocalDate sunday(long week) {
    return sundays.get((int) week - 1);
  }

  /** The number of the week that ends on a Sunday. */
  int week(LocalDate sunday) {
    return Collections.binarySearch(sundays, sunday) + 1;
  }
}
