package ribband.jobs;

import java.util.Map;
import java.util.Optional;
import ribband.measure.Hours;
import ribband.measure.Ordered;

/**
 * How many nights things take.
 *
 * @param evening how long a night is; unknown, each job takes one
 * @param pieces nights for what is left of a kind, by folded name; 1 or more
 * @param cures nights that a kind's last pieces stay in clamps beside the one they were glued in,
 *     by folded name; 0 where the next evening finds them free
 * @param phases nights for what is left of a phase that has no pieces, by folded id; 1 or more
 */
public record Lasting(
    Optional<Hours> evening,
    Map<String, Long> pieces,
    Map<String, Long> cures,
    Map<String, Long> phases) {
  public Lasting {
    pieces = Ordered.copy(pieces);
    cures = Ordered.copy(cures);
    phases = Ordered.copy(phases);
  }

  /** A job is at least a night of its own. */
  long of(NotedJob job) {
    return evening
        .filter(e -> !e.isZero())
        .flatMap(e -> job.hours().map(h -> -Math.floorDiv(-h.seconds(), e.seconds())))
        .map(nights -> Math.max(1, nights))
        .orElse(1L);
  }
}
