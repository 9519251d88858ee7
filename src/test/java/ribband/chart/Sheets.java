package ribband.chart;

import java.time.LocalDate;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.function.LongFunction;
import java.util.stream.IntStream;
import ribband.measure.Currency;
import ribband.measure.Money;
import ribband.measure.Saying;

/** One sheet for every kind of chart at its edges; all figures invented, all from fixed seeds. */
final class Sheets {
  static final Yardstick HOURS = Yardstick.hours();
  static final Yardstick DOLLARS = dollars();
  private static final List<String> NAMES =
      List.of(
          "Lofting",
          "Moulds",
          "Backbone",
          "Planking",
          "Fairing",
          "Inwales, knees, breasthook and the rails",
          "Thwarts",
          "Varnish & paint",
          "Spars",
          "Rigging");

  /** A chart under the name of its template. */
  record Sheet(String title, String kind, Object chart) {}

  private Sheets() {}

  private static Yardstick dollars() {
    Currency currency = Currency.all().get("USD");
    LongFunction<String> exact = minor -> Saying.money(new Money(minor), currency);
    LongFunction<String> rounded = minor -> Saying.moneyRounded(new Money(minor), currency);
    return new Yardstick("Money", 100, Yardstick.Division.TENTHS, rounded, rounded, exact, exact);
  }

  static List<Sheet> all() {
    List<Sheet> sheets = new ArrayList<>();
    months(sheets);
    curves(sheets);
    bars(sheets);
    nights(sheets);
    sheets.addAll(FanSheets.all());
    return sheets;
  }

  private static void months(List<Sheet> sheets) {
    sheets.add(rows("Months: 8 months", "st8", 6, months(6, 8, 1), HOURS));
    sheets.add(rows("Months: 18 months", "st18", 8, months(8, 18, 2), HOURS));
    sheets.add(rows("Months: ten years", "st120", 10, months(10, 120, 3), HOURS));
    sheets.add(rows("Months: fourteen phases", "st60", 14, months(14, 60, 5), HOURS));
    sheets.add(rows("Months: one phase", "stone", 1, months(1, 20, 6), HOURS));
    sheets.add(rows("Months: one month", "st1", 5, months(5, 1, 4), HOURS));
    sheets.add(rows("Months: one month of nothing", "st0", 2, List.of(month(0, 0L, 0L)), HOURS));
    sheets.add(
        rows(
            "Months: a gap of months",
            "stgap",
            2,
            List.of(month(0, 7200L, 0L), month(5, 0L, 36000L)),
            HOURS));
    sheets.add(
        rows(
            "Months: money with refunds",
            "stmoney",
            3,
            List.of(
                month(0, 120000L, 4500L, 0L),
                month(1, -35000L, -2000L, 8850L),
                month(2, 64050L, 0L, -12000L),
                month(3, 0L, 0L, 0L),
                month(4, 1550L, 99000L, 2370L)),
            DOLLARS));
    sheets.add(
        rows(
            "Months: huge",
            "sthuge",
            2,
            List.of(month(0, 900_000_000_000_000L, 1L), month(1, 1L, 450_000_000_000_000L)),
            DOLLARS));
  }

  private static Sheet rows(
      String title, String id, int phases, List<MonthRows.Month> months, Yardstick yardstick) {
    List<MonthRows.Phase> named =
        IntStream.range(0, phases)
            .mapToObj(i -> new MonthRows.Phase(NAMES.get(i % NAMES.size()), Weight.QUIET))
            .toList();
    return new Sheet(
        title,
        "month-rows",
        MonthRows.chart(
            caption(id),
            Weight.STRONG,
            named,
            months,
            Optional.of(months.get(months.size() - 1).month()),
            yardstick));
  }

  private static MonthRows.Month month(int after, Long... amounts) {
    return month(YearMonth.of(2025, 10).plusMonths(after), List.of(amounts));
  }

  static MonthRows.Month month(YearMonth month, List<Long> amounts) {
    return new MonthRows.Month(month, amounts.stream().reduce(0L, Math::addExact), amounts);
  }

