package ribband.site;

import java.time.LocalDate;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import ribband.ahead.Ahead;
import ribband.album.Album;
import ribband.album.Leaf;
import ribband.journal.Entry;
import ribband.journal.Entry.Shown;
import ribband.journal.Journal;
import ribband.ledger.Ledger;
import ribband.ledger.Purchases;
import ribband.ledger.Records;
import ribband.ledger.Row;
import ribband.measure.SaidMoney;
import ribband.stock.Shelf;
import ribband.stock.Stock;

/**
 * All that pages read from: the album and everything reckoned from its journal.
 *
 * @param whole what lies ahead, of use or not
 */
record Book(
    Album album,
    Ledger ledger,
    Stock stock,
    Ahead whole,
    Records records,
    Purchases purchases,
    SaidMoney words,
    String release) {

  static Book of(Album album, Ledger ledger, Stock stock, Ahead ahead, String release) {
    Journal journal = album.journal();
    return new Book(
        album,
        ledger,
        stock,
        ahead,
        Records.of(ledger),
        Purchases.of(journal),
        journal.project().saidMoney(),
        release);
  }

  Journal journal() {
    return album.journal();
  }

  /** Shelves of materials that readers may hear of. */
  List<Shelf> shelves() {
    return stock.shelves().stream().filter(shelf -> shelf.shown() == Shown.PUBLIC).toList();
  }

  boolean hasMaterials() {
    return !shelves().isEmpty();
  }

  /** What lies ahead; empty where nothing does that anybody wrote down. */
  Optional<Ahead> ahead() {
    return Optional.of(whole).filter(AheadPage::isOfUse);
  }

  boolean hasLessons() {
    return album.shown().stream().anyMatch(leaf -> !leaf.entry().lessons().isEmpty());
  }

  boolean showsMoney() {
    return words.shown() && purchases.lines().size() > 0;
  }

  /** Leaves that may be shown, the newest first. */
  List<Leaf> newestFirst() {
    List<Leaf> leaves = new ArrayList<>(album.shown());
    Collections.reverse(leaves);
    return leaves;
  }

  /** Leaves that may be shown, by month, in order. */
  Map<YearMonth, List<Leaf>> shownByMonth() {
    return album.shown().stream()
        .collect(
            Collectors.groupingBy(
                leaf -> YearMonth.from(leaf.entry().date()),
                LinkedHashMap::new,
                Collectors.toList()));
  }

  String phaseTitle(String id) {
    return journal().phaseTitle(id);
  }

  Optional<Row<YearMonth>> month(YearMonth month) {
    return ledger.months().stream().filter(row -> row.period().equals(month)).findFirst();
  }

  /** The first entry of each day that may be shown. */
  Map<LocalDate, Entry> firstEntryOfDay() {
    return album.shown().stream()
        .map(Leaf::entry)
        .collect(Collectors.toMap(Entry::date, entry -> entry, (first, second) -> first));
  }
}
