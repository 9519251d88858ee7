package ribband.pieces;

import java.math.BigInteger;
import java.util.List;
import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * All sessions that made some, of a kind or of one of its sides.
 *
 * @param all by date
 */
public record Sessions(List<Session> all) {
  public Sessions {
    all = List.copyOf(all);
  }

  /** Pieces in a session: the middle one, or the mean of the middle two; empty without any. */
  public Optional<BigFraction> median() {
    if (all.isEmpty()) {
      return Optional.empty();
    }
    int[] pieces = all.stream().mapToInt(Session::pieces).sorted().toArray();
    int low = pieces[(pieces.length - 1) / 2];
    int high = pieces[pieces.length / 2];
    return Optional.of(BigFraction.of(low).add(high).divide(2));
  }

  /** How many of them have hours. */
  public long timed() {
    return all.stream().filter(session -> !session.hours().isZero()).count();
  }

  /** Exact seconds for a piece, over those with hours; empty where none has any. */
  public Optional<BigFraction> secondsEach() {
    long seconds = all.stream().mapToLong(session -> session.hours().seconds()).sum();
    long pieces =
        all.stream().filter(session -> !session.hours().isZero()).mapToLong(Session::pieces).sum();
    return pieces == 0
        ? Optional.empty()
        : Optional.of(BigFraction.of(BigInteger.valueOf(seconds), BigInteger.valueOf(pieces)));
  }
}
