package ribband.shop;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import ribband.measure.Unreadable;

/** Boards and their board feet: thickness x width x length in inches over 144, nominal sizes. */
class BoardTest {
  /**
   * Worked examples: 2 and 4 and 20 and 5 board feet as woodworking pages and a boat builders'
   * forum reckon them (furnituremaking.us, doityourself.com, the archive of a boat building forum,
   * 1998); 5/4 x 7.5 in x 11 ft by arithmetic. Rough stock is named in quarters: 4/4 is 1 in, 8/4 2
   * in (woodworkingadvice.com).
   */
  @ParameterizedTest
  @CsvSource({
    "1 in x 3 in x 8 ft, 2",
    "1 in x 6 in x 8 ft, 4",
    "2 in x 12 in x 10 ft, 20",
    "1 in x 6 in x 10 ft, 5",
    "4/4 x 6 in x 10 ft, 5",
    "8/4 x 12 in x 10 ft, 20",
    "5/4 x 7.5 in x 11 ft, 8.59375",
    "5/4 x 7 1/2 in x 132 in, 8.59375",
    "6 in x 12 ft, 6",
    "6 in × 12 ft, 6",
    "25.4 mm x 152.4 mm x 3.048 m, 5",
    "3/4 in x 6 in x 10 ft, 3.75"
  })
  void boardFeet(String board, String feet) {
    assertEquals(Read.exactly(feet, "bf"), Read.board(board).boardFeet());
  }

  /** Stock under an inch is usually billed as an inch: common practice, no source. */
  @Test
  void thinStockIsBilledAsAnInch() {
    assertEquals(
        Optional.of(Read.exactly("5", "bf")), Read.board("3/4 in x 6 in x 10 ft").billedAsInch());
    assertEquals(Optional.empty(), Read.board("1 in x 6 in x 10 ft").billedAsInch());
    assertEquals(Optional.empty(), Read.board("6 in x 10 ft").billedAsInch());
  }

  private static final String WRITE =
      "; write its width and length, as 6 in x 12 ft, with its thickness in front where it matters,"
          + " as 1 in x 6 in x 12 ft or 5/4 x 6 in x 12 ft";

  @ParameterizedTest
  @CsvSource({
    "6 in, is not a board",
    "1 in x 2 in x 3 in x 4 in, is not a board",
    "x, is not a board",
    "'', is not a board",
    "6 in x, is not a board",
    "6 x 12, 'has a side that is a count, and a length belongs there'",
    "6 oz x 12 ft, 'has a side that is a weight, and a length belongs there'",
    "6 in x 0 ft, has a side of nothing",
    "6 in x 0.01 mm, has a side of nothing",
    "6 in x 400 ft, is longer than any board",
    "0/4 x 6 in x 12 ft, 'has a side that is a count, and a length belongs there'",
    "5/8 x 6 in x 12 ft, 'has a side that is a count, and a length belongs there'"
  })
  void whatIsNoBoardIsRefused(String text, String wrong) {
    assertEquals(
        wrong + WRITE, assertThrows(Unreadable.class, () -> Board.read(text)).getMessage());
  }
}
