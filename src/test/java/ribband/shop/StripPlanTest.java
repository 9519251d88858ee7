package ribband.shop;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import ribband.measure.Quantity;
import ribband.measure.Unreadable;
import ribband.shop.Ripping.Edges;
import ribband.shop.StripPlan.Strip;

/** Boards to buy for a number of strips, reckoned by hand. */
class StripPlanTest {
  private static Strip strip(String width, String kerf, String length, String scarf) {
    return new Strip(
        Read.quantity(width),
        Optional.of(length).filter(l -> !l.isEmpty()).map(Read::quantity),
        Read.quantity(kerf),
        Edges.GOOD,
        Read.quantity(scarf));
  }

  private static StripPlan plan(String board, Strip strip) {
    return StripPlan.of(Read.board(board), strip).orElseThrow();
  }

  /** 3 strips of 1 1/2 in from 6 in, so 22 take 8 boards and 24 would be there. */
  @ParameterizedTest
  @CsvSource({"1, 1", "3, 1", "4, 2", "21, 7", "22, 8", "24, 8", "25, 9"})
  void boardsForStrips(long strips, long boards) {
    assertEquals(
        boards, plan("6 in x 12 ft", strip("1 1/2 in", "1/8 in", "", "0 in")).boardsFor(strips));
  }

  /**
   * Two strips of 5 ft lie in a board of 12 ft with a cut between: 6 from a board, 1 ft 11 7/8 in
   * left. Two of 6 ft do not, for the cut's sake.
   */
  @Test
  void shortStripsLieOneBehindTheOther() {
    StripPlan two = plan("6 in x 12 ft", strip("1 1/2 in", "1/8 in", "5 ft", "0 in"));
    assertEquals(2, two.cut());
    assertEquals(Read.quantity("23 7/8 in").inBase(), two.endLeft().inBase());
    assertEquals(BigFraction.of(6), two.perBoard());
    assertEquals(4, two.boardsFor(22));
    StripPlan one = plan("6 in x 12 ft", strip("1 1/2 in", "1/8 in", "6 ft", "0 in"));
    assertEquals(1, one.cut());
  }

  /**
   * An 8:1 scarf in stock of 1/4 in takes 2 in: two lengths of 12 ft reach 23 ft 10 in, so 23 ft 10
   * in takes two and anything more three.
   */
  @ParameterizedTest
  @CsvSource({
    "12 ft, 1, 0 in",
    "12.01 ft, 2, 141.88 in",
    "16 ft, 2, 94 in",
    "23 ft 10 in, 2, 0 in",
    "23 ft 10 1/8 in, 3, 141 7/8 in",
    "35 ft 8 in, 3, 0 in"
  })
  void longStripsAreScarfed(String length, int joined, String left) {
    StripPlan plan = plan("6 in x 12 ft", strip("1/4 in", "1/8 in", length, "2 in"));
    assertEquals(joined, plan.joined());
    assertEquals(Read.quantity(left).inBase(), plan.endLeft().inBase());
    assertEquals(BigFraction.of(16, joined), plan.perBoard());
    assertEquals(joined, plan.boardsFor(16));
  }

  /** 8:1 of 1/4 in is 2 in, 12:1 of 6 mm is 72 mm. */
  @ParameterizedTest
  @CsvSource({"8:1, 1/4 in, 2 in", "8 to 1, 1 in, 8 in", "12:1, 6 mm, 72 mm"})
  void aScarfIsAsLongAsItsSlopeTimesItsStock(String slope, String thickness, String loss) {
    Quantity scarf = Read.by(Slope::read, slope).loss(Read.quantity(thickness));
    assertEquals(Read.quantity(loss).inBase(), scarf.inBase());
  }

  @ParameterizedTest
  @CsvSource({"8", "8:2", "0:1", "1:8", "100:1", "steep"})
  void whatIsNoSlopeIsRefused(String text) {
    assertEquals(
        "is no slope of a scarf; write 8:1 or 12:1",
        assertThrows(Unreadable.class, () -> Slope.read(text)).getMessage());
  }

  /** Of 6 in, 3 strips of 1 1/2 in are 3/4, and two cuts of 1/8 in are 1/24. */
  @Test
  void whatIsLost() {
    StripPlan plan = plan("6 in x 12 ft", strip("1 1/2 in", "1/8 in", "", "0 in"));
    assertEquals(BigFraction.of(1, 4), plan.lost());
    assertEquals(BigFraction.of(1, 24), plan.toSaw());
    StripPlan halves = plan("6 in x 12 ft", strip("1 1/2 in", "1/8 in", "9 ft", "0 in"));
    assertEquals(BigFraction.of(7, 16), halves.lost());
    StripPlan scarfed = plan("6 in x 12 ft", strip("1 1/2 in", "1/8 in", "18 ft", "1 ft"));
    assertEquals(BigFraction.of(7, 16), scarfed.lost());
  }

  /** With both edges trimmed three strips of 1 1/2 in take four cuts. */
  @Test
  void trimmedEdgesGoToTheSaw() {
    Strip trimmed =
        new Strip(
            Read.quantity("1 1/2 in"),
            Optional.empty(),
            Read.quantity("1/8 in"),
            Edges.TRIMMED,
            Read.quantity("0 in"));
    assertEquals(BigFraction.of(1, 12), plan("6 in x 12 ft", trimmed).toSaw());
  }

  @Test
  void aStripWiderThanTheBoardIsNone() {
    assertEquals(
        Optional.empty(),
        StripPlan.of(Read.board("6 in x 12 ft"), strip("7 in", "1/8 in", "", "0 in")));
  }

  @Test
  void aScarfOfMoreThanHalfTheBoardIsADefectOfTheCaller() {
    assertTrue(StripPlan.isScarfTooLong(Read.quantity("1 ft"), Read.quantity("7 in")));
    assertThrows(
        IllegalArgumentException.class,
        () -> StripPlan.of(Read.board("6 in x 1 ft"), strip("1 in", "1/8 in", "2 ft", "7 in")));
    assertEquals(3, plan("6 in x 1 ft", strip("1 in", "1/8 in", "2 ft", "6 in")).joined());
  }
}
