package ribband.cli;

import java.util.Optional;
import java.util.OptionalLong;
import org.apache.commons.numbers.fraction.BigFraction;
import ribband.measure.Quantity;
import ribband.shop.Board;
import ribband.shop.StripPlan;
import ribband.shop.StripPlan.Strip;

/**
 * A board ripped to strips.
 *
 * @param slope of its scarfs, and whether that is taken for granted
 * @param strips how many are needed, spare ones too; empty where nobody says
 */
record RippedBoard(Strip strip, StripPlan plan, String slope, OptionalLong strips) {
  OptionalLong boards() {
    return strips.isPresent()
        ? OptionalLong.of(plan.boardsFor(strips.getAsLong()))
        : OptionalLong.empty();
  }

  /** Of all the boards to buy. */
  Optional<Quantity> boardFeet(Board board) {
    OptionalLong boards = boards();
    return boards.isPresent()
        ? Optional.of(board.boardFeet().times(BigFraction.of(boards.getAsLong())))
        : Optional.empty();
  }
}
