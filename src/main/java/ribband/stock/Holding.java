package ribband.stock;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.math.RoundingMode;
import org.apache.commons.numbers.fraction.BigFraction;
import ribband.measure.Money;
import ribband.measure.Quantity;
import ribband.measure.Unit;

/**
 * How much of a material is there and what it is worth, by moving weighted average: what goes takes
 * its share of the worth with it. Amount and worth are carried, never a rounded average.
 *
 * @param minor its worth in the currency's smallest unit, 0 or more
 */
record Holding(Quantity amount, BigFraction minor) {
  /** Past this size a fraction costs more than it tells. */
  private static final int MOST_BITS = 256;

  private static final int PLACES = 40;
  private static final BigInteger DIVISOR = BigInteger.TEN.pow(PLACES);

  Holding {
    if (minor.signum() < 0) {
      throw new IllegalArgumentException("worth below zero: " + minor);
    }
  }

  static Holding none(Unit unit) {
    return new Holding(Quantity.none(unit), BigFraction.ZERO);
  }

  Holding plus(Quantity more, BigFraction cost) {
    return new Holding(amount.plus(more), minor.add(cost));
  }

  /**
   * Without a part of it.
   *
   * @param taken at most what is there
   */
  Holding less(Quantity taken) {
    Quantity left = amount.minus(taken);
    return left.isZero()
        ? none(left.unit())
        : new Holding(left, tidy(minor.multiply(left.over(amount))));
  }

  /** Exact until hundreds of purchases have made the fraction huge; then to 40 places of a cent. */
  private static BigFraction tidy(BigFraction worth) {
    if (worth.getDenominator().bitLength() <= MOST_BITS) {
      return worth;
    }
    BigDecimal decimal = worth.bigDecimalValue(PLACES, RoundingMode.HALF_UP);
    return BigFraction.of(decimal.unscaledValue(), DIVISOR);
  }

  /** To the cent. */
  Money worth() {
    return new Money(minor.bigDecimalValue(0, RoundingMode.HALF_UP).longValueExact());
  }
}
