package ribband.measure;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.math.RoundingMode;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
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

  /** Units so small that a shop measures whole ones. */
  private static final Set<String> SMALL = Set.of("ml", "g", "mm", "mm2", "cm2");

  private static final Set<String> FEET = Set.of("ft", "ft2");

  private static final BigFraction EIGHTHS = BigFraction.of(8);
  private static final BigFraction GALLON = Unit.of("gal").size();
  private static final BigFraction POUND = Unit.of("lb").size();
  private static final BigFraction YARD = Unit.of("yd").size();
  private static final BigFraction FOUR_SQUARE_FEET = Unit.of("ft2").size().multiply(4);

  private ShopUnits() {}

  /** The system that an amount was written in; empty where it is of none, such as a count. */
  public static Optional<Units> of(Quantity written) {
    String unit = written.unit().name();
    if (TO_US.containsKey(unit)) {
      return Optional.of(Units.METRIC);
    }
    return TO_METRIC.containsKey(unit) ? Optional.of(Units.US) : Optional.empty();
  }

  /** In millilitres, grams, millimetres to the whole one; in larger units to a hundredth. */
  public static Quantity metric(Quantity written) {
    String unit = TO_METRIC.get(written.unit().name());
    if (unit == null) {
      return written;
    }
    Quantity exact = in(written, unit);
    return rounded(
        exact, SMALL.contains(unit) && exact.number().compareTo(BigFraction.ONE) >= 0 ? 0 : 2);
  }

  /** In eighths of the unit, a very small amount to a hundredth. */
  public static Quantity us(Quantity written) {
    String unit = TO_US.get(written.unit().name());
    if (unit == null) {
      return written;
    }
    return eighths(written, unit);
  }

  /**
   * An amount that was reckoned, in the unit that a shop of that system measures so much in: whole
   * millilitres, grams and millimetres, or eighths of a fluid ounce, an ounce and an inch.
   */
  public static Quantity rounded(Quantity reckoned, Units units) {
    return units == Units.METRIC ? roundedMetric(reckoned) : roundedUs(reckoned);
  }

  /** The same in a unit that is kept where it is one of that system's. */
  public static Quantity rounded(Quantity reckoned, Units units, Unit kept) {
    Quantity exact = reckoned.in(kept);
    // An eighth of a quart is no amount of resin: below one of a unit the smaller one tells more,
    // but half a foot beside whole ones is read at once.
    boolean isPart = exact.number().compareTo(BigFraction.ONE) < 0 && !exact.isZero();
    if (isPart && !(units == Units.US && isEighthsOfAFoot(exact))) {
      return rounded(reckoned, units);
    }
    if (units == Units.US && TO_METRIC.containsKey(kept.name())) {
      return eighths(exact, kept.name());
    }
    if (units == Units.METRIC && TO_US.containsKey(kept.name())) {
      boolean little = exact.number().compareTo(BigFraction.of(10)) < 0;
      return rounded(exact, !SMALL.contains(kept.name()) ? 2 : little ? 1 : 0);
    }
    return rounded(reckoned, units);
  }

  private static boolean isEighthsOfAFoot(Quantity exact) {
    boolean isEighths = exact.number().multiply(EIGHTHS).getDenominator().equals(BigInteger.ONE);
    return isEighths && FEET.contains(exact.unit().name());
  }

  private static Quantity roundedMetric(Quantity amount) {
    BigFraction base = amount.inBase();
    return switch (amount.unit().dimension()) {
      case VOLUME -> bigOr(base, 1_000, "l", "ml");
      case MASS -> bigOr(base, 1_000, "kg", "g");
      case LENGTH -> bigOr(base, 1_000, "m", "mm");
      case AREA -> bigOr(base.divide(100), 10_000, "m2", "cm2");
      case BOARDS, COUNT -> rounded(amount, 2);
    };
  }

  /** In the large unit, to a hundredth, from so many of the small one on; else whole small ones. */
  private static Quantity bigOr(BigFraction small, int most, String large, String little) {
    if (small.compareTo(BigFraction.of(most)) >= 0) {
      return rounded(new Quantity(small.divide(most), Unit.of(large)), 2);
    }
    // A tenth matters where there is little: 2.5 ml of hardener are not 3.
    return rounded(
        new Quantity(small, Unit.of(little)), small.compareTo(BigFraction.of(10)) < 0 ? 1 : 0);
  }

  private static Quantity roundedUs(Quantity amount) {
    BigFraction base = amount.inBase();
    return switch (amount.unit().dimension()) {
      case VOLUME -> eighths(amount, base.compareTo(GALLON) >= 0 ? "gal" : "fl oz");
      case MASS -> eighths(amount, base.compareTo(POUND) >= 0 ? "lb" : "oz");
      case LENGTH -> eighths(amount, base.compareTo(YARD) >= 0 ? "ft" : "in");
      case AREA -> areaInUs(amount, base);
      case BOARDS, COUNT -> rounded(amount, 2);
    };
  }

  private static Quantity areaInUs(Quantity amount, BigFraction squareMillimetres) {
    return squareMillimetres.compareTo(FOUR_SQUARE_FEET) >= 0
        ? rounded(in(amount, "ft2"), 1)
        : rounded(in(amount, "in2"), 0);
  }

  private static Quantity eighths(Quantity amount, String unit) {
    Quantity exact = in(amount, unit);
    BigDecimal eighths = exact.number().multiply(EIGHTHS).bigDecimalValue(0, RoundingMode.HALF_UP);
    return eighths.signum() == 0
        ? rounded(exact, 2)
        : new Quantity(Numbers.decimal(eighths).divide(EIGHTHS), exact.unit());
  }

  private static Quantity in(Quantity written, String name) {
    return written.in(Unit.of(name));
  }

  private static Quantity rounded(Quantity exact, int places) {
    BigDecimal number = exact.number().bigDecimalValue(places, RoundingMode.HALF_UP);
    return new Quantity(Numbers.decimal(number), exact.unit());
  }
}
