package ribband.chart;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;

/**
 * Where each date stands along a drawing.
 *
 * @param to after {@code from}
 */
record Days(LocalDate from, LocalDate to, int start, int end) {
  private static final int SHORTEST = 28;

  /** From the first day of the first date's month, four weeks at least. */
  static Days of(LocalDate first, LocalDate last, Frame frame) {
    LocalDate from = first.withDayOfMonth(1);
    LocalDate least = from.plusDays(SHORTEST);
    return new Days(from, last.isAfter(least) ? last : least, frame.left(), frame.end());
  }

  double exactly(LocalDate date) {
    long days = ChronoUnit.DAYS.between(from, date);
    return start + (double) (end - start) * days / ChronoUnit.DAYS.between(from, to);
  }

  int at(LocalDate date) {
    return (int) Math.round(exactly(date));
  }

  /** The days that take up a width; at least 1. */
  int across(int width) {
    return Math.max(1, (int) (width * ChronoUnit.DAYS.between(from, to) / (end - start)));
  }

  double aMonth() {
    return (double) (end - start) * 30 / ChronoUnit.DAYS.between(from, to);
  }
}
