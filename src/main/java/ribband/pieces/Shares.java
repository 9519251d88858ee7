package ribband.pieces;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.List;
import ribband.measure.Hours;

/** Splits hours in whole seconds, so that the parts add up to the whole. */
final class Shares {
  private Shares() {}

  /**
   * In a proportion.
   *
   * @param weights none below 0, not all of them 0
   */
  static List<Hours> of(Hours whole, List<BigInteger> weights) {
    BigInteger all = weights.stream().reduce(BigInteger.ZERO, BigInteger::add);
    BigInteger upTo = BigInteger.ZERO;
    long given = 0;
    List<Hours> shares = new ArrayList<>();
    for (BigInteger weight : weights) {
      upTo = upTo.add(weight);
      long next = BigInteger.valueOf(whole.seconds()).multiply(upTo).divide(all).longValueExact();
      shares.add(new Hours(next - given));
      given = next;
    }
    return shares;
  }
}
