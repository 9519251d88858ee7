package ribband.chart;

import java.time.LocalDate;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.List;
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
          "Inwales and knees",
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
    return new Yardstick("Money", 100, Yardstick.Division.TENTHS, rounded, exact, exact);
  }

  static List<Sheet> all() {
    List<Sheet> sheets = new ArrayList<>();
    stacked(sheets);
    curves(sheets);
    bars(sheets);
    nights(sheets);
    sheets.addAll(FanSheets.all());
    for (int length : new int[] {1, 40, 700}) {
      sheets.add(
          new Sheet(
              "Spark of " + length,
              "spark",
              Spark.of(caption("spark-" + length), 0, steps(length, 3, Sheets::evening))));
    }
    return sheets;
  }

  private static void stacked(List<Sheet> sheets) {
    sheets.add(stacked("Stacked: 8 months", "st8", 6, months(6, 8, 1), HOURS));
    sheets.add(stacked("Stacked: 18 months", "st18", 8, months(8, 18, 2), HOURS));
    sheets.add(stacked("Stacked: ten years", "st120", 10, months(10, 120, 3), HOURS));
    sheets.add(stacked("Stacked: one month", "st1", 5, months(5, 1, 4), HOURS));
    sheets.add(
        stacked("Stacked: one month of nothing", "st0", 2, List.of(month(0, 0L, 0L)), HOURS));
    sheets.add(
        stacked(
            "Stacked: a gap of months",
            "stgap",
            2,
            List.of(month(0, 7200L, 0L), month(5, 0L, 36000L)),
            HOURS));
    sheets.add(
        stacked(
            "Stacked: money with refunds",
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
        stacked(
            "Stacked: huge",
            "sthuge",
            2,
            List.of(month(0, 900_000_000_000_000L, 1L), month(1, 1L, 450_000_000_000_000L)),
            DOLLARS));
  }

  private static Sheet stacked(
      String title, String id, int phases, List<StackedMonths.Month> months, Yardstick yardstick) {
    List<StackedMonths.Phase> named =
        IntStream.range(0, phases)
            .mapToObj(i -> new StackedMonths.Phase(NAMES.get(i), Hatch.of(i)))
            .toList();
    return new Sheet(
        title, "stacked-months", StackedMonths.chart(caption(id), named, months, yardstick));
  }

  private static StackedMonths.Month month(int after, Long... amounts) {
    return new StackedMonths.Month(YearMonth.of(2025, 10).plusMonths(after), List.of(amounts));
  }

  /** Phases that follow one another, two or three at a time, with idle months. */
  static List<StackedMonths.Month> months(int phases, int count, int seed) {
    Random random = new Random(seed);
    List<StackedMonths.Month> months = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      List<Long> amounts = new ArrayList<>();
      double now = count == 1 ? phases / 2.0 : (double) i / (count - 1) * (phases - 1);
      boolean idle = count > 6 && i % 7 == 4;
      for (int phase = 0; phase < phases; phase++) {
        boolean on = !idle && (count == 1 || Math.abs(phase - now) < 1.3);
        amounts.add(on ? 900L * (4 + random.nextInt(60)) : 0L);
      }
      months.add(new StackedMonths.Month(YearMonth.of(2016, 9).plusMonths(i), amounts));
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
            List.of(new RunningCurve.Plan(640 * 3600L, "plan 640 hours")),
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
    return curve(title, id, carried, steps, List.of(), List.of(), yardstick);
  }

  private static Sheet curve(
      String title,
      String id,
      long carried,
      List<RunningCurve.Step> steps,
      List<RunningCurve.Note> notes,
      List<RunningCurve.Plan> plan,
      Yardstick yardstick) {
    return new Sheet(
        title,
        "running-curve",
        RunningCurve.chart(caption(id), carried, steps, notes, plan, yardstick));
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
                new PhaseBars.Phase("Lofting", 0, 26 * 3600 + 1800, List.of(24L * 3600)),
                new PhaseBars.Phase("Moulds", 1, 44 * 3600, List.of(50L * 3600)),
                new PhaseBars.Phase("Planking", 2, 96 * 3600 + 2700, List.of(120L * 3600)),
                new PhaseBars.Phase("Inwales, knees and breasthook", 3, 3 * 3600, List.of()),
                new PhaseBars.Phase("Rigging", 4, 0, List.of(40L * 3600)),
                new PhaseBars.Phase("Unsorted", 5, 0, List.of()))));
    sheets.add(
        bars(
            "All twelve hatches",
            "ph12",
            HOURS,
            IntStream.range(0, 12)
                .mapToObj(
                    i ->
                        new PhaseBars.Phase("Phase " + (i + 1), i, 3600L * (40 + 5 * i), List.of()))
                .toList()));
    sheets.add(
        bars(
            "Phases: money, one below zero",
            "phmoney",
            DOLLARS,
            List.of(
                new PhaseBars.Phase("Backbone", 1, 124_050, List.of(100_000L)),
                new PhaseBars.Phase("Planking", 2, -35_000, List.of(140_000L)),
                new PhaseBars.Phase("Paint", 3, 1, List.of(0L)))));
    sheets.add(
        bars("Phases: all zero", "ph0", HOURS, List.of(new PhaseBars.Phase("A", 0, 0, List.of()))));
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
