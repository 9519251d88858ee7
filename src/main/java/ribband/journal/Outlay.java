package ribband.journal;

import java.util.Objects;
import java.util.Optional;
import ribband.measure.Money;

/**
 * One line of an entry's spending; the lines of an entry add up to its cost.
 *
 * @param phase the phase id it counts for
 * @param amount below zero for money that came back
 * @param purchase what was bought; empty for what is left of the cost beside the items
 */
public record Outlay(String phase, Money amount, Optional<Purchase> purchase) {
  public Outlay {
    Objects.requireNonNull(phase);
    Objects.requireNonNull(amount);
    Objects.requireNonNull(purchase);
  }
}
