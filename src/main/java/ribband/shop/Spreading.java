package ribband.shop;

import org.apache.commons.numbers.fraction.BigFraction;
import ribband.measure.Quantity;
import ribband.measure.Spread;
import ribband.measure.Unit;

/** How much of an adhesive an area takes. */
public final class Spreading {
  /** One glued face of 160 in2 takes a fluid ounce: common practice, no source. */
  public static final Spread RULE_OF_THUMB =
      new Spread(
          new Quantity(BigFraction.of(160), Unit.of("in2")),
          new Quantity(BigFraction.ONE, Unit.of("fl oz")));

  private Spreading() {}

  /**
   * The amount for an area, with no waste.
   *
   * @param area of one face, all pieces together
   * @return exact, in the unit of the spread's amount
   */
  public static Quantity amount(Quantity area, Spread spread) {
    return spread.amount().times(area.over(spread.area()));
  }
}
