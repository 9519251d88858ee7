package ribband.site;

import java.time.LocalDate;
import java.time.Year;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.ToLongFunction;
import java.util.stream.IntStream;
import ribband.chart.Caption;
import ribband.chart.Chart;
import ribband.chart.Hatch;
import ribband.chart.PhaseBars;
import ribband.chart.RunningCurve;
import ribband.chart.StackedMonths;
import ribband.chart.Yardstick;
import ribband.chart.YearOfNights;
import ribband.journal.Entry;
import ribband.ledger.PhaseRow;
import ribband.ledger.Purchases.Spent;
import ribband.ledger.Row;
import ribband.measure.Currency;
import ribband.measure.Hours;
import ribband.measure.Money;
import ribband.measure.Saying;

/** Hands the ledger's figures to the charts, with the words around them. Each is none or one. */
final class Charts {
  private final Book book;

  Charts(Book book) {
    this.book = book;
  }

  /** Hours per month, stacked by phase. */
  List<Chart<StackedMonths>> months() {
    List<PhaseRow> rows = book.ledger().phases();
    if (book.ledger().months().isEmpty() || rows.isEmpty()) {
      return List.of();
    }
    List<StackedMonths.Phase> phases =
        rows.stream()
            .map(row -> new StackedMonths.Phase(row.phase().title(), hatch(row.phase().id())))
            .toList();
    return List.of(
        StackedMonths.chart(
            new Caption(
                "months-chart",
                "Hours by month",
                "A bar for each month, stacked by phase, each phase with its own hatching.",
                monthsSummary()),
            phases,
            stacked(rows.stream().map(row -> row.phase().id()).toList()),
            Yardstick.hours()));
  }

  private String monthsSummary() {
    return book.records()
        .bestMonth()
        .map(
            best ->
                "The most in a month was "
                    + Saying.hoursInWords(best.hours())
                    + ", in "
                    + Saying.month(best.period())
                    + ".")
        .orElse("No hours yet.");
  }

  private List<StackedMonths.Month> stacked(List<String> ids) {
    List<StackedMonths.Month> months = new ArrayList<>();
    for (Row<YearMonth> row : book.ledger().months()) {
      List<Long> amounts = ids.stream().map(id -> row.sums().hoursOf(id).seconds()).toList();
      months.add(new StackedMonths.Month(row.period(), amounts));
    }
    return months;
  }

  /** One phase's hours per month. */
  List<Chart<StackedMonths>> phaseMonths(PhaseRow row) {
    String id = row.phase().id();
    Hours carried = book.ledger().carried().hoursOf(id);
    if (row.hours().seconds() == carried.seconds()) {
      return List.of();
    }
    return List.of(
        StackedMonths.chart(
            new Caption(
                "phase-chart",
                row.phase().title() + ", hours by month",
                "A bar for each month.",
                carried.isZero()
                    ? Saying.hoursInWords(row.hours()) + " in all."
                    : Saying.hoursInWords(carried)
                        + " more were carried in from before this journal."),
            List.of(new StackedMonths.Phase(row.phase().title(), hatch(id))),
            stacked(List.of(id)),
            Yardstick.hours()));
  }

  /** The running total of hours. */
  List<Chart<RunningCurve>> runningHours() {
    List<RunningCurve.Step> steps = new ArrayList<>();
    book.ledger()
        .nights()
        .forEach((date, hours) -> steps.add(new RunningCurve.Step(date, hours.seconds())));
    Hours planned =
        Hours.sum(book.journal().phases().stream().flatMap(p -> p.hours().stream()).toList());
    return curve(
        new Caption(
            "hours-chart",
            "Running hours",
            "All hours worked, added up night by night, as one curve.",
            "She stands at " + Saying.hoursInWords(book.ledger().whole().totalHours()) + "."),
        book.ledger().carried().totalHours().seconds(),
        steps,
        new RunningCurve.Plan(planned.seconds(), "plan " + Saying.hours(planned)),
        Yardstick.hours());
  }

  /** The running investment. */
  List<Chart<RunningCurve>> runningMoney() {
    if (!book.showsMoney()) {
      return List.of();
    }
    List<RunningCurve.Step> steps = new ArrayList<>();
    for (Spent spent : book.purchases().lines()) {
      // Private money stands at its month's end, which the last month has not seen yet.
      spent
          .date()
          .map(date -> book.journal().asOf().filter(date::isAfter).orElse(date))
          .ifPresent(date -> steps.add(new RunningCurve.Step(date, spent.amount().minor())));
    }
    Money planned =
        Money.sum(book.journal().phases().stream().flatMap(p -> p.cost().stream()).toList());
    return curve(
        new Caption(
            "money-chart",
            "Running investment",
            "All money spent, added up by date, as one curve.",
            "She has cost " + book.words().money(book.ledger().whole().totalCost()) + "."),
        book.ledger().carried().totalCost().minor(),
        steps,
        new RunningCurve.Plan(
            planned.minor(), "plan " + Saying.moneyRounded(planned, book.words().currency())),
        money());
  }

