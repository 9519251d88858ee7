package ribband.ledger;

import java.time.LocalDate;
import java.util.Objects;
import java.util.Optional;

/**
 * Which part of a journal is counted.
 *
 * @param from first day, inclusive
 * @param to last day, inclusive
 * @param phase the one phase to count, by its id; entries with nothing of it are passed over
 */
public record Selection(Optional<LocalDate> from, Optional<LocalDate> to, Optional<String> phase) {
  public static final Selection ALL =
      new Selection(Optional.empty(), Optional.empty(), Optional.empty());

  public Selection {
    Objects.requireNonNull(from);
    Objects.requireNonNull(to);
    Objects.requireNonNull(phase);
  }

  boolean covers(LocalDate day) {
    return from.map(f -> !day.isBefore(f)).orElse(true)
        && to.map(t -> !day.isAfter(t)).orElse(true);
  }

  boolean covers(String id) {
    return phase.map(id::equals).orElse(true);
  }

  /** spec: {@code --from}, {@code --to} leave carried work out. */
  boolean takesCarried() {
    return from.isEmpty() && to.isEmpty();
  }
}
