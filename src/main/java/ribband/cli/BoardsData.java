package ribband.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import org.apache.commons.numbers.fraction.BigFraction;
import ribband.ledger.Cell;
import ribband.ledger.Cell.Blank;
import ribband.ledger.Cell.Count;
import ribband.ledger.Cell.Measured;
import ribband.ledger.Cell.Words;
import ribband.ledger.Sheet;
import ribband.measure.Quantity;
import ribband.measure.Saying;
import ribband.measure.Unit;
import ribband.measure.Units;
import ribband.shop.Board;

/**
 * A board and the strips from it as a sheet of one row for other programs: lengths in inches or
 * millimetres, shares as parts of 1.
 */
final class BoardsData {
  private static final List<String> COLUMNS =
      List.of(
          "board_feet_each",
          "strips_per_board",
          "length_unit",
          "width_left",
          "strips_per_length",
          "lengths_per_strip",
          "length_left",
          "lost_share",
          "sawdust_share",
          "strips_needed",
          "boards",
          "board_feet");

  private BoardsData() {}

  static Sheet of(Board board, Optional<RippedBoard> ripped, Units units) {
    Unit unit = Unit.of(units == Units.US ? "in" : "mm");
    List<Cell> row = new ArrayList<>();
    row.add(number(Optional.of(board.boardFeet().number())));
    row.add(count(ripped.map(r -> (long) r.plan().across().strips())));
    row.add(Words.of(unit.name()));
    row.add(number(ripped.map(r -> r.plan().across().left().in(unit).number())));
    row.add(count(ripped.map(r -> (long) r.plan().cut())));
    row.add(count(ripped.map(r -> (long) r.plan().joined())));
    row.add(number(ripped.map(r -> r.plan().endLeft().in(unit).number())));
    row.add(number(ripped.map(r -> r.plan().lost())));
    row.add(number(ripped.map(r -> r.plan().toSaw())));
    row.add(count(ripped.flatMap(r -> boxed(r.strips()))));
    row.add(count(ripped.flatMap(r -> boxed(r.boards()))));
    row.add(number(ripped.flatMap(r -> r.boardFeet(board)).map(Quantity::number)));
    return Sheet.of(COLUMNS, List.of(row));
  }

  private static Optional<Long> boxed(OptionalLong number) {
    return number.isPresent() ? Optional.of(number.getAsLong()) : Optional.empty();
  }

  private static Cell count(Optional<Long> number) {
    return number.<Cell>map(Count::new).orElse(new Blank());
  }

  private static Cell number(Optional<BigFraction> number) {
    return number
        .map(n -> new Quantity(n, Unit.PIECES))
        .<Cell>map(q -> new Measured(q, Saying.quantity(q)))
        .orElse(new Blank());
  }
}
