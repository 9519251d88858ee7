package ribband.measure;

import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;

/**
 * A night of work, which belongs to the day on which it began: whoever works past midnight writes
 * it to the evening before.
 */
public final class Night {
  private static final LocalTime ENDS = LocalTime.of(4, 0);

  private Night() {}

  /** The day whose night it is at a moment of the builder's own clock. */
  public static LocalDate at(LocalDateTime moment) {
    LocalDate day = moment.toLocalDate();
    return moment.toLocalTime().isBefore(ENDS) ? day.minusDays(1) : day;
  }

  /** The first moment after a day's night. */
  public static LocalDateTime endOf(LocalDate day) {
    return day.plusDays(1).atTime(ENDS);
  }
}
