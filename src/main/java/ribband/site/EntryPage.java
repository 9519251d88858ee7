package ribband.site;

import java.time.YearMonth;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import ribband.album.Leaf;
import ribband.journal.Entry;
import ribband.ledger.Row;
import ribband.measure.Hours;
import ribband.measure.Saying;

/** One entry: its words, its figures, what was done, its pictures. */
final class EntryPage {
  private final Book book;
  private final EntryPhases phases;
  private final Bench bench;

  EntryPage(Book book) {
    this.book = book;
    this.phases = new EntryPhases(book.journal(), book.ledger(), book.words());
    this.bench = new Bench(book.journal(), book.words());
  }

  /**
   * What the template shows.
   *
   * @param title its own, else its day in full
   * @param day in full; empty where it is the title
   * @param html the text, made safe
   * @param hours total, said; empty for none
   * @param shares hours and money by phase
   * @param neighbours the entries before and after, as far as there are any
   */
  record View(
      String title,
      String date,
      String day,
      String monthHref,
      String month,
      String html,
      String hours,
      String cost,
      String hoursToDate,
      List<EntryPhases.Share> shares,
      List<Bench.Note> notes,
      List<String> lessons,
      List<Prints.View> prints,
      List<Link> neighbours) {}

  /**
   * A link to another page.
   *
   * @param rel {@code prev} or {@code next}
   */
  record Link(String rel, String words, String href) {}

  View view(Leaf leaf, Row<Entry> row, Optional<Entry> before, Optional<Entry> after) {
    Entry entry = leaf.entry();
    String page = Addresses.entry(entry);
    String html = leaf.html().get();
    List<Link> neighbours = new ArrayList<>();
    before.ifPresent(
        e -> neighbours.add(new Link("prev", e.title(), Addresses.href(page, Addresses.entry(e)))));
    after.ifPresent(
        e -> neighbours.add(new Link("next", e.title(), Addresses.href(page, Addresses.entry(e)))));
    boolean titled = EntryNames.isTitled(entry);
    String day = Saying.dayInFull(entry.date());
    YearMonth month = YearMonth.from(entry.date());
    return new View(
        titled ? entry.title() : day,
        entry.date().toString(),
        titled ? day : "",
        Addresses.href(page, Addresses.month(month)),
        Saying.month(month),
        html,
        entry.totalHours().isZero() ? "" : inColumn(entry.totalHours()),
        entry.totalCost().isZero() ? "" : book.words().money(entry.totalCost()),
        inColumn(row.hoursToDate()),
        phases.shares(entry),
        bench.notes(entry),
        entry.lessons(),
        new Prints(page).besideText(leaf, !html.contains("<img")),
        neighbours);
  }

  /** As the shares of phases stand below. */
  private static String inColumn(Hours hours) {
    return Saying.hoursInColumn(hours) + " " + Saying.hourOrHours(hours);
  }
}
