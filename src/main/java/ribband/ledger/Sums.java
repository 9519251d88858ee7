package ribband.ledger;

import java.util.LinkedHashMap;
import java.util.Map;
import ribband.measure.Hours;
import ribband.measure.Money;
import ribband.measure.Ordered;

/**
 * Hours and money added up, whole and by phase.
 *
 * @param sessions entries with hours
 * @param hours by phase id
 * @param cost by phase id
 */
public record Sums(int sessions, Map<String, Hours> hours, Map<String, Money> cost) {
  public static final Sums NONE = new Sums(0, Map.of(), Map.of());

  public Sums {
    hours = Ordered.copy(hours);
    cost = Ordered.copy(cost);
  }

  public Sums plus(Sums other) {
    if (other.equals(NONE)) {
      return this;
    }
    Map<String, Hours> allHours = new LinkedHashMap<>(hours);
    other.hours.forEach((phase, more) -> allHours.merge(phase, more, Hours::plus));
    Map<String, Money> allCost = new LinkedHashMap<>(cost);
    other.cost.forEach((phase, more) -> allCost.merge(phase, more, Money::plus));
    return new Sums(sessions + other.sessions, allHours, allCost);
  }

  public Hours totalHours() {
    return Hours.sum(hours.values());
  }

  public Money totalCost() {
    return Money.sum(cost.values());
  }

  public Hours hoursOf(String phase) {
    return hours.getOrDefault(phase, Hours.ZERO);
  }

  public Money costOf(String phase) {
    return cost.getOrDefault(phase, Money.ZERO);
  }
}
