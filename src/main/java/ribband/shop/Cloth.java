package ribband.shop;

import ribband.measure.Dimension;
import ribband.measure.Quantity;
import ribband.measure.Unreadable;

/**
 * Reinforcing cloth by its weight: {@code 6 oz per yd2}, {@code 200 g per m2}.
 *
 * @param weight of the area
 * @param area more than 0
 */
public record Cloth(Quantity weight, Quantity area) {
  private static final String WRITE = "write 6 oz per yd2 or 200 g per m2";

  public static Cloth read(String text) throws Unreadable {
    String[] sides = text.strip().split("\\s*(?:\\bper\\b|/)\\s*", -1);
    if (sides.length != 2 || sides[0].isEmpty() || sides[1].isEmpty()) {
      throw new Unreadable("is not a weight for an area", WRITE);
    }
    Quantity weight = side(sides[0]);
    Quantity area = side(sides[1].matches("[0-9].*") ? sides[1] : "1 " + sides[1]);
    boolean fits =
        weight.unit().dimension() == Dimension.MASS && area.unit().dimension() == Dimension.AREA;
    if (!fits || weight.isZero() || area.isZero()) {
      throw new Unreadable("is not a weight for an area", WRITE);
    }
    return new Cloth(weight, area);
  }

  private static Quantity side(String text) throws Unreadable {
    try {
      return Quantity.read(text);
    } catch (Unreadable e) {
      throw new Unreadable("is not a weight for an area", WRITE);
    }
  }

  /**
   * The resin to wet it out by hand, by weight: about as much as the cloth weighs. Common practice,
   * no source.
   */
  public Quantity resin(Quantity laid) {
    return weight.times(laid.over(area));
  }
}
