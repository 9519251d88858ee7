package ribband.shop;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Random;
import java.util.stream.IntStream;
import org.apache.commons.numbers.fraction.BigFraction;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import ribband.measure.Quantity;
import ribband.measure.Unit;
import ribband.shop.Ripping.Edges;

/** Strips across a board: so many need one cut less than there are of them. */
class RippingTest {
  private static Ripping rip(String width, String strip, String kerf, Edges edges) {
    return Ripping.of(Read.quantity(width), Read.quantity(strip), Read.quantity(kerf), edges);
  }

  /**
   * By arithmetic. Dividing the width by strip and kerf gives 14 and 0 in the first and the sixth
   * row. A builder writes of the first "14, plus a 2/8 remainder possibly usable", another "14
   * (sometimes 15)" (archive of a boat building forum, 2000 and 1998): both trim the edges.
   */
  @ParameterizedTest
  @CsvSource({
    "5 1/2 in, 1/4 in, 1/8 in, 15, 0 in",
    "5 1/2 in, 1/4 in, 1/16 in, 17, 1/4 in",
    "7 1/4 in, 1/4 in, 1/8 in, 19, 1/4 in",
    "6 in, 3/8 in, 1/8 in, 12, 1/8 in",
    "140 mm, 6 mm, 3 mm, 15, 8 mm",
    "1 in, 1 in, 1/8 in, 1, 0 in",
    "3/4 in, 1 in, 1/8 in, 0, 3/4 in",
    "6 in, 1 1/2 in, 1/8 in, 3, 1 1/4 in",
    "6 in, 1 1/2 in, 0 in, 4, 0 in"
  })
  void strips(String width, String strip, String kerf, int strips, String left) {
    Ripping ripping = rip(width, strip, kerf, Edges.GOOD);
    assertEquals(strips, ripping.strips());
    assertEquals(Read.quantity(left).inBase(), ripping.left().inBase());
  }

  /** 5.5 in by 0.3 in with a kerf of 0.1 in is exactly 14; division in binary gives 13. */
  @Test
  void exactlyFourteen() {
    assertEquals(
        new Ripping(14, Quantity.none(Unit.of("in"))),
        rip("5.5 in", "0.3 in", "0.1 in", Edges.GOOD));
    assertEquals(13, (int) Math.floor((5.5 + 0.1) / (0.3 + 0.1)));
  }

  /**
   * 14 is the builder's own figure; ten such boards of 8 ft are 1,120 ft of strip, as he stocks.
   */
  @Test
  void trimmedEdgesCostACut() {
    Ripping ripping = rip("5 1/2 in", "1/4 in", "1/8 in", Edges.TRIMMED);
    assertEquals(14, ripping.strips());
    assertEquals(Read.quantity("1/8 in"), ripping.left());
    assertEquals(1120, 10 * ripping.strips() * 8);
    assertEquals(0, rip("1 in", "1 in", "1/8 in", Edges.TRIMMED).strips());
    assertEquals(0, rip("1/8 in", "1/4 in", "1/4 in", Edges.TRIMMED).strips());
  }

  static IntStream seeds() {
    return IntStream.range(0, 300);
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void theWholeWidthIsAccountedForAndWiderBoardsGiveNoFewer(int seed) {
    Random random = new Random(seed);
    Quantity width = sixtyFourths(64 + random.nextInt(1000));
    Quantity strip = sixtyFourths(4 + random.nextInt(100));
    Quantity kerf = sixtyFourths(random.nextInt(20));
    for (Edges edges : Edges.values()) {
      Ripping ripping = Ripping.of(width, strip, kerf, edges);
      if (ripping.strips() > 0) {
        int cuts = edges == Edges.GOOD ? ripping.strips() - 1 : ripping.strips() + 1;
        assertEquals(
            width,
            strip.times(ripping.strips()).plus(kerf.times(cuts)).plus(ripping.left()),
            "seed " + seed);
        assertTrue(strip.plus(kerf).isMoreThan(ripping.left()), "seed " + seed);
      }
      int wider = Ripping.of(width.plus(sixtyFourths(1)), strip, kerf, edges).strips();
      int finer = Ripping.of(width, strip.minus(sixtyFourths(1)), kerf, edges).strips();
      int coarser = Ripping.of(width, strip, kerf.plus(sixtyFourths(1)), edges).strips();
      assertTrue(wider >= ripping.strips(), "seed " + seed);
      assertTrue(finer >= ripping.strips(), "seed " + seed);
      assertTrue(coarser <= ripping.strips(), "seed " + seed);
    }
    assertTrue(
        Ripping.of(width, strip, kerf, Edges.TRIMMED).strips()
            <= Ripping.of(width, strip, kerf, Edges.GOOD).strips(),
        "seed " + seed);
  }

  private static Quantity sixtyFourths(int number) {
    return new Quantity(BigFraction.of(number, 64), Unit.of("in"));
  }
}
