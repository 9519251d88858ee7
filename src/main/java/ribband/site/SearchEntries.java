package ribband.site;

import java.util.List;
import java.util.stream.Stream;
import ribband.album.Leaf;
import ribband.album.Shot;
import ribband.journal.Amount;
import ribband.journal.Entry;
import ribband.journal.Outlay;
import ribband.journal.Phase;
import ribband.journal.Purchase;
import ribband.measure.Saying;

/** What a search may look at: entries that are shown, without an amount of money. */
final class SearchEntries {
  private final Book book;

  SearchEntries(Book book) {
    this.book = book;
  }

  /** The newest first. */
  List<SearchEntry> all() {
    return book.newestFirst().stream().map(this::entry).toList();
  }

  /** Titles of the project's phases, in its order. */
  List<String> phases() {
    return book.journal().phases().stream().map(Phase::title).toList();
  }

  private SearchEntry entry(Leaf leaf) {
    Entry entry = leaf.entry();
    return new SearchEntry(
        Addresses.href(Addresses.HOME, Addresses.entry(entry)),
        entry.title(),
        Saying.day(entry.date()),
        entry.totalHours().isZero() ? "" : Saying.hoursInWords(entry.totalHours()),
        entry.phases().stream().map(book::phaseTitle).toList(),
        materials(entry),
        entry.lessons(),
        leaf.shots().stream().map(Shot::caption).flatMap(c -> c.stream()).toList(),
        leaf.words());
  }

  private static List<String> materials(Entry entry) {
    return Stream.concat(
            entry.used().stream().map(Amount::material),
            entry.outlays().stream()
                .map(Outlay::purchase)
                .flatMap(p -> p.stream())
                .map(Purchase::what))
        .distinct()
        .toList();
  }
}
