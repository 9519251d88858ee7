package ribband.feed;

import java.net.URI;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import ribband.album.Leaf;
import ribband.journal.Entry;
import ribband.journal.Journal;
import ribband.ledger.Ledger;
import ribband.measure.SaidMoney;
import ribband.measure.Saying;
import ribband.photo.PrintSize;
import ribband.prose.Elsewhere;
import ribband.site.Addresses;
import ribband.site.Bench;
import ribband.site.EntryPhases;
import ribband.site.Prints;
import ribband.site.Templates;
import ribband.site.WholeAddresses;

/** Makes items of entries, each in full. */
final class EntryItems {
  private final WholeAddresses addresses;
  private final SaidMoney money;
  private final ZoneId zone;
  private final EntryPhases phases;
  private final Bench bench;
  private final Templates templates;
  private final TagUris ids;
  private final Elsewhere elsewhere = new Elsewhere();

  EntryItems(
      WholeAddresses addresses,
      Journal journal,
      Ledger ledger,
      SaidMoney money,
      Templates templates) {
    this.addresses = addresses;
    this.money = money;
    this.zone = journal.project().zone();
    this.phases = new EntryPhases(journal, ledger, money);
    this.bench = new Bench(journal, money);
    this.templates = templates;
    this.ids = new TagUris(addresses);
  }

  /**
   * What the template shows.
   *
   * @param hours said; empty for none
   * @param cost said; empty for none
   * @param shares hours and money by phase
   * @param html the text as its page has it
   * @param notes what was done, as its page has it
   */
  record View(
      String hours,
      String cost,
      List<EntryPhases.Share> shares,
      String html,
      List<String> lessons,
      List<Bench.Note> notes,
      List<Prints.View> prints) {}

  /**
   * The last of some entries.
   *
   * @param shown in their order
   * @return the oldest first
   */
  List<Item> last(List<Leaf> shown, int most) {
    Map<LocalDate, Integer> onDay = new HashMap<>();
    List<Item> items = new ArrayList<>();
    for (int i = 0; i < shown.size(); i++) {
      Leaf leaf = shown.get(i);
      int earlier = onDay.merge(leaf.entry().date(), 1, Integer::sum) - 1;
      if (i >= shown.size() - most) {
        items.add(item(leaf, earlier));
      }
    }
    return items;
  }

  private Item item(Leaf leaf, int earlierThatDay) {
    Entry entry = leaf.entry();
    String page = Addresses.entry(entry);
    String address = addresses.of(page);
    String html = templates.fragment("feed-entry", view(leaf, page));
    return new Item(
        ids.of(entry.date(), page),
        address,
        entry.title(),
        dated(entry.date(), earlierThatDay),
        elsewhere.html(html, URI.create(address)),
        cover(leaf),
        phases.of(entry).stream().map(phase -> new Item.Tag(phase.id(), phase.title())).toList());
  }

  /**
   * No entry says when it was written: noon stands in, and for a second one of a day a second
   * later, so that readers keep their order.
   */
  private Instant dated(LocalDate day, int earlierThatDay) {
    return day.atTime(LocalTime.NOON).atZone(zone).toInstant().plusSeconds(earlierThatDay);
  }

  private View view(Leaf leaf, String page) {
    Entry entry = leaf.entry();
    return new View(
        entry.totalHours().isZero() ? "" : Saying.hoursInWords(entry.totalHours()),
        entry.totalCost().isZero() ? "" : money.money(entry.totalCost()),
        phases.shares(entry),
        leaf.html().get(),
        entry.lessons(),
        bench.notes(entry),
        new Prints(page).besideText(leaf, false));
  }

  private Optional<String> cover(Leaf leaf) {
    return leaf.cover()
        .map(shot -> addresses.of(Addresses.print(shot.facts(), PrintSize.largest(shot.facts()))));
  }
}
