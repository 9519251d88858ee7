package ribband.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import ribband.ledger.Cell;
import ribband.ledger.Cell.Blank;
import ribband.ledger.Cell.Measured;
import ribband.ledger.Cell.Paid;
import ribband.ledger.Cell.Words;
import ribband.ledger.Sheet;
import ribband.measure.Currency;
import ribband.measure.Quantity;
import ribband.measure.Saying;
import ribband.measure.ShopTalk;
import ribband.problem.OneLine;
import ribband.problem.Paragraph;
import ribband.stock.Move;
import ribband.stock.Move.Kind;
import ribband.stock.Shelf;
import ribband.stock.SpreadRate;
import ribband.stock.StockList;
import ribband.stock.StockWords;

/** Tells the stock to a person, in the project's units. */
final class StockTable {
  private final ShopTalk shop;
  private final StockWords words;
  private final Optional<Currency> currency;
  private final LocalDate asOf;
  private final PrintWriter out;

  StockTable(ShopTalk shop, Optional<Currency> currency, LocalDate asOf, PrintWriter out) {
    this.shop = shop;
    this.words = new StockWords(shop, currency);
    this.currency = currency;
    this.asOf = asOf;
    this.out = out;
  }

  void tell(StockList list, List<Shelf> shelves) throws IOException {
    switch (list) {
      case SHELF -> shelf(shelves);
      case MOVES -> moves(shelves);
      case KITS -> kits(shelves);
      case SPREADS -> spreads(shelves);
    }
  }

  private void shelf(List<Shelf> shelves) throws IOException {
    SheetTable.write(sheet(shelves), out);
    List<Shelf> asked =
        shelves.stream().filter(s -> s.need().filter(n -> n.isAsked()).isPresent()).toList();
    if (!asked.isEmpty()) {
      out.println();
      out.println("What is still needed");
      for (Shelf shelf : asked) {
        sentence(name(shelf) + ": " + words.need(shelf, asOf));
      }
    }
  }

  private Sheet sheet(List<Shelf> shelves) {
    List<String> columns =
        new ArrayList<>(List.of("material", "opening", "bought", "used", "on hand"));
    if (currency.isPresent()) {
      columns.add("value");
    }
    return Sheet.of(columns, shelves.stream().map(this::row).toList());
  }

  private List<Cell> row(Shelf shelf) {
    List<Cell> row = new ArrayList<>();
    row.add(Words.of(name(shelf)));
    row.add(amount(shelf.sum(Kind.OPENING)));
    row.add(amount(shelf.sum(Kind.BOUGHT, Kind.FOUND)));
    row.add(amount(shelf.sum(Kind.USED, Kind.ESTIMATED, Kind.MISSING)));
    row.add(
        shelf
            .amountOnHand()
            .<Cell>map(q -> new Measured(q, words.own(q)))
            .orElse(Words.of("unknown")));
    currency.ifPresent(
        c -> row.add(shelf.worthOnHand().<Cell>map(m -> new Paid(m, c)).orElse(new Blank())));
    return row;
  }

  private Cell amount(Quantity amount) {
    return amount.isZero() ? new Blank() : new Measured(amount, words.own(amount));
  }

  private void moves(List<Shelf> shelves) throws IOException {
    List<String> columns = new ArrayList<>(List.of("entry", "what", "amount", "on hand"));
    if (currency.isPresent()) {
      columns.add("value");
    }
    for (Shelf shelf : shelves) {
      heading(shelf, shelves);
      SheetTable.write(Sheet.of(columns, shelf.moves().stream().map(this::move).toList()), out);
      shelf
          .onOrder()
          .forEach(
              o ->
                  sentence(
                      "on order: "
                          + words.own(o.amount())
                          + ", here on "
                          + Saying.day(o.arrives())));
    }
  }

  private List<Cell> move(Move move) {
    List<Cell> row = new ArrayList<>();
    row.add(
        Words.of(
            move.entry()
                .map(e -> move.date().orElse(e.date()) + " " + e.title())
                .orElse("the start")));
    row.add(Words.of(move.kind().words()));
    row.add(amount(move.amount()));
    row.add(move.onHand().<Cell>map(q -> new Measured(q, words.own(q))).orElse(new Blank()));
    currency.ifPresent(
        c -> row.add(move.worthAfter().<Cell>map(m -> new Paid(m, c)).orElse(new Blank())));
    return row;
  }

  private void kits(List<Shelf> shelves) {
    for (Shelf shelf : shelves) {
      heading(shelf, shelves);
      if (shelf.kits().isEmpty()) {
        sentence("nothing was ever bought or counted");
      }
      shelf.kits().forEach(kit -> sentence(words.kit(kit)));
    }
  }

  private void spreads(List<Shelf> shelves) throws IOException {
    if (shelves.stream().allMatch(shelf -> shelf.spreads().isEmpty())) {
      out.println("no adhesive in project.yaml is mixed from it");
    }
    for (Shelf shelf : shelves) {
      for (SpreadRate rate : shelf.spreads()) {
        out.println(OneLine.of(rate.adhesive().name()));
        if (!rate.measures().isEmpty()) {
          SheetTable.write(
              Sheet.of(
                  List.of("entry", "area", "used", "spread"),
                  rate.measures().stream().map(this::measure).toList()),
              out);
        }
        sentence(words.spread(rate));
        out.println();
      }
    }
  }

  private List<Cell> measure(SpreadRate.Measure measure) {
    return List.of(
        Words.of(measure.entry().date() + " " + measure.entry().title()),
        new Measured(measure.area(), shop.reckoned(measure.area())),
        amount(measure.amount()),
        Words.of(shop.spread(measure.spread())));
  }

  private void sentence(String text) {
    out.print(Paragraph.of("  ", 4, text));
  }

  private void heading(Shelf shelf, List<Shelf> shelves) {
    if (shelf != shelves.get(0)) {
      out.println();
    }
    out.println(name(shelf));
  }

  private static String name(Shelf shelf) {
    return OneLine.of(shelf.material());
  }
}
