package ribband.shop;

import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;
import ribband.measure.Mix;
import ribband.measure.Percent;
import ribband.measure.Proportion;
import ribband.measure.Quantity;
import ribband.measure.Reading;
import ribband.measure.Spread;
import ribband.measure.Unit;
import ribband.measure.Unreadable;

/** Values of the shop from the words a builder writes. */
final class Read {
  private Read() {}

  static Quantity quantity(String text) {
    return by(Quantity::read, text);
  }

  static Spread spread(String text) {
    return by(Spread::read, text);
  }

  static Percent percent(String text) {
    return by(Percent::read, text);
  }

  static Board board(String text) {
    return by(Board::read, text);
  }

  static TwoParts parts(String mix) {
    return TwoParts.of(by(Mix::read, mix), Optional.empty());
  }

  static TwoParts parts(String mix, String densities) {
    return TwoParts.of(by(Mix::read, mix), Optional.of(by(Proportion::read, densities)));
  }

  /** A decimal, exactly. */
  static BigFraction exact(String decimal) {
    java.math.BigDecimal value = new java.math.BigDecimal(decimal);
    return BigFraction.of(value.unscaledValue())
        .divide(java.math.BigInteger.TEN.pow(value.scale()));
  }

  /** So many of a unit, exactly. */
  static Quantity exactly(String decimal, String unit) {
    return new Quantity(exact(decimal), Unit.of(unit));
  }

  static <T> T by(Reading<T> reading, String text) {
    try {
      return reading.read(text);
    } catch (Unreadable e) {
      throw new IllegalArgumentException(text + " " + e.getMessage(), e);
    }
  }
}
