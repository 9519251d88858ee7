package ribband.measure;

import org.apache.commons.numbers.fraction.BigFraction;

/**
 * How far an adhesive goes: {@code 140 in2 per fl oz}.
 *
 * @param area an area, more than 0
 * @param amount a volume or a weight, more than 0
 */
public record Spread(Quantity area, Quantity amount) {
  private static final String WRITE = "write 140 in2 per fl oz or 200 cm2 per 30 ml";

  public static Spread read(String text) throws Unreadable {
    String[] sides = text.strip().split("\\s+per\\s+", -1);
    if (sides.length != 2) {
      throw new Unreadable("is not a spread", WRITE);
    }
    Quantity area = side(sides[0]);
    Quantity amount = side(sides[1].matches("[0-9¼½¾⅓⅔⅛⅜⅝⅞].*") ? sides[1] : "1 " + sides[1]);
    Dimension measured = amount.unit().dimension();
    boolean fits =
        area.unit().dimension() == Dimension.AREA
            && (measured == Dimension.VOLUME || measured == Dimension.MASS);
    if (!fits || area.number().signum() == 0 || amount.number().signum() == 0) {
      throw new Unreadable("is not an area for an amount", WRITE);
    }
    return new Spread(area, amount);
  }

  /**
   * The area that one of a unit covers, in square inches.
   *
   * @param unit of the same dimension as the amount
   */
  public Quantity areaPer(Unit unit) {
    BigFraction times = new Quantity(BigFraction.ONE, unit).over(amount);
    return area.times(times).in(Unit.of("in2"));
  }

  /** The same for one of a system's own unit: per fluid ounce or ounce, per millilitre or gram. */
  public Spread perUnit(Units units) {
    boolean volume = amount.unit().dimension() == Dimension.VOLUME;
    boolean us = units == Units.US;
    Unit one = Unit.of(volume ? us ? "fl oz" : "ml" : us ? "oz" : "g");
    Quantity unit = new Quantity(BigFraction.ONE, one);
    return new Spread(area.times(unit.over(amount)), unit);
  }

  private static Quantity side(String text) throws Unreadable {
    try {
      return Quantity.read(text);
    } catch (Unreadable e) {
      throw new Unreadable("is not a spread", WRITE);
    }
  }
}
