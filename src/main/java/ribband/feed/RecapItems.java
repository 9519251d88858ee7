package ribband.feed;

import java.net.URI;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.YearMonth;
import java.time.ZoneId;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import ribband.measure.Saying;
import ribband.prose.Elsewhere;
import ribband.recap.Recap;
import ribband.recap.Recaps;
import ribband.site.Addresses;
import ribband.site.MonthCard;
import ribband.site.Templates;
import ribband.site.WholeAddresses;
import ribband.telling.RecapText;

/** Makes items of months that are over. */
final class RecapItems {
  private static final LocalTime LAST_SECOND = LocalTime.of(23, 59, 59);

  private final WholeAddresses addresses;
  private final Recaps recaps;
  private final Map<YearMonth, MonthCard> cards;
  private final ZoneId zone;
  private final Templates templates;
  private final TagUris ids;
  private final Elsewhere elsewhere = new Elsewhere();

  RecapItems(
      WholeAddresses addresses,
      Recaps recaps,
      Map<YearMonth, MonthCard> cards,
      ZoneId zone,
      Templates templates) {
    this.addresses = addresses;
    this.recaps = recaps;
    this.cards = Map.copyOf(cards);
    this.zone = zone;
    this.templates = templates;
    this.ids = new TagUris(addresses);
  }

  /**
   * What the template shows.
   *
   * @param card none or one
   * @param html the month told
   */
  record View(List<Card> card, String html) {}

  /**
   * A month's card.
   *
   * @param href from the month's page
   * @param width px
   * @param height px
   */
  record Card(String href, int width, int height, String alt) {}

  /** A month told; empty for one that the journal does not reach. */
  Optional<Item> of(YearMonth month) {
    return recaps.month(month).map(recap -> item(month, recap));
  }

  private Item item(YearMonth month, Recap recap) {
    String page = Addresses.month(month);
    String address = addresses.of(page);
    LocalDate end = month.atEndOfMonth();
    Optional<MonthCard> card = Optional.ofNullable(cards.get(month));
    String told = new RecapText(recap, recaps.next(recap)).htmlBody(templates);
    View view =
        new View(
            card.stream()
                .map(
                    shown ->
                        new Card(
                            Addresses.href(page, shown.path()),
                            shown.width(),
                            shown.height(),
                            Saying.month(month)))
                .toList(),
            told);
    return new Item(
        ids.of(end, page),
        address,
        Saying.month(month),
        end.atTime(LAST_SECOND).atZone(zone).toInstant(),
        elsewhere.html(templates.fragment("feed-month", view), URI.create(address)),
        card.map(MonthCard::path).map(addresses::of),
        List.of());
  }
}
