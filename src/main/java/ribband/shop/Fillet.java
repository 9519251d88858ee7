package ribband.shop;

import java.math.BigDecimal;
import org.apache.commons.numbers.fraction.BigFraction;
import ribband.measure.Quantity;
import ribband.measure.Unit;

/** A concave fillet in a square corner. */
public final class Fillet {
  /** The circle's number, to 40 places. */
  private static final BigFraction PI =
      BigFraction.of(new BigDecimal("3.1415926535897932384626433832795028841971").unscaledValue())
          .divide(BigDecimal.TEN.pow(40).toBigInteger());

  private Fillet() {}

  /**
   * The thickened putty it takes: the corner's square less the quarter of a circle, along its
   * length.
   *
   * @param radius a length
   * @param length a length
   * @return a volume in ml, exact but for the circle's number
   */
  public static Quantity volume(Quantity radius, Quantity length) {
    BigFraction square = radius.inBase().multiply(radius.inBase());
    BigFraction section = square.multiply(BigFraction.ONE.subtract(PI.divide(4)));
    BigFraction cubicMillimetres = section.multiply(length.inBase());
    return new Quantity(cubicMillimetres.divide(1000), Unit.of("ml"));
  }
}
