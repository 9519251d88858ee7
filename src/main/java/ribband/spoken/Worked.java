package ribband.spoken;

import java.util.Objects;
import java.util.Optional;
import ribband.measure.Hours;

/**
 * Hours that were said.
 *
 * @param phase the id of the phase they went to; empty where the line names no phase at all
 */
public record Worked(Optional<String> phase, Hours hours) {
  public Worked {
    Objects.requireNonNull(phase);
    Objects.requireNonNull(hours);
  }
}
