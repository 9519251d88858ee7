package ribband.site;

import java.time.YearMonth;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import ribband.album.Album;
import ribband.album.Leaf;
import ribband.album.Shot;
import ribband.journal.Entry;
import ribband.photo.PrintSize;
import ribband.recap.BestPicture;

/**
 * The picture that stands for each page away from the site. A page that later nights leave as it is
 * takes none that they may change.
 */
final class Faces {
  /** The size of a month's card, px; the size that the Open Graph protocol's users ask for. */
  private static final int CARD_WIDTH = 1200;

  private static final int CARD_HEIGHT = 630;

  private final Album album;
  private final Map<YearMonth, String> cards;

  /**
   * @param cards the paths of the months' cards
   */
  Faces(Album album, Map<YearMonth, String> cards) {
    this.album = album;
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

  /** The best picture of some entries. */
  Optional<Face> best(Predicate<Entry> which) {
    return BestPicture.of(album, which).map(best -> print(best.leaf(), best.shot()));
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
