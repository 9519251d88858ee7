package ribband.journal;

import java.time.LocalDate;
import java.util.Map;
import java.util.Optional;
import ribband.measure.Hours;
import ribband.measure.Money;
import ribband.measure.Ordered;

/**
 * Work done before the journal began: in the figures to date and per phase, in no month.
 *
 * @param through the last day it covers
 * @param sessions 0 or more
 * @param hours by phase id
 * @param cost by phase id
 */
public record Carried(
    Optional<LocalDate> through, int sessions, Map<String, Hours> hours, Map<String, Money> cost) {
  public static final Carried NOTHING = new Carried(Optional.empty(), 0, Map.of(), Map.of());

  public Carried {
    hours = Ordered.copy(hours);
    cost = Ordered.copy(cost);
  }
}
