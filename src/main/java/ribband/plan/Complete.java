package ribband.plan;

import java.util.Objects;
import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * How much of a phase is done, and how that is known.
 *
 * @param share 0 to 1; empty where nothing tells it
 */
public record Complete(Optional<BigFraction> share, Basis basis) {
  static final Complete UNKNOWN = new Complete(Optional.empty(), Basis.UNKNOWN);

  /** What tells how much is done. */
  public enum Basis {
    /** Pieces made of all that the phase has. */
    PIECES,
    /** The last {@code complete} that an entry notes. */
    NOTED,
    /** No more than hours worked of hours planned: a guess, to be marked as one. */
    ASSUMED,
    /** Neither pieces nor a note nor a plan. */
    UNKNOWN
  }

  public Complete {
    Objects.requireNonNull(share);
    if (share.isPresent() == (basis == Basis.UNKNOWN)) {
      throw new IllegalArgumentException(share + " by " + basis);
    }
  }

  static Complete of(BigFraction share, Basis basis) {
    return new Complete(Optional.of(share), basis);
  }

  /** Whether all is done. */
  public boolean isWhole() {
    return share.equals(Optional.of(BigFraction.ONE));
  }
}
