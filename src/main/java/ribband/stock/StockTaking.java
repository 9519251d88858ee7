package ribband.stock;

import java.time.LocalDate;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.Deque;
import java.util.HashSet;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import ribband.joints.EstimatedUse;
import ribband.journal.Amount;
import ribband.journal.Entry;
import ribband.journal.Entry.Shown;
import ribband.journal.Journal;
import ribband.journal.Material;
import ribband.journal.Project;
import ribband.measure.Dimension;
import ribband.measure.Money;
import ribband.measure.Name;
import ribband.measure.Quantity;
import ribband.measure.Unit;
import ribband.problem.Place;
import ribband.stock.Move.Kind;
import ribband.stock.ShelfBook.Known;
import ribband.stock.Stock.Told;

/**
 * Goes through a journal once, day by day: what arrived that day, then entry by entry what was
 * bought, used and counted. One use.
 */
final class StockTaking {
  private final Journal journal;
  private final Project project;
  private final LocalDate asOf;
  private final Told told;
  private final List<Entry> entries;
  private final Map<String, String> names = new LinkedHashMap<>();
  private final Map<String, ShelfBook> books = new LinkedHashMap<>();
  private final Map<String, List<SpreadRate.Measure>> measures = new LinkedHashMap<>();
  private final Set<String> shown = new HashSet<>();
  private final StockWarnings warnings = new StockWarnings();

  StockTaking(Journal journal, LocalDate asOf, Told told) {
    this.journal = journal;
    this.project = journal.project();
    this.asOf = asOf;
    this.told = told;
    this.entries = journal.entries().stream().filter(e -> !e.date().isAfter(asOf)).toList();
  }

  Stock take() {
    List<Delivery> deliveries = Delivery.of(entries, warnings);
    openBooks(deliveries);
    Map<Entry, List<Delivery>> atOnce = byEntry(deliveries.stream().filter(Delivery::isAtOnce));
    Deque<Delivery> coming =
        deliveries.stream()
            .filter(d -> !d.isAtOnce())
            .sorted(Comparator.comparing(Delivery::day))
            .collect(Collectors.toCollection(ArrayDeque::new));
    for (Entry entry : entries) {
      arrive(coming, entry.date());
      atOnce.getOrDefault(entry, List.of()).forEach(this::shelve);
      use(entry);
      entry.left().forEach(a -> book(a.material()).count(entry, a.quantity()));
    }
    arrive(coming, asOf);
    return new Stock(shelves(coming), warnings.sorted());
  }

  private static Map<Entry, List<Delivery>> byEntry(Stream<Delivery> deliveries) {
    return deliveries.collect(
        Collectors.groupingBy(Delivery::entry, IdentityHashMap::new, Collectors.toList()));
  }

  private ShelfBook book(String material) {
    return books.get(Name.fold(material));
  }

  /** Every material that is listed or written anywhere has its book, in the unit it is bound to. */
  private void openBooks(List<Delivery> deliveries) {
    for (Material material : project.materials().values()) {
      shown.add(Name.fold(material.name()));
      names.put(Name.fold(material.name()), material.name());
      unit(material).ifPresent(unit -> open(material.name(), unit, Shown.PUBLIC));
    }
    Map<Entry, List<Delivery>> bought = byEntry(deliveries.stream());
    for (Entry entry : entries) {
      bought
          .getOrDefault(entry, List.of())
          .forEach(d -> open(d.material(), d.amount().unit(), entry.shown()));
      entry.used().forEach(a -> open(a.material(), a.quantity().unit(), entry.shown()));
      entry.left().forEach(a -> open(a.material(), a.quantity().unit(), entry.shown()));
    }
    for (Entry entry : entries) {
      EstimatedUse.of(entry, project)
          .forEach(use -> open(use.material(), use.amount().unit(), entry.shown()));
    }
    for (Material material : project.materials().values()) {
      material
          .onHand()
          .ifPresent(
              amount -> book(material.name()).open(amount, material.worth().orElse(Money.ZERO)));
    }
  }

  private static Optional<Unit> unit(Material material) {
    return material
        .unit()
        .or(() -> material.onHand().map(Quantity::unit))
        .or(() -> material.neverBelow().map(Quantity::unit));
  }

