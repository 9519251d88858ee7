package ribband.shop;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.math.RoundingMode;
import java.util.Optional;
import java.util.Random;
import java.util.stream.IntStream;
import org.apache.commons.numbers.fraction.BigFraction;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import ribband.measure.Dimension;
import ribband.measure.Quantity;
import ribband.measure.Unit;
import ribband.shop.TwoParts.Split;

/** Two parts by volume and by weight; the figures are those of arithmetic, part by part. */
class TwoPartsTest {
  private static String rounded(BigFraction exact, int places) {
    return exact.bigDecimalValue(places, RoundingMode.HALF_UP).toPlainString();
  }

  /**
   * Hardener to 100 of resin by weight is 100 x (b x its density) / (a x the resin's). Sheets of
   * mixes of 2 to 1 by volume quote 42 to 47 (common practice), so densities are the builder's.
   */
  @ParameterizedTest
  @CsvSource({
    "2 to 1, 1.15 to 0.97, 42.174, 1.09000",
    "3 to 1, 1.15 to 0.97, 28.116, 1.10500",
    "5 to 1, 1.18 to 0.95, 16.102, 1.14167"
  })
  void byWeightFromDensities(String mix, String densities, String hardener, String mixed) {
    TwoParts parts = Read.parts(mix + " by volume", densities);
    BigFraction perHundred =
        parts.weights().orElseThrow().second().multiply(100).divide(parts.weights().get().first());
    assertEquals(hardener, rounded(perHundred, 3));
    assertEquals(mixed, rounded(parts.density().orElseThrow(), 5));
  }

  @Test
  void fiveToOneOfTwelveFluidOunces() {
    assertEquals(
        Optional.of(new Split(Read.exactly("10", "fl oz"), Read.exactly("2", "fl oz"))),
        Read.parts("5 to 1 by volume").split(Read.quantity("12 fl oz")));
  }

  /** 100 g at 100 to 42.174 by weight: 70.336 and 29.664. */
  @Test
  void aHundredGrams() {
    Split split = Read.parts("100 to 42.174 by weight").split(Read.quantity("100 g")).orElseThrow();
    assertEquals("70.336", rounded(split.first().number(), 3));
    assertEquals("29.664", rounded(split.second().number(), 3));
  }

  /** 6.2105 of resin to 1 of hardener by weight are 5 to 1 by volume at these densities. */
  @Test
  void weightsLeadBackToVolumes() {
    TwoParts there = Read.parts("5 to 1 by volume", "1.18 to 0.95");
    BigFraction toOne =
        there.weights().orElseThrow().first().divide(there.weights().get().second());
    assertEquals("6.2105", rounded(toOne, 4));
    TwoParts back = Read.parts("590 to 95 by weight", "1.18 to 0.95");
    assertEquals(
        BigFraction.of(5),
        back.volumes().orElseThrow().first().divide(back.volumes().get().second()));
  }

  @Test
  void withoutDensitiesOnlyTheMeasureOfTheMixIsKnown() {
    TwoParts parts = Read.parts("2 to 1 by volume");
    assertEquals(Optional.empty(), parts.split(Read.quantity("3 oz")));
    assertEquals(Optional.empty(), parts.measuredBy(Dimension.MASS, Read.quantity("3 fl oz")));
    assertEquals(Optional.empty(), parts.measuredBy(Dimension.VOLUME, Read.quantity("3 oz")));
    assertEquals(
        Optional.of(Read.quantity("3 oz")),
        parts.measuredBy(Dimension.MASS, Read.quantity("3 oz")));
    TwoParts weighed = Read.parts("100 to 42 by weight");
    assertEquals(Optional.empty(), weighed.split(Read.quantity("3 fl oz")));
  }

  static IntStream seeds() {
    return IntStream.range(0, 200);
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void bothPartsAddUpToTheWholeByVolumeAndByWeight(int seed) {
    Random random = new Random(seed);
    TwoParts parts =
        Read.parts(
            (1 + random.nextInt(10)) + " to " + (1 + random.nextInt(10)) + " by volume",
            "1." + (10 + random.nextInt(80)) + " to 0." + (80 + random.nextInt(19)));
    Quantity volume =
        new Quantity(
            BigFraction.of(1 + random.nextInt(10_000), 1 + random.nextInt(300)), Unit.of("fl oz"));
    Split byVolume = parts.split(volume).orElseThrow();
    assertEquals(volume, byVolume.first().plus(byVolume.second()));
    Quantity weight = parts.measuredBy(Dimension.MASS, volume).orElseThrow();
    Split byWeight = parts.split(weight).orElseThrow();
    assertEquals(weight, byWeight.first().plus(byWeight.second()));
    assertEquals(
        volume.inBase(), parts.measuredBy(Dimension.VOLUME, weight).orElseThrow().inBase());
  }
}
