package ribband.site;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import ribband.chart.Caption;
import ribband.chart.Chart;
import ribband.chart.PhaseBars;
import ribband.chart.RunningCurve;
import ribband.chart.Yardstick;
import ribband.journal.Entry;
import ribband.journal.Purchase;
import ribband.ledger.Purchases.Spent;
import ribband.measure.Currency;
import ribband.measure.Money;
import ribband.measure.Saying;

/** Hands the ledger's money to the charts, with the words around it; nothing where it is hidden. */
final class MoneyCharts {
  /** What is less than this part of the whole is no step that a reader asks about. */
  private static final int SMALLEST_PART = 10;

  private static final int LONGEST_WHAT = 32;

  private final Book book;

  MoneyCharts(Book book) {
    this.book = book;
  }

  /** The running investment, with what made its steps. */
  List<Chart<RunningCurve>> running() {
    List<RunningCurve.Step> steps = new ArrayList<>();
    for (Spent spent : book.showsMoney() ? book.purchases().lines() : List.<Spent>of()) {
      // Private money stands at its month's end, which the last month has not seen yet.
      spent
          .date()
          .map(date -> book.journal().asOf().filter(date::isAfter).orElse(date))
          .ifPresent(date -> steps.add(new RunningCurve.Step(date, spent.amount().minor())));
    }
    if (steps.isEmpty()) {
      return List.of();
    }
    // Where nothing was bought of late, the line goes on level.
    book.journal().asOf().ifPresent(day -> steps.add(new RunningCurve.Step(day, 0)));
    Money planned =
        Money.sum(book.journal().phases().stream().flatMap(p -> p.cost().stream()).toList());
    Caption caption =
        new Caption(
            "money-chart",
            "Running investment",
            "All money spent, added up by date: level from one purchase to the next, down where"
                + " money came back.",
            "She has cost " + book.words().money(book.ledger().whole().totalCost()) + ".");
    return List.of(
        RunningCurve.chart(
            caption,
            RunningCurve.Growth.SUDDEN,
            book.ledger().carried().totalCost().minor(),
            steps,
            large(),
            planned.isZero()
                ? List.of()
                : List.of(
                    new RunningCurve.Plan(
                        planned.minor(),
                        Saying.moneyRounded(planned, book.words().currency()) + " planned")),
            List.of(),
            yardstick()));
  }

  /** The purchases and refunds that a reader sees as steps. */
  private List<RunningCurve.Note> large() {
    long whole = Math.abs(book.ledger().whole().totalCost().minor());
    List<RunningCurve.Note> notes = new ArrayList<>();
    for (Spent spent : book.purchases().lines()) {
      Optional<LocalDate> date = spent.date().filter(day -> spent.entry().isPresent());
      boolean isLarge = Math.abs(spent.amount().minor()) >= whole / SMALLEST_PART;
      if (date.isPresent() && isLarge) {
        notes.add(new RunningCurve.Note(date.get(), what(spent)));
      }
    }
    return notes;
  }

  private String what(Spent spent) {
    String what =
        spent
            .what()
            .map(Purchase::what)
            .or(() -> spent.entry().map(Entry::title))
            .filter(said -> said.length() <= LONGEST_WHAT)
            .map(said -> Saying.capitalised(said) + ", ")
            .orElse("");
    return what + Saying.moneyRounded(spent.amount(), book.words().currency());
  }

  private Yardstick yardstick() {
    Currency currency = book.words().currency();
    long whole =
        IntStream.range(0, currency.digits()).mapToLong(i -> 10).reduce(1, Math::multiplyExact);
    return new Yardstick(
        "Money",
        whole,
        Yardstick.Division.TENTHS,
        minor -> Saying.moneyRounded(new Money(minor), currency),
        minor -> Saying.moneyRounded(new Money(minor), currency),
        minor -> Saying.money(new Money(minor), currency),
        minor -> Saying.money(new Money(minor), currency));
  }

  /** Money of each phase beside the plan. */
  List<Chart<PhaseBars>> phases() {
    return book.showsMoney()
        ? new PhaseCharts(book)
            .beside(
                "phase-money-chart",
                "Money by phase",
                row -> row.cost().minor(),
                row -> row.phase().cost().map(Money::minor),
                yardstick())
        : List.of();
  }
}
