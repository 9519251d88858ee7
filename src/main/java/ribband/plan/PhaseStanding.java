package ribband.plan;

import java.util.Objects;
import java.util.Optional;
import ribband.journal.Phase;
import ribband.measure.Hours;
import ribband.measure.Money;

/**
 * One phase against its plan.
 *
 * @param phase with the hours and the money planned, where they are
 * @param hours worked, carried ones included
 * @param cost spent, carried money included
 */
public record PhaseStanding(Phase phase, Hours hours, Money cost, Complete complete) {
  public PhaseStanding {
    Objects.requireNonNull(phase);
    Objects.requireNonNull(hours);
    Objects.requireNonNull(cost);
    Objects.requireNonNull(complete);
  }

  /** The hours planned; a plan of no hours is none, as nothing can be held against it. */
  public Optional<Hours> planned() {
    return phase.hours().filter(hours -> !hours.isZero());
  }

  /** The phase in earned value; empty where no hours are planned. */
  public Optional<EarnedValue> earned() {
    return planned()
        .flatMap(plan -> complete.share().map(share -> new EarnedValue(plan, hours, share)));
  }

  /** Whether it is done by pieces or by a note, and not by a guess. */
  public boolean isDone() {
    return complete.isWhole() && complete.basis() != Complete.Basis.ASSUMED;
  }
}
