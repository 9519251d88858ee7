package ribband.plan;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.List;
import ribband.journal.Away;

/**
 * The ISO weeks in which nobody builds: those with more days away than at home.
 *
 * @param ranges days on which nobody builds
 */
record AwayWeeks(List<Away> ranges) {
  private static final int DAYS = 7;
  private static final int MOST = 4;

  AwayWeeks {
    ranges = List.copyOf(ranges);
  }

  boolean has(LocalDate monday) {
    int days = 0;
    for (Away range : ranges) {
      long first = Math.max(0, ChronoUnit.DAYS.between(monday, range.from()));
      long last = Math.min(DAYS - 1, ChronoUnit.DAYS.between(monday, range.to()));
      for (long day = first; day <= last; day++) {
        days |= 1 << day;
      }
    }
    return Integer.bitCount(days) >= MOST;
  }
}
