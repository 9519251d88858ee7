package ribband.site;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import ribband.chart.Chart;
import ribband.chart.PhaseBars;
import ribband.chart.RunningCurve;
import ribband.journal.Entry;
import ribband.journal.Purchase;
import ribband.ledger.PerHour;
import ribband.ledger.PhaseRow;
import ribband.ledger.Purchases;
import ribband.ledger.Purchases.Spent;
import ribband.ledger.WholePlan;
import ribband.measure.Hours;
import ribband.measure.Money;
import ribband.measure.Saying;

/** The running investment: every purchase by date, by phase, by supplier. */
final class MoneyPage {
  private final Book book;

  MoneyPage(Book book) {
    this.book = book;
  }

  /** What the template shows. */
  record View(
      String total,
      String sentence,
      List<Chart<RunningCurve>> running,
      List<Chart<PhaseBars>> chart,
      List<Line> lines,
      List<PhaseLine> phases,
      PhaseLine together,
      List<Share> suppliers) {}

  /**
   * An amount.
   *
   * @param date for machines; empty where it is no single day
   * @param href the entry it stands in; empty for none
   * @param turns whether the line before is of another month
   */
  record Line(
      String date,
      String day,
      String what,
      String href,
      String from,
      String phase,
      String amount,
      boolean refund,
      String running,
      boolean turns) {}

  /** A phase's money beside its plan, or that of all of them. */
  record PhaseLine(String title, String href, String actual, String plan, String left) {}

  /** A part of the whole. */
  record Share(String title, String amount, String share) {}

  View view() {
    Money total = book.ledger().whole().totalCost();
    MoneyCharts charts = new MoneyCharts(book);
    return new View(
        book.words().money(total),
        sentence(total),
        charts.running(),
        charts.phases(),
        lines(),
        phases(),
        together(total),
        suppliers(total));
  }

  private String sentence(Money total) {
    if (total.isNegative()) {
      return "More has come back than has gone into the boat: "
          + book.words().money(Money.ZERO.minus(total))
          + ".";
    }
    Hours hours = book.ledger().whole().totalHours();
    String perHour =
        PerHour.of(total, hours)
            .map(each -> ", " + book.words().money(each) + " for each hour of work")
            .orElse("");
    return book.words().money(total) + " has gone into the boat" + perHour + ".";
  }

  private List<Line> lines() {
    List<Line> lines = new ArrayList<>();
    MonthTurn month = new MonthTurn();
    for (Spent spent : book.purchases().lines()) {
      lines.add(
          new Line(
              spent.kind() == Purchases.Kind.PRIVATE
                  ? ""
                  : spent.date().map(Object::toString).orElse(""),
              spent.when(),
              what(spent),
              spent
                  .entry()
                  .map(e -> Addresses.href(Addresses.MONEY, Addresses.entry(e)))
                  .orElse(""),
              spent.from().orElse(""),
              spent.phase().map(book::phaseTitle).orElse(""),
              book.words().money(spent.amount()),
              spent.amount().isNegative(),
              book.words().money(spent.running()),
              month.at(spent.date())));
    }
    return lines;
  }

  private static String what(Spent spent) {
    return switch (spent.kind()) {
      case CARRIED -> "Carried in from before this journal";
      case PRIVATE -> "Not listed";
      case REST -> spent.entry().map(MoneyPage::rest).orElse("");
      case ITEM -> spent.what().map(MoneyPage::item).orElse("");
    };
  }

  private static String rest(Entry entry) {
    return EntryNames.isTitled(entry) ? entry.title() + ", not itemised" : "Not itemised";
  }

  private static String item(Purchase purchase) {
    return purchase
        .amount()
        .map(
            packs ->
                purchase.what()
                    + ", "
                    + (packs.count() > 1 ? packs.count() + " of " : "")
                    + Saying.quantity(packs.pack()))
        .orElse(purchase.what());
  }

  private List<PhaseLine> phases() {
    List<PhaseLine> lines = new ArrayList<>();
    for (PhaseRow row : book.ledger().phases()) {
      String id = row.phase().id();
      lines.add(
          new PhaseLine(
              row.phase().title(),
              Addresses.href(Addresses.MONEY, Addresses.phase(id)),
              book.words().moneyOrDash(row.cost()),
              book.words().money(row.phase().cost()),
              row.phase()
                  .cost()
                  .map(plan -> book.words().money(plan.minus(row.cost())))
                  .orElse("")));
    }
    return lines;
  }

  private PhaseLine together(Money total) {
    WholePlan plan = WholePlan.of(book.ledger().phases());
    return new PhaseLine(
        "Together",
        "",
        book.words().money(total),
        plan.cost().map(book.words()::money).orElse(plan.partCost() ? "not all planned" : ""),
        plan.cost().map(cost -> book.words().money(cost.minus(total))).orElse(""));
  }

  /** What came back is no share of anything. */
  private static String share(Money part, Money total) {
    boolean isShare = !part.isNegative() && !total.isNegative();
    return isShare ? Saying.share(part.minor(), total.minor()) : "–";
  }

  private List<Share> suppliers(Money total) {
    List<Share> shares = new ArrayList<>();
    for (Map.Entry<String, Money> supplier : book.purchases().bySupplier().entrySet()) {
      shares.add(
          new Share(
              supplier.getKey().isEmpty() ? "Nobody named" : supplier.getKey(),
              book.words().money(supplier.getValue()),
              share(supplier.getValue(), total)));
    }
    return shares;
  }
}
