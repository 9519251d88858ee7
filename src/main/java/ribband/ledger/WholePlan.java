package ribband.ledger;

import java.util.List;
import java.util.Optional;
import ribband.measure.Hours;
import ribband.measure.Money;

/**
 * The plans of all phases added up; a sum says something only where every phase with a figure has
 * its plan.
 *
 * @param hours empty where hours were worked in a phase without a plan of them
 * @param cost likewise of money
 * @param partHours whether some phases have a plan of hours, and others need one
 * @param partCost likewise of money
 */
public record WholePlan(
    Optional<Hours> hours, Optional<Money> cost, boolean partHours, boolean partCost) {
  public static WholePlan of(List<PhaseRow> rows) {
    List<Hours> hours = rows.stream().flatMap(row -> row.phase().hours().stream()).toList();
    List<Money> costs = rows.stream().flatMap(row -> row.phase().cost().stream()).toList();
    boolean allHours =
        rows.stream().allMatch(row -> row.phase().hours().isPresent() || row.hours().isZero());
    boolean allCosts =
        rows.stream().allMatch(row -> row.phase().cost().isPresent() || row.cost().isZero());
    return new WholePlan(
        hours.isEmpty() || !allHours ? Optional.empty() : Optional.of(Hours.sum(hours)),
        costs.isEmpty() || !allCosts ? Optional.empty() : Optional.of(Money.sum(costs)),
        !hours.isEmpty() && !allHours,
        !costs.isEmpty() && !allCosts);
  }
}
