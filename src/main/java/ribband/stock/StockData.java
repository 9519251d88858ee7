package ribband.stock;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import ribband.journal.Entry;
import ribband.journal.Outlay;
import ribband.journal.Purchase;
import ribband.ledger.Cell;
import ribband.ledger.Cell.Blank;
import ribband.ledger.Cell.Count;
import ribband.ledger.Cell.Measured;
import ribband.ledger.Cell.Paid;
import ribband.ledger.Cell.Words;
import ribband.ledger.Sheet;
import ribband.measure.Currency;
import ribband.measure.Dimension;
import ribband.measure.Money;
import ribband.measure.Quantity;
import ribband.measure.Saying;
import ribband.stock.Move.Kind;

/** The stock as sheets for other programs: amounts in each material's own unit, areas in in2. */
public final class StockData {
  private static final List<String> SHELF =
      List.of(
          "material",
          "unit",
          "opening",
          "bought",
          "found",
          "used",
          "estimated",
          "unrecorded",
          "returned",
          "short",
          "on_hand",
          "value",
          "on_order",
          "needed",
          "never_below",
          "lacking",
          "packs",
          "pack",
          "runs_out",
          "order_by");
  private static final List<String> MOVES =
      List.of(
          "material",
          "date",
          "move",
          "amount",
          "unit",
          "worth",
          "short",
          "on_hand",
          "value",
          "entry");
  private static final List<String> KITS =
      List.of(
          "material",
          "date",
          "from",
          "amount",
          "unit",
          "cost",
          "left",
          "emptied",
          "nights",
          "joints",
          "coats",
          "pieces",
          "area_in2",
          "entry");
  private static final List<String> SPREADS =
      List.of(
          "adhesive",
          "material",
          "date",
          "area_in2",
          "amount",
          "unit",
          "in2_per_unit",
          "stated_in2_per_unit",
          "entry");

  private final Currency currency;

  private StockData(Currency currency) {
    this.currency = currency;
  }

  /** The sheet of one list, over some shelves. */
  public static Sheet of(StockList list, List<Shelf> shelves, Currency currency) {
    StockData data = new StockData(currency);
    return switch (list) {
      case SHELF -> Sheet.of(SHELF, shelves.stream().map(data::shelf).toList());
      case MOVES -> Sheet.of(MOVES, data.moves(shelves));
      case KITS -> Sheet.of(KITS, data.kits(shelves));
      case SPREADS -> Sheet.of(SPREADS, data.spreads(shelves));
    };
  }

  private List<Cell> shelf(Shelf shelf) {
    Quantity none = Quantity.none(shelf.unit());
    Quantity shortfalls = shelf.moves().stream().map(Move::shortfall).reduce(none, Quantity::plus);
    Optional<Need> need = shelf.need();
    return List.of(
        Words.of(shelf.material()),
        Words.of(shelf.unit().name()),
        amount(shelf.sum(Kind.OPENING)),
        amount(shelf.sum(Kind.BOUGHT)),
        amount(shelf.sum(Kind.FOUND)),
        amount(shelf.sum(Kind.USED)),
        amount(shelf.sum(Kind.ESTIMATED)),
        amount(shelf.sum(Kind.MISSING)),
        amount(shelf.sum(Kind.RETURNED)),
        amount(shortfalls),
        amount(shelf.amountOnHand()),
        money(shelf.worthOnHand()),
        amount(shelf.amountOnOrder()),
        amount(need.map(Need::forPieces)),
        amount(need.map(Need::neverBelow)),
        amount(need.map(Need::lacking)),
        need.flatMap(Need::order).<Cell>map(o -> new Count(o.count())).orElse(new Blank()),
        need.flatMap(Need::order)
            .<Cell>map(o -> Words.of(Saying.quantity(o.pack())))
            .orElse(new Blank()),
        day(need.flatMap(Need::runsOut)),
        day(need.flatMap(Need::orderBy)));
  }

  private List<List<Cell>> moves(List<Shelf> shelves) {
    List<List<Cell>> rows = new ArrayList<>();
    for (Shelf shelf : shelves) {
      for (Move move : shelf.moves()) {
        rows.add(
            List.of(
                Words.of(shelf.material()),
                day(move.date()),
                Words.of(move.kind().word()),
                amount(move.amount()),
                Words.of(shelf.unit().name()),
                money(move.onHand().map(there -> move.worth())),
                amount(move.shortfall()),
                amount(move.onHand()),
                money(move.worthAfter()),
                entry(move.entry())));
      }
    }
    return rows;
  }

  private List<List<Cell>> kits(List<Shelf> shelves) {
    List<List<Cell>> rows = new ArrayList<>();
    for (Shelf shelf : shelves) {
      for (Kit kit : shelf.kits()) {
        rows.add(
            List.of(
                Words.of(shelf.material()),
                day(kit.date()),
                Words.of(kit.outlay().flatMap(Outlay::purchase).flatMap(Purchase::from).orElse("")),
                amount(kit.amount().in(shelf.unit())),
                Words.of(shelf.unit().name()),
                money(kit.outlay().map(Outlay::amount)),
                amount(kit.left().in(shelf.unit())),
                day(kit.emptied()),
                new Count(kit.nights()),
                new Count(kit.joints()),
                new Count(kit.coats()),
                Words.of(pieces(kit.pieces())),
                amount(kit.area()),
                entry(kit.entry())));
      }
    }
    return rows;
  }

  private static String pieces(Map<String, Integer> pieces) {
    return pieces.entrySet().stream()
        .map(made -> made.getValue() + " " + made.getKey())
        .collect(Collectors.joining(", "));
  }

  private List<List<Cell>> spreads(List<Shelf> shelves) {
    List<List<Cell>> rows = new ArrayList<>();
    for (Shelf shelf : shelves) {
      for (SpreadRate rate : shelf.spreads()) {
        for (SpreadRate.Measure measure : rate.measures()) {
          rows.add(
              List.of(
                  Words.of(rate.adhesive().name()),
                  Words.of(shelf.material()),
                  day(Optional.of(measure.entry().date())),
                  amount(measure.area()),
                  amount(measure.amount()),
                  Words.of(shelf.unit().name()),
                  amount(measure.spread().areaPer(shelf.unit())),
                  amount(stated(rate, shelf)),
                  entry(Optional.of(measure.entry()))));
        }
      }
    }
    return rows;
  }

  private static Optional<Quantity> stated(SpreadRate rate, Shelf shelf) {
    Dimension counted = shelf.unit().dimension();
    return rate.adhesive()
        .spread()
        .filter(spread -> spread.amount().unit().dimension() == counted)
        .map(spread -> spread.areaPer(shelf.unit()));
  }

  private static Cell amount(Quantity amount) {
    return new Measured(amount, Saying.quantity(amount));
  }

  private static Cell amount(Optional<Quantity> amount) {
    return amount.map(StockData::amount).orElse(new Blank());
  }

  /** A build that names no currency has no money to tell. */
  private Cell money(Optional<Money> money) {
    return currency.equals(Currency.NONE)
        ? new Blank()
        : money.<Cell>map(m -> new Paid(m, currency)).orElse(new Blank());
  }

  private static Cell day(Optional<LocalDate> day) {
    return day.<Cell>map(d -> new Words(d.toString(), Saying.day(d))).orElse(new Blank());
  }

  private static Cell entry(Optional<Entry> entry) {
    return entry.<Cell>map(e -> Words.of(e.file())).orElse(new Blank());
  }
}
