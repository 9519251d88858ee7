package ribband.fuzz;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.code_intelligence.jazzer.junit.FuzzTest;
import java.nio.charset.StandardCharsets;
import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;
import ribband.measure.Quantity;
import ribband.measure.Reading;
import ribband.measure.Unit;
import ribband.measure.Unreadable;
import ribband.shop.Board;
import ribband.shop.Cloth;
import ribband.shop.Ripping;
import ribband.shop.Slope;
import ribband.shop.StripPlan;

/** A board, a cloth or a slope is read and can be reckoned with, or is refused with advice. */
class ShopFuzzTest {
  private static final Quantity INCH = new Quantity(BigFraction.ONE, Unit.of("in"));

  @FuzzTest(maxDuration = "6s")
  void shop(byte[] bytes) {
    String text = new String(bytes, StandardCharsets.UTF_8);
    read(text, Board::read).ifPresent(ShopFuzzTest::rip);
    read(text, Cloth::read)
        .ifPresent(cloth -> assertEquals(cloth.weight(), cloth.resin(cloth.area()), text));
    read(text, Slope::read)
        .ifPresent(slope -> assertTrue(slope.loss(INCH).isMoreThan(Quantity.none(INCH.unit()))));
  }

  private static <T> Optional<T> read(String text, Reading<T> reading) {
    try {
      return Optional.of(reading.read(text));
    } catch (Unreadable refusal) {
      Refusal.isOfUse(text, refusal, reading);
      return Optional.empty();
    }
  }

  /** Whatever the board is, strips and what is left make it up. */
  private static void rip(Board board) {
    assertTrue(board.boardFeet().number().signum() > 0, board::toString);
    boolean isShort = StripPlan.isScarfTooLong(board.length(), board.thick());
    Optional<Quantity> length = isShort ? Optional.empty() : Optional.of(INCH);
    for (Ripping.Edges edges : Ripping.Edges.values()) {
      StripPlan.Strip strip = new StripPlan.Strip(INCH, length, INCH, edges, board.thick());
      Optional<StripPlan> plan = StripPlan.of(board, strip);
      if (plan.isPresent()) {
        int strips = plan.get().across().strips();
        int cuts = edges == Ripping.Edges.GOOD ? strips - 1 : strips + 1;
        assertEquals(
            board.width().inBase(),
            INCH.times(strips + cuts).plus(plan.get().across().left()).inBase(),
            board::toString);
        assertTrue(plan.get().boardsFor(1) >= 1, board::toString);
      }
    }
  }
}
