package ribband.cli;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import ribband.album.Album;
import ribband.journal.Project;
import ribband.ledger.Ledger;
import ribband.photo.UnfitPicture;
import ribband.postcard.Card;
import ribband.postcard.Shape;
import ribband.press.Press;
import ribband.prose.Crew;
import ribband.recap.BestPicture;
import ribband.recap.Recaps;
import ribband.site.Addresses;
import ribband.site.MonthCard;

/** The cards of a site's months: those that the site does not hold yet are drawn, on all cores. */
final class SiteCards {
  private final Press press;

  private SiteCards(Press press) {
    this.press = press;
  }

  /** A card and where it stands. */
  private record Hung(Card card, String path) {}

  /**
   * Puts the card of every month; none where the site has no address that a card could be shown by.
   *
   * @param press holds the prints of all pictures
   */
  static Map<YearMonth, MonthCard> put(Album album, Ledger ledger, Press press) throws IOException {
    Project project = album.journal().project();
    Map<YearMonth, MonthCard> cards = new TreeMap<>();
    if (project.site().address().uri().isEmpty()) {
      return cards;
    }
    Recaps recaps = Recaps.of(album.journal(), ledger);
    List<Hung> missing = new ArrayList<>();
    for (YearMonth month : recaps.months()) {
      Card card =
          Card.of(
              recaps.month(month).orElseThrow(),
              project.what(),
              BestPicture.of(album, ledger, month));
      String path = Addresses.card(month, card.content(Shape.SHARED));
      cards.put(month, new MonthCard(path, Shape.SHARED.width(), Shape.SHARED.height()));
      if (!press.keep(List.of(path))) {
        missing.add(new Hung(card, path));
      }
    }
    new SiteCards(press).draw(missing);
    return cards;
  }

  private void draw(List<Hung> cards) throws IOException {
    try {
      Crew.work(
          cards,
          card -> {
            put(card);
            return Optional.empty();
          });
    } catch (UncheckedIOException e) {
      throw e.getCause();
    }
  }

  private void put(Hung hung) {
    try {
      byte[] png =
          hung.card()
              .draw(Shape.SHARED, (shot, size) -> press.read(Addresses.print(shot.facts(), size)));
      press.put(hung.path(), png);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    } catch (UnfitPicture e) {
      throw new IllegalStateException("a print that was made is unfit: " + hung.path(), e);
    }
  }
}
