package ribband.pieces;

import java.util.Optional;

/**
 * The pieces of one side.
 *
 * @param total its share of the kind's; where that does not divide, a side may have one more
 * @param done less those taken back; 0 to the total
 * @param numbered empty where some were told without a number, or with one beyond its total
 * @param sessions those that made some on this side, with their share of the hours
 */
public record Side(
    String name, int total, int done, Optional<Numbered> numbered, Sessions sessions) {
  public int left() {
    return total - done;
  }
}
