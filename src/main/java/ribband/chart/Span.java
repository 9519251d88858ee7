package ribband.chart;

import java.time.LocalDate;
import java.util.List;

/**
 * Something that lasted, under a chart over dates.
 *
 * @param name may be empty
 * @param from its first day
 * @param to its last day, not before the first
 * @param nights days of it that are ticked like stations; may be none
 */
public record Span(String name, LocalDate from, LocalDate to, List<LocalDate> nights) {
  public Span {
    nights = List.copyOf(nights);
    if (to.isBefore(from)) {
      throw new IllegalArgumentException(from + " to " + to);
    }
  }
}
