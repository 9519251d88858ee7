package ribband.spoken;

import java.util.Objects;
import ribband.measure.Money;

/**
 * Money that was said.
 *
 * @param what it went for, as typed; may be empty
 * @param amount below zero where it came back
 */
public record Spent(String what, Money amount) {
  public Spent {
    Objects.requireNonNull(what);
    Objects.requireNonNull(amount);
  }
}
