package ribband.measure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.stream.IntStream;
import javax.measure.IncommensurableException;
import javax.measure.MetricPrefix;
import org.apache.commons.numbers.fraction.BigFraction;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import systems.uom.common.USCustomary;
import tech.units.indriya.function.RationalNumber;
import tech.units.indriya.unit.Units;

/**
 * Every unit against the reference implementation of JSR 385 and its US customary units, exactly:
 * that library reckons in rational numbers too. It has no pint of 1/8 gallon, no quart and no exact
 * spoon, so those are its gallon divided; the board foot is 144 of its cubic inches.
 */
class ConversionsTest {
  private static final javax.measure.Unit<?> FLUID_OUNCE = USCustomary.GALLON_LIQUID.divide(128);

  /** By our name. */
  private static final Map<String, javax.measure.Unit<?>> THEIRS = theirs();

  private static Map<String, javax.measure.Unit<?>> theirs() {
    Map<String, javax.measure.Unit<?>> units = new LinkedHashMap<>();
    units.put("ml", MetricPrefix.MILLI(Units.LITRE));
    units.put("l", Units.LITRE);
    units.put("fl oz", FLUID_OUNCE);
    units.put("pt", USCustomary.GALLON_LIQUID.divide(8));
    units.put("qt", USCustomary.GALLON_LIQUID.divide(4));
    units.put("gal", USCustomary.GALLON_LIQUID);
    units.put("in3", USCustomary.CUBIC_INCH);
    units.put("tsp", FLUID_OUNCE.divide(6));
    units.put("tbsp", FLUID_OUNCE.divide(2));
    units.put("g", Units.GRAM);
    units.put("kg", Units.KILOGRAM);
    units.put("oz", USCustomary.OUNCE);
    units.put("lb", USCustomary.POUND);
    units.put("mm", MetricPrefix.MILLI(Units.METRE));
    units.put("cm", MetricPrefix.CENTI(Units.METRE));
    units.put("m", Units.METRE);
    units.put("in", USCustomary.INCH);
    units.put("ft", USCustomary.FOOT);
    units.put("yd", USCustomary.YARD);
    units.put("mm2", MetricPrefix.MILLI(Units.METRE).pow(2));
    units.put("cm2", MetricPrefix.CENTI(Units.METRE).pow(2));
    units.put("m2", Units.SQUARE_METRE);
    units.put("in2", USCustomary.INCH.pow(2));
    units.put("ft2", USCustomary.SQUARE_FOOT);
    units.put("yd2", USCustomary.YARD.pow(2));
    units.put("bf", USCustomary.CUBIC_INCH.multiply(144));
    return units;
  }

  /** How many of the one make one of the other, by their library; exact or a failure. */
  private static BigFraction theirs(String from, String to) {
    Number factor;
    try {
      factor = THEIRS.get(from).getConverterToAny(THEIRS.get(to)).convert(RationalNumber.of(1));
    } catch (IncommensurableException e) {
      throw new AssertionError(from + " to " + to, e);
    }
    return exact(factor);
  }

  private static BigFraction exact(Number number) {
    if (number instanceof RationalNumber rational) {
      return BigFraction.of(rational.getDividend(), rational.getDivisor());
    }
    if (number instanceof BigDecimal decimal) {
      return Numbers.decimal(decimal);
    }
    assertTrue(number instanceof Integer || number instanceof Long, number.getClass().getName());
    return BigFraction.of(number.longValue());
  }

  @Test
  void everyUnitOfEveryDimensionConvertsAsTheReferenceDoes() {
    int compared = 0;
    for (String from : THEIRS.keySet()) {
      for (String to : THEIRS.keySet()) {
        Unit wanted = Unit.of(to);
        if (Unit.of(from).goesWith(wanted)) {
          BigFraction ours = new Quantity(BigFraction.ONE, Unit.of(from)).in(wanted).number();
          assertEquals(theirs(from, to), ours, from + " in " + to);
          compared++;
        }
      }
    }
    assertEquals(81 + 16 + 36 + 36 + 1, compared);
  }

  /** 144 cubic inches, by the reference library's inch. */
  @Test
  void theBoardFootIsSoManyLitres() {
    assertEquals(Numbers.decimal(new BigDecimal("2.359737216")), theirs("bf", "l"));
    BigFraction ours = Unit.of("in3").size().multiply(144).divide(1000);
    assertEquals(theirs("bf", "l"), ours);
  }

  /**
   * Figures as tables print them: those of 12 places were reckoned from the definitions, those of
   * fewer stand in NIST SP 811, Appendix B.8 (from memory).
   */
  @ParameterizedTest
  @CsvSource({
    "l, gal, 0.264172052358",
    "kg, lb, 2.204622621849",
    "gal, l, 3.785411784000",
    "qt, ml, 946.352946000000",
    "pt, ml, 473.176473000000",
    "fl oz, in3, 1.804687500000",
    "ft2, in2, 144.000000000000",
    "ft2, m2, 0.092903040000",
    "fl oz, ml, 29.57353",
    "gal, l, 3.785412",
    "lb, kg, 0.4535924",
    "oz, g, 28.34952"
  })
  void figuresOfTables(String from, String to, BigDecimal factor) {
    Quantity one = new Quantity(BigFraction.ONE, Unit.of(from));
    assertEquals(
        factor,
        one.in(Unit.of(to))
            .number()
            .bigDecimalValue(factor.scale(), java.math.RoundingMode.HALF_UP));
  }

  static IntStream seeds() {
    return IntStream.range(0, 200);
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void thereAndBackIsTheSame(int seed) {
    Random random = new Random(seed);
    List<String> names = new ArrayList<>(THEIRS.keySet());
    Unit from = Unit.of(names.get(random.nextInt(names.size())));
    Quantity amount =
        new Quantity(BigFraction.of(random.nextInt(1_000_000), 1 + random.nextInt(10_000)), from);
    for (String name : names) {
      Unit to = Unit.of(name);
      if (from.goesWith(to)) {
        assertEquals(amount, amount.in(to).in(from), "seed " + seed + " by " + name);
        assertEquals(amount.inBase(), amount.in(to).inBase(), "seed " + seed + " by " + name);
      }
    }
  }
}
