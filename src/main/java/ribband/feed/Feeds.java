package ribband.feed;

import java.io.IOException;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import ribband.album.Album;
import ribband.album.Leaf;
import ribband.journal.Entry;
import ribband.journal.Journal;
import ribband.journal.Project;
import ribband.ledger.Ledger;
import ribband.measure.SaidMoney;
import ribband.recap.Recaps;
import ribband.site.Addresses;
import ribband.site.MonthCard;
import ribband.site.Site;
import ribband.site.Templates;
import ribband.site.WholeAddresses;

/** Writes the feeds of a site: its last entries, and the months told that they fall into. */
public final class Feeds {
  /** How many entries a feed holds. */
  static final int MOST = 30;

  private static final String ICON = "assets/icon-180.png";

  private final Album album;
  private final Ledger ledger;
  private final WholeAddresses addresses;

  private Feeds(Album album, Ledger ledger, WholeAddresses addresses) {
    this.album = album;
    this.ledger = ledger;
    this.addresses = addresses;
  }

  /**
   * Writes both feeds; none where the site has no address.
   *
   * @param cards as far as there are any
   * @param release the tool and its version
   */
  public static void write(
      Album album, Ledger ledger, Map<YearMonth, MonthCard> cards, String release, Site.Out out)
      throws IOException {
    Project project = album.journal().project();
    if (project.site().address().uri().isPresent()) {
      WholeAddresses addresses = new WholeAddresses(project.site().address().uri().get());
      Feed feed = new Feeds(album, ledger, addresses).feed(cards, release);
      out.put(Addresses.FEED_XML, AtomFeed.of(feed));
      out.put(Addresses.FEED_JSON, JsonFeed.of(feed));
    }
  }

  private Feed feed(Map<YearMonth, MonthCard> cards, String release) {
    Project project = album.journal().project();
    List<Item> items = items(cards);
    return new Feed(
        project.name(),
        project.what().orElse(""),
        addresses.of(Addresses.HOME),
        addresses.of(Addresses.FEED_XML),
        addresses.of(Addresses.FEED_JSON),
        addresses.of(ICON),
        release,
        items.isEmpty() ? begun(project) : items.get(0).dated(),
        items);
  }

  /** Of a feed without an item: it has to say some time, and no clock may be asked. */
  private static Instant begun(Project project) {
    LocalDate day = project.started().orElse(LocalDate.EPOCH);
    return day.atTime(LocalTime.NOON).atZone(project.zone()).toInstant();
  }

  private List<Item> items(Map<YearMonth, MonthCard> cards) {
    Project project = album.journal().project();
    Templates templates = new Templates();
    SaidMoney money = project.saidMoney();
    List<Leaf> leaves = album.shown();
    List<Item> items =
        new ArrayList<>(
            new EntryItems(addresses, album.journal(), ledger, money, templates)
                .last(leaves, MOST));
    RecapItems months =
        new RecapItems(
            addresses, Recaps.of(album.journal(), ledger), cards, project.zone(), templates);
    monthsOver(leaves).forEach(month -> months.of(month).ifPresent(items::add));
    items.sort(Comparator.comparing(Item::dated).reversed());
    return items;
  }

  /**
   * The months that nothing will be added to, with something in them, from that of the oldest entry
   * in the feed.
   */
  private List<YearMonth> monthsOver(List<Leaf> shown) {
    Journal journal = album.journal();
    if (shown.isEmpty()) {
      return List.of();
    }
    LocalDate asOf = journal.asOf().orElseThrow();
    LocalDate oldest = shown.get(Math.max(0, shown.size() - MOST)).entry().date();
    Set<YearMonth> written = new HashSet<>();
    journal.entries().stream().map(Entry::date).map(YearMonth::from).forEach(written::add);
    return written.stream()
        .filter(
            month -> !month.atEndOfMonth().isAfter(asOf) && !month.isBefore(YearMonth.from(oldest)))
        .sorted()
        .toList();
  }
}
