package ribband.shop;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigInteger;
import java.util.Random;
import java.util.stream.IntStream;
import org.apache.commons.numbers.fraction.BigFraction;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import ribband.measure.Quantity;
import ribband.measure.Saying;
import ribband.measure.Unit;
import ribband.shop.TwoParts.Split;

/** Both parts in whole steps, rounded together; each case was tried by hand, pair by pair. */
class MeasuredPairTest {
  private static Split split(String mix, String total) {
    return Read.parts(mix).split(Read.quantity(total)).orElseThrow();
  }

  /**
   * 8.4 and 4.2 eighths are 8 and 4; 9.8 and 4.9 are 10 and 5; 9.2 and 4.6 too, not 9 and 5. 84 to
   * 17 is 4.94, and 83 to 17 only 4.88. No part is ever nothing.
   */
  @ParameterizedTest
  @CsvSource({
    "2 to 1 by volume, 1.575 fl oz, 1/8 fl oz, 1 fl oz, ½ fl oz",
    "2 to 1 by volume, 1.8375 fl oz, 1/8 fl oz, 1¼ fl oz, ⅝ fl oz",
    "2 to 1 by volume, 1.725 fl oz, 1/8 fl oz, 1¼ fl oz, ⅝ fl oz",
    "5 to 1 by volume, 12 fl oz, 1/8 fl oz, 10 fl oz, 2 fl oz",
    "5 to 1 by volume, 100 ml, 1 ml, 84 ml, 17 ml",
    "1 to 1 by volume, 25 ml, 1 ml, 13 ml, 13 ml",
    "1 to 5 by volume, 100 ml, 1 ml, 17 ml, 84 ml",
    "2 to 1 by volume, 0.3 ml, 1 ml, 1 ml, 1 ml",
    "100 to 42 by weight, 100 g, 1 g, 71 g, 30 g",
    "100 to 42 by weight, 3.3 oz, 0.1 oz, 2.4 oz, 1 oz"
  })
  void roundedAsAPair(String mix, String total, String step, String first, String second) {
    MeasuredPair pair = MeasuredPair.of(split(mix, total), Read.quantity(step));
    assertEquals(first, Saying.quantity(pair.first()));
    assertEquals(second, Saying.quantity(pair.second()));
  }

  /** 15 eighths for 16 are short, so 18; 24 eighths for 24.1 are within a fiftieth. */
  @ParameterizedTest
  @CsvSource({
    "2 to 1 by volume, 2 fl oz, 1/8 fl oz, 1½ fl oz, ¾ fl oz",
    "2 to 1 by volume, 3.0125 fl oz, 1/8 fl oz, 2 fl oz, 1 fl oz",
    "1 to 1 by volume, 25 ml, 1 ml, 13 ml, 13 ml",
    "5 to 1 by volume, 12 fl oz, 1/8 fl oz, 10 fl oz, 2 fl oz"
  })
  void neverMuchLessThanIsNeeded(
      String mix, String needed, String step, String first, String second) {
    MeasuredPair pair =
        MeasuredPair.enough(Read.parts(mix), Read.quantity(needed), Read.quantity(step))
            .orElseThrow();
    assertEquals(first, Saying.quantity(pair.first()));
    assertEquals(second, Saying.quantity(pair.second()));
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void enoughIsNeitherShortNorFarTooMuch(int seed) {
    Random random = new Random(seed);
    TwoParts parts =
        Read.parts((1 + random.nextInt(9)) + " to " + (1 + random.nextInt(9)) + " by volume");
    Quantity needed = new Quantity(BigFraction.of(400 + random.nextInt(9_000), 8), Unit.of("ml"));
    Quantity step = new Quantity(BigFraction.ONE, Unit.of("ml"));
    Quantity total = MeasuredPair.enough(parts, needed, step).orElseThrow().total();
    assertTrue(
        total.number().compareTo(needed.number().multiply(BigFraction.of(49, 50))) >= 0,
        "seed " + seed);
    assertTrue(needed.plus(step.times(4)).isMoreThan(total), "seed " + seed);
  }

  /** Five steps of the smaller part, so that half a step of misreading is a tenth of it. */
  @ParameterizedTest
  @CsvSource({
    "2 to 1 by volume, 1/8 fl oz, 1⅞ fl oz",
    "5 to 1 by volume, 1/8 fl oz, 3¾ fl oz",
    "1 to 5 by volume, 1/8 fl oz, 3¾ fl oz",
    "1 to 1 by volume, 1 ml, 10 ml",
    "2 to 1 by volume, 1 ml, 15 ml"
  })
  void theSmallestSensibleBatch(String mix, String step, String smallest) {
    Quantity measure = Read.quantity(step);
    Quantity least =
        MeasuredPair.smallest(split(mix, step.endsWith("ml") ? "7 ml" : "0.4 fl oz"), measure);
    assertEquals(smallest, Saying.quantity(least));
  }

  static IntStream seeds() {
    return IntStream.range(0, 300);
  }

  /** Each part is a step off at most, and no part rounded alone keeps the ratio better. */
  @ParameterizedTest
  @MethodSource("seeds")
  void neverWorseThanEachPartRoundedAlone(int seed) {
    Random random = new Random(seed);
    String mix = (1 + random.nextInt(9)) + " to " + (1 + random.nextInt(9)) + " by volume";
    Quantity total =
        new Quantity(
            BigFraction.of(200 + random.nextInt(10_000), 1 + random.nextInt(20)), Unit.of("ml"));
    Split exact = Read.parts(mix).split(total).orElseThrow();
    Quantity step = new Quantity(BigFraction.ONE, Unit.of("ml"));
    MeasuredPair pair = MeasuredPair.of(exact, step);
    for (Quantity part : new Quantity[] {pair.first(), pair.second()}) {
      assertEquals(BigInteger.ONE, part.over(step).getDenominator(), "seed " + seed);
    }
    assertTrue(off(pair.first(), exact.first()).compareTo(BigFraction.ONE) < 0, "seed " + seed);
    assertTrue(off(pair.second(), exact.second()).compareTo(BigFraction.ONE) < 0, "seed " + seed);
    MeasuredPair alone = new MeasuredPair(alone(exact.first()), alone(exact.second()));
    BigFraction ratio = exact.first().over(exact.second());
    assertTrue(wrong(pair, ratio).compareTo(wrong(alone, ratio)) <= 0, "seed " + seed);
  }

  private static BigFraction off(Quantity measured, Quantity exact) {
    return measured.number().subtract(exact.number()).abs();
  }

  private static Quantity alone(Quantity part) {
    return new Quantity(
        BigFraction.of(
            part.number().bigDecimalValue(0, java.math.RoundingMode.HALF_UP).toBigInteger()),
        part.unit());
  }

  private static BigFraction wrong(MeasuredPair pair, BigFraction ratio) {
    BigFraction times = pair.first().over(pair.second()).divide(ratio);
    return times.compareTo(BigFraction.ONE) < 0 ? times.reciprocal() : times;
  }
}
