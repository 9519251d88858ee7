package ribband.shop;

import java.math.RoundingMode;
import org.apache.commons.numbers.fraction.BigFraction;
import ribband.measure.Quantity;

/**
 * Strips ripped from a board.
 *
 * @param strips how many it yields; 0 where one is wider than the board
 * @param left the width that remains beside the last cut
 */
public record Ripping(int strips, Quantity left) {

  /** What is done to the board's own edges before. */
  public enum Edges {
    /** Both are good: as many cuts as strips, less one. */
    GOOD,
    /** Both are trimmed off: a cut more than strips. */
    TRIMMED
  }

  /**
   * Rips a board across its width. So many strips need one cut less than there are of them, so the
   * board counts as one kerf wider than it is: the whole part of (W + k) / (w + k), or with both
   * edges trimmed of (W - k) / (w + k). Exact: a 5.5 in board gives 14 strips of 0.3 in with a kerf
   * of 0.1 in, where binary arithmetic gives 13.
   *
   * @param kerf may be 0
   */
  public static Ripping of(Quantity width, Quantity strip, Quantity kerf, Edges edges) {
    Quantity each = strip.plus(kerf);
    Quantity wide =
        switch (edges) {
          case GOOD -> width.plus(kerf);
          case TRIMMED -> width.isMoreThan(kerf) ? width.minus(kerf) : Quantity.none(width.unit());
        };
    int strips = wide.over(each).bigDecimalValue(0, RoundingMode.FLOOR).intValueExact();
    Quantity used = each.times(BigFraction.of(strips));
    // The last strip's kerf falls into what is left, or off the board.
    Quantity left = wide.minus(used);
    return new Ripping(strips, strips == 0 ? width : left);
  }

  /** How many lengths lie in a board one behind the other, with a saw cut between. */
  public static int lengths(Quantity board, Quantity length, Quantity kerf) {
    return of(board, length, kerf, Edges.GOOD).strips();
  }
}