  private static List<Chart<RunningCurve>> curve(
      Caption caption,
      long carried,
      List<RunningCurve.Step> steps,
      RunningCurve.Plan plan,
      Yardstick yardstick) {
    if (steps.isEmpty()) {
      return List.of();
    }
    List<RunningCurve.Plan> plans = plan.amount() == 0 ? List.of() : List.of(plan);
    return List.of(RunningCurve.chart(caption, carried, steps, List.of(), plans, yardstick));
  }

  private Yardstick money() {
    Currency currency = book.words().currency();
    long whole =
        IntStream.range(0, currency.digits()).mapToLong(i -> 10).reduce(1, Math::multiplyExact);
    return new Yardstick(
        "Money",
        whole,
        Yardstick.Division.TENTHS,
        minor -> Saying.moneyRounded(new Money(minor), currency),
        minor -> Saying.money(new Money(minor), currency),
        minor -> Saying.money(new Money(minor), currency));
  }

  /** Hours of each phase beside the plan. */
  List<Chart<PhaseBars>> phaseHours() {
    return phaseBars(
        "phases-chart",
        "Hours by phase",
        row -> row.hours().seconds(),
        row -> row.phase().hours().map(Hours::seconds),
        Yardstick.hours());
  }

  /** Money of each phase beside the plan. */
  List<Chart<PhaseBars>> phaseMoney() {
    return book.showsMoney()
        ? phaseBars(
            "phase-money-chart",
            "Money by phase",
            row -> row.cost().minor(),
            row -> row.phase().cost().map(Money::minor),
            money())
        : List.of();
  }

  private List<Chart<PhaseBars>> phaseBars(
      String id,
      String title,
      ToLongFunction<PhaseRow> actual,
      Function<PhaseRow, Optional<Long>> plan,
      Yardstick yardstick) {
    List<PhaseBars.Phase> phases = new ArrayList<>();
    for (PhaseRow row : book.ledger().phases()) {
      phases.add(
          new PhaseBars.Phase(
              row.phase().title(),
              hatch(row.phase().id()),
              actual.applyAsLong(row),
              plan.apply(row).stream().toList()));
    }
    Caption caption =
        new Caption(
            id,
            title,
            "A bar for each phase; a mark stands where the plan has it.",
            "A mark on a line is the plan of that phase.");
    return phases.isEmpty() ? List.of() : List.of(PhaseBars.chart(caption, phases, yardstick));
  }

  /** Where a month's hours went; none where one phase took them all. */
  List<Chart<PhaseBars>> monthPhases(Row<YearMonth> month) {
    List<PhaseBars.Phase> phases =
        book.ledger().phases().stream()
            .filter(row -> !month.sums().hoursOf(row.phase().id()).isZero())
            .map(
                row ->
                    new PhaseBars.Phase(
                        row.phase().title(),
                        hatch(row.phase().id()),
                        month.sums().hoursOf(row.phase().id()).seconds(),
                        List.of()))
            .toList();
    return phases.size() < 2
        ? List.of()
        : List.of(
            PhaseBars.chart(
                new Caption(
                    "month-chart",
                    "Hours of " + Saying.month(month.period()) + " by phase",
                    "A bar for each phase that was worked on.",
                    Saying.hoursInWords(month.hours()) + " in all."),
                phases,
                Yardstick.hours()));
  }

  /** The nights of a year; those with a page to show lead there. */
  Chart<YearOfNights> year(Year year, String page) {
    Map<LocalDate, Entry> entries = book.firstEntryOfDay();
    List<YearOfNights.Night> nights = new ArrayList<>();
    book.ledger()
        .nights()
        .forEach(
            (date, hours) -> {
              String href =
                  Optional.ofNullable(entries.get(date))
                      .map(entry -> Addresses.href(page, Addresses.entry(entry)))
                      .orElse("");
              nights.add(new YearOfNights.Night(date, hours.seconds(), href));
            });
    return YearOfNights.chart(
        new Caption(
            "nights-" + year,
            "Nights of " + year,
            "A ruled line for each month; on it a tick for each night, as tall as its hours.",
            yearSummary(year)),
        year.getValue(),
        nights,
        Yardstick.hours());
  }

  private String yearSummary(Year year) {
    List<Hours> worked =
        book.ledger().nights().entrySet().stream()
            .filter(night -> Year.from(night.getKey()).equals(year))
            .map(Map.Entry::getValue)
            .toList();
    return Saying.counted(worked.size(), "night", "nights")
        + ", "
        + Saying.hoursInWords(Hours.sum(worked))
        + ".";
  }

  private int hatch(String phase) {
    List<String> ids = book.ledger().phases().stream().map(row -> row.phase().id()).toList();
    return Hatch.of(Math.max(0, ids.indexOf(phase)));
  }
}
