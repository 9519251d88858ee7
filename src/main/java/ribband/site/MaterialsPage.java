package ribband.site;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import ribband.chart.Chart;
import ribband.chart.ShelfLevel;
import ribband.journal.Entry;
import ribband.measure.Money;
import ribband.measure.Quantity;
import ribband.measure.Saying;
import ribband.measure.ShopTalk;
import ribband.shop.Caution;
import ribband.stock.Kit;
import ribband.stock.Move;
import ribband.stock.Move.Kind;
import ribband.stock.Need;
import ribband.stock.OnOrder;
import ribband.stock.Shelf;
import ribband.stock.StockWords;

/** What is on the shelf, what is still needed, and what each purchase did. */
final class MaterialsPage {
  /** Readers want the newest; every month stands in the chart's figures. */
  private static final int MOST_MOVES = 60;

  private static final int MOST_KITS = 40;

  private final Book book;
  private final StockWords words;
  private final EntryNames names;
  private final ShelfCharts charts;

  MaterialsPage(Book book) {
    this.book = book;
    ShopTalk shop = new ShopTalk(book.journal().project().units());
    this.words =
        new StockWords(
            shop, book.showsMoney() ? Optional.of(book.words().currency()) : Optional.empty());
    this.names = new EntryNames(book.album());
    this.charts = new ShelfCharts(book);
  }

  /** What the template shows. */
  record View(
      String sentence,
      boolean money,
      List<Line> shelf,
      List<Asked> asked,
      List<Section> sections,
      List<String> cautions,
      String governs) {}

  /** A material's row. */
  record Line(
      String name,
      String href,
      String opening,
      String bought,
      String used,
      String left,
      String value) {}

  /** What is still needed of a material. */
  record Asked(String name, String href, boolean order, String words) {}

  /** All about one material. */
  record Section(
      String id,
      String name,
      List<Chart<ShelfLevel>> chart,
      List<String> onOrder,
      List<Story> kits,
      String moreKits,
      List<String> spreads,
      List<MoveLine> moves,
      String moreMoves) {}

  /**
   * How far a purchase went.
   *
   * @param href the entry that bought it; empty for none
   */
  record Story(String came, String href, String rest) {}

  /**
   * A move.
   *
   * @param date for machines; empty for the start
   * @param turns whether the line before is of another month
   * @param href the entry; empty for none
   */
  record MoveLine(
      String date,
      String day,
      String what,
      String title,
      String href,
      String amount,
      String left,
      String value,
      boolean turns) {}

  View view() {
    List<Shelf> shelves = book.shelves();
    List<Line> lines = new ArrayList<>();
    List<Asked> asked = new ArrayList<>();
    List<Section> sections = new ArrayList<>();
    for (int i = 0; i < shelves.size(); i++) {
      Shelf shelf = shelves.get(i);
      String id = "material-" + (i + 1);
      lines.add(line(shelf, "#" + id));
      shelf
          .need()
          .filter(Need::isAsked)
          .ifPresent(
              need ->
                  asked.add(
                      new Asked(
                          shelf.material(),
                          "#" + id,
                          !need.isEnough(),
                          words.need(shelf, asOf()))));
      sections.add(section(shelf, id));
    }
    return new View(
        sentence(asked),
        book.showsMoney(),
        lines,
        asked,
        sections,
        cautions().stream().map(Caution::words).toList(),
        Caution.GOVERNS);
  }

  private LocalDate asOf() {
    return book.journal().asOf().orElse(LocalDate.EPOCH);
  }

  private String sentence(List<Asked> asked) {
    List<String> toOrder = asked.stream().filter(Asked::order).map(Asked::name).toList();
    String count =
        Saying.counted(book.shelves().size(), "material", "materials") + " on the shelf. ";
    String order =
        toOrder.isEmpty()
            ? "Nothing has to be ordered."
            : "To be ordered: " + Saying.list(toOrder) + ".";
    return asked.isEmpty() ? count.strip() : count + order;
  }

  private Line line(Shelf shelf, String href) {
    return new Line(
        shelf.material(),
        href,
        amount(shelf.sum(Kind.OPENING)),
        amount(shelf.sum(Kind.BOUGHT, Kind.FOUND)),
        amount(shelf.sum(Kind.USED, Kind.ESTIMATED, Kind.MISSING)),
        shelf.amountOnHand().map(words::own).orElse("unknown"),
        money(shelf.worthOnHand()));
  }

  private String amount(Quantity amount) {
    return amount.isZero() ? "–" : words.own(amount);
  }

  private String money(Optional<Money> money) {
    return book.showsMoney() ? book.words().money(money) : "";
  }

  private Section section(Shelf shelf, String id) {
    List<Kit> kits = shelf.kits().stream().filter(kit -> isPublic(kit.entry())).toList();
    List<Move> moves = new ArrayList<>(shelf.moves());
    Collections.reverse(moves);
    MonthTurn month = new MonthTurn();
    return new Section(
        id,
        Saying.capitalised(shelf.material()),
        charts.level(shelf, id),
        shelf.onOrder().stream().filter(o -> o.entry().isPublic()).map(this::onOrder).toList(),
        kits.subList(Math.max(0, kits.size() - MOST_KITS), kits.size()).stream()
            .map(this::story)
            .toList(),
        unlisted(shelf.kits().size() - Math.min(kits.size(), MOST_KITS)),
        shelf.spreads().stream()
            .map(rate -> rate.adhesive().name() + ": " + words.spread(rate))
            .toList(),
        moves.stream().limit(MOST_MOVES).map(move -> move(move, month)).toList(),
        moves.size() > MOST_MOVES
            ? "The newest " + MOST_MOVES + " of " + Saying.count(moves.size()) + "."
            : "");
  }

  private static boolean isPublic(Optional<Entry> entry) {
    return entry.filter(e -> !e.isPublic()).isEmpty();
  }

  private static String unlisted(int kits) {
    return kits == 0 ? "" : Saying.count(kits) + " more, not listed.";
  }

  private String onOrder(OnOrder order) {
    return words.own(order.amount()) + ", here on " + Saying.day(order.arrives());
  }

  private Story story(Kit kit) {
    return new Story(words.came(kit), href(kit.entry()), words.went(kit));
  }

  private MoveLine move(Move move, MonthTurn month) {
    boolean named = isPublic(move.entry());
    return new MoveLine(
        named ? move.date().map(LocalDate::toString).orElse("") : "",
        named ? move.date().map(Saying::day).orElse("The start") : "–",
        move.kind().words(),
        named ? move.entry().map(names::of).orElse("") : "Not listed",
        href(move.entry()),
        (move.kind().comes() ? "" : "−") + words.own(move.moved()),
        move.onHand().map(words::own).orElse("unknown"),
        money(move.worthAfter()),
        month.at(move.date()));
  }

  private static String href(Optional<Entry> entry) {
    return entry
        .filter(Entry::isPublic)
        .map(e -> Addresses.href(Addresses.MATERIALS, Addresses.entry(e)))
        .orElse("");
  }

  /** Resin and paint bring their own dangers; a shelf of screws and planks has dust alone. */
  private Set<Caution> cautions() {
    boolean mixed = book.shelves().stream().anyMatch(shelf -> !shelf.spreads().isEmpty());
    return mixed
        ? EnumSet.of(Caution.RESIN, Caution.CUP, Caution.DUST, Caution.SOLVENT)
        : EnumSet.of(Caution.DUST);
  }
}
