package ribband.card;

import java.util.List;

/**
 * What a card holds: each file that was looked at is in one of the two.
 *
 * @param pictures by the time they were taken, then by name with numbers by value, then by path
 * @param leftOut by path
 */
public record Picked(List<Picture> pictures, List<LeftOut> leftOut) {
  public Picked {
    pictures = List.copyOf(pictures);
    leftOut = List.copyOf(leftOut);
  }
}
