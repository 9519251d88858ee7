package ribband.shop;

import java.math.BigInteger;
import java.math.RoundingMode;
import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;
import ribband.measure.Quantity;
import ribband.shop.Ripping.Edges;

/**
 * How strips come out of boards of one size. A strip shorter than the board is cut from its length,
 * one that is longer is scarfed together from whole lengths; what is left of those is not used
 * again.
 *
 * @param across how many lie side by side
 * @param cut how many lie in one length, 1 or more
 * @param joined of how many lengths one strip is made, 1 or more
 * @param endLeft of the length, per length cut or per strip joined
 * @param toSaw the share of the board that the rip cuts take
 * @param lost the share of the board that is in no strip, rip cuts included
 */
public record StripPlan(
    Ripping across, int cut, int joined, Quantity endLeft, BigFraction toSaw, BigFraction lost) {

  /**
   * What is made, and how.
   *
   * @param length of a strip; empty for the board's own
   * @param scarf the length that one scarf takes away
   */
  public record Strip(
      Quantity width, Optional<Quantity> length, Quantity kerf, Edges edges, Quantity scarf) {}

  /**
   * Plans strips from a board.
   *
   * @return empty where not one strip of that width comes from it
   * @throws IllegalArgumentException where strips have to be scarfed and {@link #isScarfTooLong}
   */
  public static Optional<StripPlan> of(Board board, Strip strip) {
    Ripping across = Ripping.of(board.width(), strip.width(), strip.kerf(), strip.edges());
    return across.strips() == 0 ? Optional.empty() : Optional.of(of(board, strip, across));
  }

  private static StripPlan of(Board board, Strip strip, Ripping across) {
    Quantity length = strip.length().orElse(board.length());
    boolean isLonger = length.isMoreThan(board.length());
    int joined = isLonger ? joined(board.length(), length, strip.scarf()) : 1;
    int cut = isLonger ? 1 : Ripping.lengths(board.length(), length, strip.kerf());
    Quantity endLeft =
        isLonger
            ? board.length().times(joined).minus(strip.scarf().times(joined - 1)).minus(length)
            : board.length().plus(strip.kerf()).minus(length.plus(strip.kerf()).times(cut));
    int cuts = strip.edges() == Edges.GOOD ? across.strips() - 1 : across.strips() + 1;
    BigFraction inStrips = strip.width().times(across.strips()).over(board.width());
    BigFraction ofLength = length.times(cut).over(board.length()).divide(joined);
    return new StripPlan(
        across,
        cut,
        joined,
        endLeft,
        strip.kerf().times(cuts).over(board.width()),
        BigFraction.ONE.subtract(inStrips.multiply(ofLength)));
  }

  /** Whether a scarf would take more than half of the board's length. */
  public static boolean isScarfTooLong(Quantity board, Quantity scarf) {
    return scarf.times(2).isMoreThan(board);
  }

  /** So many lengths, each but the first shorter by a scarf, reach as far as the strip. */
  private static int joined(Quantity board, Quantity length, Quantity scarf) {
    if (isScarfTooLong(board, scarf)) {
      throw new IllegalArgumentException("a scarf of " + scarf + " in a board of " + board);
    }
    return length
        .minus(scarf)
        .over(board.minus(scarf))
        .bigDecimalValue(0, RoundingMode.CEILING)
        .intValueExact();
  }

  /** How many strips a board gives in all; not whole where strips are scarfed. */
  public BigFraction perBoard() {
    return BigFraction.of(across.strips()).multiply(cut).divide(joined);
  }

  /** How many boards so many strips take. */
  public long boardsFor(long strips) {
    BigInteger whole =
        BigFraction.of(strips)
            .divide(perBoard())
            .bigDecimalValue(0, RoundingMode.CEILING)
            .toBigIntegerExact();
    return whole.longValueExact();
  }
}
