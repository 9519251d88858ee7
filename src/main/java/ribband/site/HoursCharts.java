package ribband.site;

import java.time.LocalDate;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import ribband.album.Leaf;
import ribband.chart.Caption;
import ribband.chart.Chart;
import ribband.chart.MonthRows;
import ribband.chart.PhaseBars;
import ribband.chart.RunningCurve;
import ribband.chart.Span;
import ribband.chart.Weight;
import ribband.chart.Yardstick;
import ribband.ledger.PhaseRow;
import ribband.ledger.Row;
import ribband.measure.Hours;
import ribband.measure.Saying;

/** Hands the ledger's hours to the charts, with the words around them. Each is none or one. */
final class HoursCharts {
  private final Book book;

  HoursCharts(Book book) {
    this.book = book;
  }

  /** The running total of hours, with the builder's marks on it. */
  List<Chart<RunningCurve>> running() {
    List<RunningCurve.Step> steps = new ArrayList<>();
    ShownNights shown = ShownNights.of(book);
    shown
        .nights()
        .forEach((date, hours) -> steps.add(new RunningCurve.Step(date, hours.seconds())));
    shown
        .untold()
        .forEach((month, hours) -> steps.add(new RunningCurve.Step(end(month), hours.seconds())));
    if (steps.isEmpty()) {
      return List.of();
    }
    Yardstick yardstick = Yardstick.hours();
    Hours planned =
        Hours.sum(book.journal().phases().stream().flatMap(p -> p.hours().stream()).toList());
    Caption caption =
        new Caption(
            "hours-chart",
            "Running hours",
            "All hours worked, added up night by night, as one curve.",
            "She stands at " + Saying.hoursInWords(book.ledger().whole().totalHours()) + ".");
    return List.of(
        RunningCurve.chart(
            caption,
            RunningCurve.Growth.STEADY,
            book.ledger().carried().totalHours().seconds(),
            steps,
            marks(),
            planned.isZero()
                ? List.of()
                : List.of(
                    new RunningCurve.Plan(
                        planned.seconds(),
                        yardstick.figure().apply(planned.seconds()) + " planned")),
            spans(),
            yardstick));
  }

  /** Hours without a day stand at their month's end, which the last month has not seen yet. */
  private LocalDate end(YearMonth month) {
    LocalDate end = month.atEndOfMonth();
    return book.journal().asOf().filter(end::isAfter).orElse(end);
  }

  /** spec: the marks of private entries are not shown. */
  private List<RunningCurve.Note> marks() {
    return book.album().shown().stream()
        .map(Leaf::entry)
        .flatMap(
            entry -> entry.mark().map(mark -> new RunningCurve.Note(entry.date(), mark)).stream())
        .toList();
  }

  /** From the first night of each phase that may be shown to its last. */
  private List<Span> spans() {
    List<Span> spans = new ArrayList<>();
    for (PhaseRow row : book.ledger().phases()) {
      List<LocalDate> nights =
          book.ledger().entries().stream()
              .filter(entry -> entry.period().isPublic())
              .filter(entry -> !entry.sums().hoursOf(row.phase().id()).isZero())
              .map(entry -> entry.period().date())
              .distinct()
              .toList();
      if (!nights.isEmpty()) {
        LocalDate last = nights.get(nights.size() - 1);
        spans.add(new Span(row.phase().title(), nights.get(0), last, nights));
      }
    }
    return spans;
  }

  /** Hours per month, by phase. */
  List<Chart<MonthRows>> months() {
    List<Row<YearMonth>> months = book.ledger().months();
    List<PhaseRow> rows =
        book.ledger().phases().stream()
            .filter(row -> months.stream().anyMatch(m -> !hoursOf(row, m).isZero()))
            .toList();
    if (rows.isEmpty()) {
      return List.of();
    }
    return List.of(
        MonthRows.chart(
            new Caption(
                "months-chart",
                "Hours by month",
                "A row of bars for all hours and one for each phase, a bar for each month, all on"
                    + " one scale.",
                monthsSummary()),
            Weight.STRONG,
            rows.stream()
                .map(row -> new MonthRows.Phase(row.phase().title(), Weight.QUIET))
                .toList(),
            months(rows),
            Optional.of(months.get(months.size() - 1).period()),
            Yardstick.hours()));
  }

  private static Hours hoursOf(PhaseRow row, Row<YearMonth> month) {
    return month.sums().hoursOf(row.phase().id());
  }

  private List<MonthRows.Month> months(List<PhaseRow> rows) {
    return book.ledger().months().stream()
        .map(
            month ->
                new MonthRows.Month(
                    month.period(),
                    month.hours().seconds(),
                    rows.stream().map(row -> hoursOf(row, month).seconds()).toList()))
        .toList();
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
                    + "."
                    + carried(book.ledger().carried().totalHours()))
        .orElse("No hours yet.");
  }

  /** One phase's hours per month. */
  List<Chart<MonthRows>> phaseMonths(PhaseRow row) {
    Hours carried = book.ledger().carried().hoursOf(row.phase().id());
    if (row.hours().seconds() == carried.seconds()) {
      return List.of();
    }
    return List.of(
        MonthRows.chart(
            new Caption(
                "phase-chart",
                row.phase().title() + ", hours by month",
                "A row of bars for all hours and one for this phase, a bar for each month, both on"
                    + " one scale.",
                Saying.hoursInWords(row.hours()) + " in all." + carried(carried)),
            Weight.QUIET,
            List.of(new MonthRows.Phase(row.phase().title(), Weight.STRONG)),
            months(List.of(row)),
            Optional.empty(),
            Yardstick.hours()));
  }

  private static String carried(Hours hours) {
    return hours.isZero()
        ? ""
        : " " + Saying.hoursInWords(hours) + " from before this journal stand in no month.";
  }

  /** Hours of each phase beside the plan. */
  List<Chart<PhaseBars>> phases() {
    return new PhaseCharts(book)
        .beside(
            "phases-chart",
            "Hours by phase",
            row -> row.hours().seconds(),
            row -> row.phase().hours().map(Hours::seconds),
            Yardstick.hours());
  }

  /** Where a month's hours went; none where one phase took them all. */
  List<Chart<PhaseBars>> monthPhases(Row<YearMonth> month) {
    long most =
        book.ledger().phases().stream()
            .mapToLong(row -> hoursOf(row, month).seconds())
            .max()
            .orElse(0);
    List<PhaseBars.Phase> phases =
        book.ledger().phases().stream()
            .filter(row -> !hoursOf(row, month).isZero())
            .map(
                row ->
                    new PhaseBars.Phase(
                        row.phase().title(),
                        hoursOf(row, month).seconds() == most ? Weight.STRONG : Weight.QUIET,
                        PhaseBars.State.OPEN,
                        hoursOf(row, month).seconds(),
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
}
