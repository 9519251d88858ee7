package ribband.site;

import java.time.YearMonth;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
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
  private final Book book;
  private final Map<YearMonth, MonthCard> cards;

  Faces(Book book, Map<YearMonth, MonthCard> cards) {
    this.book = book;
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
    return BestPicture.of(book.album(), book.ledger(), which).map(Faces::print);
  }

  /** The best picture of a month. */
  Optional<Face> best(YearMonth month) {
    return BestPicture.of(book.album(), book.ledger(), month).map(Faces::print);
  }

  /**
   * A month's card.
   *
   * @param words what the card says
   */
  Optional<Face> ofMonth(YearMonth month, String words) {
    return Optional.ofNullable(cards.get(month))
        .map(card -> new Face(card.path(), card.width(), card.height(), words));
  }

  private static Face print(BestPicture best) {
    return print(best.leaf(), best.shot());
  }

  private static Face print(Leaf leaf, Shot shot) {
    PrintSize largest = PrintSize.largest(shot.facts());
    return new Face(
        Addresses.print(shot.facts(), largest), largest.width(), largest.height(), leaf.alt(shot));
  }
}
