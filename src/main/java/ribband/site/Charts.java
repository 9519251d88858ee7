package ribband.site;

import java.time.LocalDate;
import java.time.Year;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
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
            stacked(id -> rows.stream().map(row -> row.phase().id()).toList()),
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

  private List<StackedMonths.Month> stacked(Function<YearMonth, List<String>> ids) {
    List<StackedMonths.Month> months = new ArrayList<>();
    for (Row<YearMonth> row : book.ledger().months()) {
      List<Long> amounts =
          ids.apply(row.period()).stream().map(id -> row.sums().hoursOf(id).seconds()).toList();
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
    List<StackedMonths.Month> months = stacked(month -> List.of(id));
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
            months,
            Yardstick.hours()));
  }

  /** The running total of hours. */
  List<Chart<RunningCurve>> runningHours() {
    List<RunningCurve.Step> steps =
        book.ledger().nights().entrySet().stream()
            .map(night -> new RunningCurve.Step(night.getKey(), night.getValue().seconds()))
            .toList();
    if (steps.isEmpty()) {
      return List.of();
    }
    Hours planned =
        Hours.sum(book.journal().phases().stream().flatMap(p -> p.hours().stream()).toList());
    List<RunningCurve.Plan> plan =
        planned.isZero()
            ? List.of()
            : List.of(new RunningCurve.Plan(planned.seconds(), "plan " + Saying.hours(planned)));
    return List.of(
        RunningCurve.chart(
            new Caption(
                "hours-chart",
                "Running hours",
                "All hours worked, added up night by night, as one curve.",
                "She stands at " + Saying.hoursInWords(book.ledger().whole().totalHours()) + "."),
            book.ledger().carried().totalHours().seconds(),
            steps,
            List.of(),
            plan,
            Yardstick.hours()));
  }

  /** The running investment. */
  List<Chart<RunningCurve>> runningMoney() {
    long carried = book.ledger().carried().totalCost().minor();
    List<RunningCurve.Step> steps = new ArrayList<>();
    for (Spent spent : book.purchases().lines()) {
      spent
          .date()
          .ifPresent(date -> steps.add(new RunningCurve.Step(date, spent.amount().minor())));
    }
    if (!book.showsMoney() || steps.isEmpty()) {
      return List.of();
    }
    Money planned =
        Money.sum(book.journal().phases().stream().flatMap(p -> p.cost().stream()).toList());
    List<RunningCurve.Plan> plan =
        planned.isZero()
            ? List.of()
            : List.of(
                new RunningCurve.Plan(
                    planned.minor(),
                    "plan " + Saying.moneyRounded(planned, book.words().currency())));
    return List.of(
        RunningCurve.chart(
            new Caption(
                "money-chart",
                "Running investment",
                "All money spent, added up by date, as one curve.",
                "She has cost " + book.words().money(book.ledger().whole().totalCost()) + "."),
            carried,
            steps,
            List.of(),
            plan,
            money()));
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
    List<PhaseBars.Phase> phases =
        book.ledger().phases().stream()
            .map(
                row ->
                    new PhaseBars.Phase(
                        row.phase().title(),
                        hatch(row.phase().id()),
                        row.hours().seconds(),
                        row.phase().hours().map(Hours::seconds).stream().toList()))
            .toList();
    return phases.isEmpty()
        ? List.of()
        : List.of(
            PhaseBars.chart(
                new Caption(
                    "phases-chart",
                    "Hours by phase",
                    "A bar for each phase; a mark stands where the plan has it.",
                    "A mark on a line is the plan of that phase."),
                phases,
                Yardstick.hours()));
  }

  /** Money of each phase beside the plan. */
  List<Chart<PhaseBars>> phaseMoney() {
    if (!book.showsMoney()) {
      return List.of();
    }
    List<PhaseBars.Phase> phases =
        book.ledger().phases().stream()
            .map(
                row ->
                    new PhaseBars.Phase(
                        row.phase().title(),
                        hatch(row.phase().id()),
                        row.cost().minor(),
                        row.phase().cost().map(Money::minor).stream().toList()))
            .toList();
    return phases.isEmpty()
        ? List.of()
        : List.of(
            PhaseBars.chart(
                new Caption(
                    "phase-money-chart",
                    "Money by phase",
                    "A bar for each phase; a mark stands where the plan has it.",
                    "A mark on a line is the plan of that phase."),
                phases,
                money()));
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
