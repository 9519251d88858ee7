package ribband.measure;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Map;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * Turns amounts into the units a shop measures in, rounded as it measures: for showing only, never
 * to be reckoned with. An amount that is in such units already stays as it was written.
 */
public final class ShopUnits {
  private static final Map<String, String> TO_METRIC =
      Map.ofEntries(
          Map.entry("tsp", "ml"),
          Map.entry("tbsp", "ml"),
          Map.entry("fl oz", "ml"),
          Map.entry("in3", "ml"),
          Map.entry("pt", "l"),
          Map.entry("qt", "l"),
          Map.entry("gal", "l"),
          Map.entry("oz", "g"),
          Map.entry("lb", "kg"),
          Map.entry("in", "mm"),
          Map.entry("ft", "m"),
          Map.entry("yd", "m"),
          Map.entry("in2", "cm2"),
          Map.entry("ft2", "m2"),
          Map.entry("yd2", "m2"));
  private static final Map<String, String> TO_US =
      Map.ofEntries(
          Map.entry("ml", "fl oz"),
          Map.entry("l", "qt"),
          Map.entry("g", "oz"),
          Map.entry("kg", "lb"),
          Map.entry("mm", "in"),
          Map.entry("cm", "in"),
          Map.entry("m", "ft"),
          Map.entry("mm2", "in2"),
          Map.entry("cm2", "in2"),
          Map.entry("m2", "ft2"));

  private static final BigFraction EIGHTHS = BigFraction.of(8);

  private ShopUnits() {}

  /** In millilitres, grams, millimetres to the whole one; in larger units to a hundredth. */
  public static Quantity metric(Quantity written) {
    String unit = TO_METRIC.get(written.unit().name());
    if (unit == null) {
      return written;
    }
    Quantity exact = in(written, unit);
    boolean small =
        unit.equals("ml") || unit.equals("g") || unit.equals("mm") || unit.equals("cm2");
    return rounded(exact, small && exact.number().compareTo(BigFraction.ONE) >= 0 ? 0 : 2);
  }

  /** In eighths of the unit, a very small amount to a hundredth. */
  public static Quantity us(Quantity written) {
    String unit = TO_US.get(written.unit().name());
    if (unit == null) {
      return written;
    }
    Quantity exact = in(written, unit);
    BigDecimal eighths = exact.number().multiply(EIGHTHS).bigDecimalValue(0, RoundingMode.HALF_UP);
    return eighths.signum() == 0
        ? rounded(exact, 2)
        : new Quantity(Numbers.decimal(eighths).divide(EIGHTHS), exact.unit());
  }

  private static Quantity in(Quantity written, String name) {
    Unit unit = Unit.measured(name).orElseThrow();
    return new Quantity(written.inBase().divide(unit.size()), unit);
  }

  private static Quantity rounded(Quantity exact, int places) {
    BigDecimal number = exact.number().bigDecimalValue(places, RoundingMode.HALF_UP);
    return new Quantity(Numbers.decimal(number), exact.unit());
  }
}
