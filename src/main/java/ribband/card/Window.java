package ribband.card;

import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.Objects;
import java.util.Optional;
import ribband.measure.Night;

/**
 * The time in which a picture must have been taken, by the camera's own clock.
 *
 * @param from the first moment; {@link LocalDateTime#MIN} where there is no first
 * @param until the first moment after it
 */
public record Window(LocalDateTime from, LocalDateTime until) {
  public Window {
    Objects.requireNonNull(from);
    Objects.requireNonNull(until);
    if (from.isAfter(until)) {
      throw new IllegalArgumentException("from " + from + " until " + until);
    }
  }

  /**
   * What belongs into tonight's entry: all that was taken since the last one. A night ends at 4 in
   * the morning, so pictures from after midnight go with the evening before; and pictures of the
   * days between two entries go with the later one, as they would be lost otherwise. Where no entry
   * stands before tonight there is no first moment.
   *
   * @param lastEntry the date of the last entry dated before tonight
   * @throws IllegalArgumentException where that is a later date than tonight's
   */
  public static Window since(Optional<LocalDate> lastEntry, LocalDate tonight) {
    return new Window(lastEntry.map(Night::endOf).orElse(LocalDateTime.MIN), Night.endOf(tonight));
  }

  /** Why a moment is outside; empty where it is inside. */
  Optional<Reason> outside(LocalDateTime moment) {
    if (moment.isBefore(from)) {
      return Optional.of(Reason.OLDER);
    }
    return moment.isBefore(until) ? Optional.empty() : Optional.of(Reason.LATER);
  }
}
