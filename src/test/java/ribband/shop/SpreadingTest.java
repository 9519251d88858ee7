package ribband.shop;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.math.RoundingMode;
import java.util.Random;
import java.util.stream.IntStream;
import org.apache.commons.numbers.fraction.BigFraction;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import ribband.measure.Quantity;
import ribband.measure.Unit;

/** How much an area takes. */
class SpreadingTest {
  private static final BigFraction ONE_FLUID_OUNCE = BigFraction.ONE;

  /**
   * A face of 8 in x 20 in takes about 1 fl oz of mixed resin to glue down, and half as much again
   * three halves of it: common practice, no source.
   */
  @Test
  void aFaceOfEightByTwentyInchesTakesAFluidOunce() {
    Quantity once = Spreading.amount(Read.quantity("8 in x 20 in"), Spreading.RULE_OF_THUMB);
    assertEquals(new Quantity(ONE_FLUID_OUNCE, Unit.of("fl oz")), once);
    Quantity half = Spreading.amount(Read.quantity("8 in x 30 in"), Spreading.RULE_OF_THUMB);
    assertEquals(BigFraction.of(3, 2), half.over(once));
  }

  /** The rule in other words, reckoned from the definitions of the units. */
  @Test
  void theRuleOfThumbInOtherWords() {
    Quantity gallon = Read.quantity("1 gal");
    BigFraction squareFeet =
        Spreading.RULE_OF_THUMB.areaPer(gallon.unit()).in(Unit.of("ft2")).number();
    assertEquals("142.2", squareFeet.bigDecimalValue(1, RoundingMode.HALF_UP).toPlainString());
    // A film of it is so many inches thick: a fluid ounce is 231/128 cubic inches.
    BigFraction film = BigFraction.of(231, 128).divide(160);
    assertEquals("0.0113", film.bigDecimalValue(4, RoundingMode.HALF_UP).toPlainString());
  }

  /** A gallon covers 1604.17 ft2 a thousandth of an inch thick, 51.33 at 1/32 in (231 in3). */
  @ParameterizedTest
  @CsvSource({"0.001 in, 1604.17", "1/32 in, 51.33"})
  void whatAGallonCovers(String film, String squareFeet) {
    BigFraction inches = Read.quantity(film).in(Unit.of("in")).number();
    BigFraction squareInches = Read.quantity("1 gal").in(Unit.of("in3")).number().divide(inches);
    assertEquals(
        squareFeet,
        new Quantity(squareInches, Unit.of("in2"))
            .in(Unit.of("ft2"))
            .number()
            .bigDecimalValue(2, RoundingMode.HALF_UP)
            .toPlainString());
  }

  /** One strip of 96 in x 1.5 in is 144 in2: 0.9 fl oz, 26.616 ml. */
  @Test
  void oneStrip() {
    Quantity amount = Spreading.amount(Read.quantity("96 in x 1.5 in"), Spreading.RULE_OF_THUMB);
    assertEquals(Read.exactly("0.9", "fl oz"), amount);
    assertEquals(
        "26.616", amount.inBase().bigDecimalValue(3, RoundingMode.HALF_UP).toPlainString());
  }

  /** By weight: 160 in2 per fl oz at 1.10 g/ml are 315 g a square metre. */
  @Test
  void aSpreadMayBeByWeight() {
    assertEquals(
        Read.exactly("630", "g"),
        Spreading.amount(Read.quantity("2 m2"), Read.spread("1 m2 per 315 g")));
    BigFraction perSquareMetre =
        Spreading.amount(Read.quantity("1 m2"), Spreading.RULE_OF_THUMB)
            .inBase()
            .multiply(Read.exact("1.10"));
    assertEquals("315", perSquareMetre.bigDecimalValue(0, RoundingMode.HALF_UP).toPlainString());
  }

  static IntStream seeds() {
    return IntStream.range(0, 100);
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void theAmountGrowsWithTheArea(int seed) {
    Random random = new Random(seed);
    Quantity area =
        new Quantity(
            BigFraction.of(1 + random.nextInt(100_000), 1 + random.nextInt(100)), Unit.of("in2"));
    int times = 1 + random.nextInt(50);
    assertEquals(
        Spreading.amount(area, Spreading.RULE_OF_THUMB).times(times),
        Spreading.amount(area.times(times), Spreading.RULE_OF_THUMB));
    Quantity metric = area.in(Unit.of("cm2"));
    assertEquals(
        Spreading.amount(area, Spreading.RULE_OF_THUMB),
        Spreading.amount(metric, Spreading.RULE_OF_THUMB));
  }
}
