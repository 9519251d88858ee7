package ribband.site;

import java.time.YearMonth;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import ribband.album.Leaf;
import ribband.album.Shot;
import ribband.photo.PrintSize;

/**
 * The picture that stands for each page away from the site. A page that later nights leave as it is
 * takes none that they may change.
 */
final class Faces {
  /** The size of a month's card, px; the size that the Open Graph protocol's users ask for. */
  private static final int CARD_WIDTH = 1200;

  private static final int CARD_HEIGHT = 630;

  private final Map<YearMonth, String> cards;

  /**
   * @param cards the paths of the months' cards
   */
  Faces(Map<YearMonth, String> cards) {
    this.cards = Map.copyOf(cards);
  }

  /**
   * A picture.
   *
   * @param path from the site's root
   * @param width px
   * @param height px
   */
  record Face(String path, int width, int height, String alt) {}

  /** An entry's cover. */
  Optional<Face> of(Leaf leaf) {
    return leaf.cover().map(shot -> print(leaf, shot));
  }

  /** The cover of the last of some entries that has one. */
  Optional<Face> ofLast(List<Leaf> leaves) {
    return leaves.stream()
        .filter(leaf -> !leaf.shots().isEmpty())
        .reduce((a, b) -> b)
        .flatMap(this::of);
  }

  /**
   * A month's card.
   *
   * @param words what the card says
   */
  Optional<Face> ofMonth(YearMonth month, String words) {
    return Optional.ofNullable(cards.get(month))
        .map(path -> new Face(path, CARD_WIDTH, CARD_HEIGHT, words));
  }

  private static Face print(Leaf leaf, Shot shot) {
    List<PrintSize> sizes = PrintSize.of(shot.facts());
    PrintSize largest = sizes.get(sizes.size() - 1);
    return new Face(
        Addresses.print(shot.facts(), largest), largest.width(), largest.height(), leaf.alt(shot));
  }
}