  private void open(String material, Unit unit, Shown spelled) {
    String key = Name.fold(material);
    if (spelled == Shown.PUBLIC && shown.add(key)) {
      names.put(key, material);
    }
    names.putIfAbsent(key, material);
    if (!books.containsKey(key)) {
      boolean listed = project.materials().containsKey(key);
      books.put(key, new ShelfBook(unit, listed ? Known.KNOWN : Known.NOT_YET));
    }
  }

  private void arrive(Deque<Delivery> coming, LocalDate upTo) {
    while (!coming.isEmpty() && !coming.peek().day().isAfter(upTo)) {
      shelve(coming.poll());
    }
  }

  private void shelve(Delivery delivery) {
    Move move = book(delivery.material()).buy(delivery.entry(), delivery.day(), delivery.outlay());
    warnings.ofShortfall(move, Place.of(delivery.entry().file()), delivery.material());
  }

  private void use(Entry entry) {
    for (Amount used : entry.used()) {
      GlueWork work = GlueWork.of(entry, Name.fold(used.material()), project);
      Move move = book(used.material()).use(Kind.USED, entry, used.quantity(), told(entry, work));
      warnings.ofShortfall(move, used.place(), used.material());
      told(entry, work)
          .flatMap(GlueWork::measured)
          .ifPresent(adhesive -> measure(adhesive, entry, work, move.amount()));
    }
    for (EstimatedUse use : EstimatedUse.of(entry, project)) {
      if (use.amount().unit().goesWith(book(use.material()).unit())) {
        GlueWork work = GlueWork.of(entry, Name.fold(use.material()), project);
        Move move =
            book(use.material()).use(Kind.ESTIMATED, entry, use.amount(), told(entry, work));
        warnings.ofShortfall(move, Place.of(entry.file()), use.material());
      } else {
        warnings.ofOtherMeasure(entry, use, book(use.material()).unit());
      }
    }
  }

  private Optional<GlueWork> told(Entry entry, GlueWork work) {
    return told == Told.TO_READERS && !entry.isPublic() ? Optional.empty() : Optional.of(work);
  }

  private void measure(String adhesive, Entry entry, GlueWork work, Quantity amount) {
    // What is counted in cans tells no spread.
    Dimension by = amount.unit().dimension();
    if (!amount.isZero() && (by == Dimension.VOLUME || by == Dimension.MASS)) {
      measures
          .computeIfAbsent(adhesive, name -> new ArrayList<>())
          .add(new SpreadRate.Measure(entry, work.area().orElseThrow(), amount));
    }
  }

  private List<Shelf> shelves(Deque<Delivery> coming) {
    Map<String, SpreadRate> spreads = new LinkedHashMap<>();
    project
        .adhesives()
        .forEach(
            (key, adhesive) ->
                spreads.put(key, new SpreadRate(adhesive, measures.getOrDefault(key, List.of()))));
    Needs needs = new Needs(journal, asOf, spreads);
    List<Shelf> shelves = new ArrayList<>();
    Set<String> order = new LinkedHashSet<>(project.materials().keySet());
    order.addAll(books.keySet());
    order.retainAll(books.keySet());
    order.forEach(key -> shelves.add(shelf(key, books.get(key), coming, spreads, needs)));
    return shelves;
  }

  private Shelf shelf(
      String key,
      ShelfBook book,
      Deque<Delivery> coming,
      Map<String, SpreadRate> spreads,
      Needs needs) {
    List<OnOrder> onOrder =
        coming.stream()
            .filter(d -> Name.fold(d.material()).equals(key))
            .map(d -> new OnOrder(d.entry(), d.outlay(), d.amount().in(book.unit()), d.day()))
            .toList();
    Optional<Holding> held = book.held();
    Quantity ordered =
        onOrder.stream().map(OnOrder::amount).reduce(Quantity.none(book.unit()), Quantity::plus);
    return new Shelf(
        names.get(key),
        book.unit(),
        shown.contains(key) ? Shown.PUBLIC : Shown.PRIVATE,
        held,
        book.moves(),
        book.kits(),
        onOrder,
        spreads.values().stream()
            .filter(rate -> GlueWork.materialOf(rate.adhesive()).equals(key))
            .toList(),
        held.map(there -> needs.of(key, there.amount(), ordered, book.moves())));
  }
}