  /** Phases that follow one another, two or three at a time, with idle months. */
  static List<MonthRows.Month> months(int phases, int count, int seed) {
    Random random = new Random(seed);
    List<MonthRows.Month> months = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      List<Long> amounts = new ArrayList<>();
      double now = count == 1 ? phases / 2.0 : (double) i / (count - 1) * (phases - 1);
      boolean idle = count > 6 && i % 7 == 4;
      for (int phase = 0; phase < phases; phase++) {
        boolean on = !idle && (count == 1 || Math.abs(phase - now) < 1.3);
        amounts.add(on ? 900L * (4 + random.nextInt(60)) : 0L);
      }
      months.add(month(YearMonth.of(2016, 9).plusMonths(i), amounts));
    }
    return months;
  }

  private static void curves(List<Sheet> sheets) {
    sheets.add(
        curve(
            "Curve: eight months with notes and plan",
            "cv8",
            0,
            steps(90, 3, Sheets::evening),
            List.of(note(20, "moulds up"), note(95, "first strake"), note(180, "turned over")),
            List.of(new RunningCurve.Plan(640 * 3600L, "640:00 planned")),
            List.of(
                span("Lofting", 0, 30),
                span("Moulds and strongback", 20, 95),
                span("Planking", 80, 220)),
            HOURS));
    sheets.add(
        curve(
            "Curve: many notes near each other, plan long passed",
            "cvmany",
            0,
            steps(300, 8, Sheets::evening),
            IntStream.range(0, 30)
                .mapToObj(i -> note(20 + i * i, "A note of thirty-two letters, " + i))
                .toList(),
            List.of(new RunningCurve.Plan(90 * 3600L, "90:00 planned")),
            IntStream.range(0, 14)
                .mapToObj(i -> span(NAMES.get(i % NAMES.size()), 10 * i, 700 + 5 * i))
                .toList(),
            HOURS));
    sheets.add(curve("Curve: ten years", "cv120", 160_000, steps(900, 4, Sheets::evening), HOURS));
    sheets.add(curve("Curve: one entry", "cv1", 0, steps(1, 3, Sheets::evening), HOURS));
    sheets.add(curve("Curve: three entries", "cv3", 0, steps(3, 4, Sheets::evening), HOURS));
    sheets.add(
        curve(
            "Curve: no hours at all",
            "cv0",
            0,
            List.of(new RunningCurve.Step(LocalDate.of(2025, 10, 3), 0)),
            HOURS));
    sheets.add(
        curve(
            "Curve: money with refunds",
            "cvmoney",
            0,
            steps(40, 6, random -> random.nextInt(5) == 0 ? -8000L : 1L + random.nextInt(22000)),
            DOLLARS));
    sheets.add(
        curve(
            "Curve: refunds alone",
            "cvneg",
            0,
            List.of(
                new RunningCurve.Step(LocalDate.of(2025, 10, 3), -5000),
                new RunningCurve.Step(LocalDate.of(2025, 12, 3), -2000)),
            DOLLARS));
  }

  private static Sheet curve(
      String title, String id, long carried, List<RunningCurve.Step> steps, Yardstick yardstick) {
    return curve(title, id, carried, steps, List.of(), List.of(), List.of(), yardstick);
  }

  private static Sheet curve(
      String title,
      String id,
      long carried,
      List<RunningCurve.Step> steps,
      List<RunningCurve.Note> notes,
      List<RunningCurve.Plan> plan,
      List<Span> spans,
      Yardstick yardstick) {
    return new Sheet(
        title,
        "running-curve",
        RunningCurve.chart(
            caption(id),
            yardstick == DOLLARS ? RunningCurve.Growth.SUDDEN : RunningCurve.Growth.STEADY,
            carried,
            steps,
            notes,
            plan,
            spans,
            yardstick));
  }

  private static Span span(String name, int from, int to) {
    LocalDate start = LocalDate.of(2025, 9, 14);
    return new Span(
        name,
        start.plusDays(from),
        start.plusDays(to),
        List.of(start.plusDays(from), start.plusDays((from + to) / 2), start.plusDays(to)));
  }

  private static RunningCurve.Note note(int after, String text) {
    return new RunningCurve.Note(LocalDate.of(2025, 9, 14).plusDays(after), text);
  }

  /** Steps some days apart, now and then a rest of weeks. */
  static List<RunningCurve.Step> steps(
      int count, int seed, java.util.function.ToLongFunction<Random> amount) {
    Random random = new Random(seed);
    LocalDate date = LocalDate.of(2025, 9, 14);
    List<RunningCurve.Step> steps = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      steps.add(new RunningCurve.Step(date, amount.applyAsLong(random)));
      date = date.plusDays(i % 45 == 44 ? 40 : 1 + random.nextInt(5));
    }
    return steps;
  }

  static long evening(Random random) {
    return 900L * (3 + random.nextInt(14));
  }

  private static void bars(List<Sheet> sheets) {
    sheets.add(
        bars(
            "Phases against plan",
            "ph",
            HOURS,
            List.of(
                new PhaseBars.Phase(
                    "Lofting",
                    Weight.QUIET,
                    PhaseBars.State.DONE,
                    26 * 3600 + 1800,
                    List.of(24L * 3600)),
                new PhaseBars.Phase(
                    "Moulds", Weight.QUIET, PhaseBars.State.DONE, 44 * 3600, List.of(50L * 3600)),
                new PhaseBars.Phase(
                    "Planking",
                    Weight.STRONG,
                    PhaseBars.State.OPEN,
                    96 * 3600 + 2700,
                    List.of(120L * 3600)),
                new PhaseBars.Phase(
                    "Inwales, knees and breasthook",
                    Weight.QUIET,
                    PhaseBars.State.DONE,
                    3 * 3600,
                    List.of()),
                new PhaseBars.Phase(
                    "Rigging", Weight.QUIET, PhaseBars.State.OPEN, 0, List.of(40L * 3600)),
                new PhaseBars.Phase(
                    "Unsorted", Weight.QUIET, PhaseBars.State.DONE, 0, List.of()))));
    sheets.add(
        bars(
            "Phases: fourteen, no plan",
            "ph12",
            HOURS,
            IntStream.range(0, 14)
                .mapToObj(
                    i ->
                        new PhaseBars.Phase(
                            "A phase of forty letters, and the number " + i,
                            Weight.QUIET,
                            PhaseBars.State.OPEN,
                            3600L * (40 + 5 * i),
                            List.of()))
                .toList()));
    sheets.add(
        bars(
            "Phases: money, one below zero",
            "phmoney",
            DOLLARS,
            List.of(
                new PhaseBars.Phase(
                    "Backbone", Weight.QUIET, PhaseBars.State.DONE, 124_050, List.of(100_000L)),
                new PhaseBars.Phase(
                    "Planking", Weight.QUIET, PhaseBars.State.DONE, -35_000, List.of(140_000L)),
                new PhaseBars.Phase("Paint", Weight.QUIET, PhaseBars.State.DONE, 1, List.of(0L)))));
    sheets.add(
        bars(
            "Phases: all zero",
            "ph0",
            HOURS,
            List.of(new PhaseBars.Phase("A", Weight.QUIET, PhaseBars.State.DONE, 0, List.of()))));
  }

  private static Sheet bars(
      String title, String id, Yardstick yardstick, List<PhaseBars.Phase> phases) {
    return new Sheet(title, "phase-bars", PhaseBars.chart(caption(id), phases, yardstick));
  }

  private static void nights(List<Sheet> sheets) {
    List<YearOfNights.Night> nights =
        steps(150, 9, Sheets::evening).stream()
            .map(
                step ->
                    new YearOfNights.Night(
                        step.date(), step.amount(), "entries/" + step.date() + ".html"))
            .toList();
    sheets.add(nights("Nights of a year", "ynfull", 2026, nights));
    sheets.add(nights("Nights of its first months", "ynpart", 2025, nights));
    sheets.add(nights("No nights", "yn0", 2024, List.of()));
  }

  private static Sheet nights(String title, String id, int year, List<YearOfNights.Night> nights) {
    return new Sheet(title, "year-of-nights", YearOfNights.chart(caption(id), year, nights, HOURS));
  }

  static Caption caption(String id) {
    return new Caption(
        id,
        "What " + id + " shows <&>",
        "Lines and sections, drawn for " + id + ".",
        "One sentence that says what the chart says.");
  }
}
