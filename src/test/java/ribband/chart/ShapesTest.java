package ribband.chart;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class ShapesTest {
  private static final Caption CAPTION = Sheets.caption("c");
  private static final List<MonthRows.Phase> TWO =
      List.of(
          new MonthRows.Phase("Planking", Weight.QUIET),
          new MonthRows.Phase("Fairing", Weight.QUIET));

  private static Chart<MonthRows> rows(List<MonthRows.Phase> phases, MonthRows.Month... months) {
    return MonthRows.chart(
        CAPTION, Weight.STRONG, phases, List.of(months), Optional.empty(), Sheets.HOURS);
  }

  @Test
  void missingMonthsStandWithZeros() {
    Chart<MonthRows> chart = rows(TWO, month(2026, 3, 9000, 1800), month(2025, 12, 3600, 0));
    assertEquals(
        new Table(
            "Month",
            List.of("Planking", "Fairing", "All"),
            List.of(
                Table.Row.of("December 2025", List.of("1:00", "0:00", "1:00")),
                Table.Row.of("January 2026", List.of("0:00", "0:00", "0:00")),
                Table.Row.of("February 2026", List.of("0:00", "0:00", "0:00")),
                Table.Row.of("March 2026", List.of("2:30", "0:30", "3:00"))),
            List.of(Table.Row.of("All", List.of("3:30", "0:30", "4:00")))),
        chart.table());
    MonthRows.Row all = chart.wide().rows().get(0);
    assertEquals("All", all.name().text());
    assertEquals("4:00", all.total().text());
    assertEquals(2, all.bars().size());
    assertEquals(List.of("3:00"), all.peak().stream().map(Label::text).toList());
    assertEquals(1, chart.wide().years().size());
  }

  @Test
  void theRowOfAllTellsOfPhasesThatTheChartLeavesOut() {
    MonthRows.Month month = new MonthRows.Month(YearMonth.of(2026, 1), 7200, List.of(3600L));
    Chart<MonthRows> chart = rows(TWO.subList(0, 1), month);
    assertEquals(
        List.of("2:00", "1:00"),
        chart.wide().rows().stream().map(row -> row.total().text()).toList());
    assertEquals(List.of("1:00", "2:00"), chart.table().rows().get(0).cells());
  }

  @Test
  void barsOfAllRowsStandOnOneScale() {
    for (int count : new int[] {1, 8, 50, 120}) {
      List<MonthRows.Month> months = Sheets.months(2, count, count);
      Chart<MonthRows> chart =
          MonthRows.chart(
              CAPTION,
              Weight.STRONG,
              TWO,
              months,
              Optional.of(months.get(count - 1).month()),
              Sheets.HOURS);
      long most = months.stream().mapToLong(MonthRows.Month::all).max().orElse(0);
      for (MonthRows shape : chart.shapes()) {
        MonthRows.Row all = shape.rows().get(0);
        int tallest = bars(all).stream().mapToInt(bar -> all.zero() - bar.end()).max().orElse(0);
        for (int row = 0; row < 3; row++) {
          List<Long> amounts = new ArrayList<>();
          for (MonthRows.Month month : months) {
            amounts.add(row == 0 ? (Long) month.all() : month.amounts().get(row - 1));
          }
          amounts.removeIf(amount -> amount == 0);
          List<MonthRows.Bar> drawn = bars(shape.rows().get(row));
          assertEquals(amounts.size(), drawn.size());
          for (int i = 0; i < drawn.size(); i++) {
            double due = Math.max(1, (double) amounts.get(i) * tallest / most);
            assertEquals(due, shape.rows().get(row).zero() - drawn.get(i).end(), 0.5001);
          }
        }
      }
    }
  }

  private static List<MonthRows.Bar> bars(MonthRows.Row row) {
    List<MonthRows.Bar> bars = new ArrayList<>(row.bars());
    bars.addAll(row.now());
    return bars;
  }

  @Test
  void onlyThePagesOwnMonthIsMarked() {
    Chart<MonthRows> chart =
        MonthRows.chart(
            CAPTION,
            Weight.STRONG,
            TWO,
            List.of(month(2026, 1, 5000, 0), month(2026, 2, 5000, 100)),
            Optional.of(YearMonth.of(2026, 1)),
            Sheets.HOURS);
    assertEquals(
        List.of(1, 1, 0), chart.narrow().rows().stream().map(row -> row.now().size()).toList());
    assertEquals(
        List.of(1, 1, 1), chart.narrow().rows().stream().map(row -> row.bars().size()).toList());
  }

  @Test
  void whatCameBackHangsBelowItsLine() {
    MonthRows shape =
        MonthRows.chart(
                CAPTION,
                Weight.STRONG,
                TWO,
                List.of(month(2026, 1, 5000, -2500)),
                Optional.empty(),
                Sheets.DOLLARS)
            .wide();
    MonthRows.Row planking = shape.rows().get(1);
    MonthRows.Row fairing = shape.rows().get(2);
    int up = planking.zero() - planking.bars().get(0).end();
    int down = fairing.bars().get(0).end() - fairing.zero();
    assertEquals(up, 2 * down, 1);
    assertTrue(fairing.bars().get(0).end() < shape.ticks());
    assertEquals(List.of(), fairing.peak());
  }

  @Test
  void barsOfTenYearsStayOnTheSheetAndKeepApart() {
    Chart<MonthRows> chart = rows(TWO, Sheets.months(2, 120, 1).toArray(new MonthRows.Month[0]));
    for (MonthRows shape : chart.shapes()) {
      List<Integer> middles = shape.rows().get(0).bars().stream().map(MonthRows.Bar::x).toList();
      for (int i = 1; i < middles.size(); i++) {
        assertTrue(middles.get(i - 1) + shape.bar() <= middles.get(i));
      }
      assertTrue(middles.get(middles.size() - 1) + shape.bar() / 2 <= shape.right());
      assertTrue(shape.right() <= shape.width());
    }
  }

  @Test
  void aMonthGivenTwiceIsRefused() {
    assertThrows(
        IllegalArgumentException.class,
        () -> rows(TWO, month(2026, 1, 1, 1), month(2026, 1, 1, 1)));
  }

  @Test
  void theRunningTableTellsEachMonthAndTheTotalToDate() {
    Table table =
        RunningCurve.chart(
                CAPTION,
                RunningCurve.Growth.STEADY,
                7200,
                List.of(step("2026-03-02", 5400), step("2026-01-31", 3600)),
                List.of(),
                List.of(),
                List.of(),
                Sheets.HOURS)
            .table();
    assertEquals(
        List.of(
            Table.Row.of("Before", List.of("2:00", "2:00")),
            Table.Row.of("January 2026", List.of("1:00", "3:00")),
            Table.Row.of("February 2026", List.of("0:00", "3:00")),
            Table.Row.of("March 2026", List.of("1:30", "4:30"))),
        table.rows());
  }

  @Test
  void aGrowingTotalIsDrawnByACurveThatNeverFalls() {
    for (int count : new int[] {1, 2, 30, 900}) {
      Chart<RunningCurve> chart =
          RunningCurve.chart(
              CAPTION,
              RunningCurve.Growth.STEADY,
              0,
              Sheets.steps(count, count, Sheets::evening),
              List.of(),
              List.of(),
              List.of(),
              Sheets.HOURS);
      for (RunningCurve shape : chart.shapes()) {
        FairCurve curve = (FairCurve) shape.course();
        double before = curve.y();
        double from = before;
        for (FairCurve.Piece piece : curve.pieces()) {
          for (int i = 1; i <= 20; i++) {
            double y = FairCurveTest.cubic(i / 20.0, from, piece.y1(), piece.y2(), piece.y());
            // A tenth of a unit is what rounding to whole tenths may cost.
            assertTrue(y <= before + 1, "falls at " + piece);
            before = Math.min(before, y);
          }
          from = piece.y();
        }
        assertEquals(shape.endY(), from / FairCurve.FINENESS, 0.6);
        assertEquals(shape.zero(), curve.y() / FairCurve.FINENESS, 0.6);
      }
    }
  }

  @Test
  void aCurvePassesThroughTheTotalOfEachOfItsKnots() {
    RunningTotal total = RunningTotal.of(0, Sheets.steps(90, 3, Sheets::evening));
    for (Size size : Size.values()) {
      RunningCurve shape = noted(size, MOULDS, TURNED);
      int top = shape.rules().get(shape.rules().size() - 1).at();
      Scale scale = new Scale(0, 800 * 3600L, shape.zero(), top);
      assertEquals("800 hours", shape.rules().get(shape.rules().size() - 1).label());
      for (RunningCurve.Note note : List.of(MOULDS, TURNED)) {
        int x = shape.notes().get(note == MOULDS ? 0 : 1).x();
        assertEquals(
            scale.exactly(total.at(note.date())), shape.course().heightAt(x), 1.5, note.text());
      }
    }
  }

  @Test
  void moneyIsLevelFromOneDayToTheNextAndStepsDownWhereItCameBack() {
    Chart<RunningCurve> chart =
        RunningCurve.chart(
            CAPTION,
            RunningCurve.Growth.SUDDEN,
            1000,
            List.of(
                step("2026-01-05", 4000),
                step("2026-03-02", 5000),
                step("2026-03-20", -2500),
                step("2026-05-01", 2500)),
            List.of(new RunningCurve.Note(day("2026-03-02"), "Plywood, $50")),
            List.of(),
            List.of(),
            Sheets.DOLLARS);
    for (RunningCurve shape : chart.shapes()) {
      Steps steps = (Steps) shape.course();
      int cents = (shape.zero() - shape.rules().get(shape.rules().size() - 1).at()) / 10;
      assertEquals("$100", shape.rules().get(shape.rules().size() - 1).label());
      assertEquals(shape.zero() - cents, steps.y());
      assertEquals(
          List.of(5 * cents, 10 * cents, 15 * cents / 2, 10 * cents),
          steps.corners().stream().map(corner -> shape.zero() - corner.y()).toList());
      assertEquals(steps.corners().get(1).x(), shape.notes().get(0).x());
      assertEquals(steps.corners().get(1).y(), shape.notes().get(0).foot());
      // The last purchase is a step too, and the line goes on to its dot.
      assertEquals(shape.endX(), steps.corners().get(3).x() + Steps.TAIL);
      assertEquals(shape.endX(), steps.endX());
      assertEquals(shape.endY(), steps.endY());
      assertTrue(shape.endX() <= shape.right());
    }
  }

  @Test
  void aRefundIsAKnotSoThatItsDipIsSeen() {
    RunningTotal total =
        RunningTotal.of(
            0, List.of(step("2026-01-01", 10), step("2026-01-20", 90), step("2026-01-21", -50)));
    assertEquals(
        List.of(day("2025-12-31"), day("2026-01-20"), day("2026-01-21")),
        total.knots(60, List.of()));
  }

  @Test
  void aLongRestIsDrawnLevel() {
    RunningTotal total =
        RunningTotal.of(0, List.of(step("2026-01-01", 10), step("2026-06-01", 90)));
    assertEquals(
        List.of(day("2025-12-31"), day("2026-01-01"), day("2026-05-27"), day("2026-06-01")),
        total.knots(5, List.of()));
  }

  private static RunningCurve noted(Size size, RunningCurve.Note... notes) {
    Chart<RunningCurve> chart = noted(notes);
    return chart.shapes().get(size.ordinal());
  }

  private static Chart<RunningCurve> noted(RunningCurve.Note... notes) {
    return RunningCurve.chart(
        CAPTION,
        RunningCurve.Growth.STEADY,
        0,
        Sheets.steps(90, 3, Sheets::evening),
        List.of(notes),
        List.of(new RunningCurve.Plan(640 * 3600L, "640:00 planned")),
        List.of(
            new Span("Lofting", day("2025-09-14"), day("2025-10-20"), List.of()),
            new Span("Planking", day("2025-10-01"), day("2026-02-01"), List.of())),
        Sheets.HOURS);
  }

  private static final RunningCurve.Note MOULDS =
      new RunningCurve.Note(LocalDate.of(2025, 10, 4), "Moulds up");
  private static final RunningCurve.Note TURNED =
      new RunningCurve.Note(LocalDate.of(2026, 1, 10), "Turned over");

  @Test
  void notesStandOnTheCurveAndInTheWordsAndFigures() {
    Chart<RunningCurve> chart =
        noted(TURNED, MOULDS, new RunningCurve.Note(day("2031-01-01"), "Too late"));
    RunningCurve wide = chart.wide();
    assertEquals(
        List.of("Moulds up", "Turned over"),
        wide.notes().stream().map(note -> note.label().text()).toList());
    for (Callout note : wide.notes()) {
      assertEquals(wide.course().heightAt(note.x()), note.foot());
    }
    assertTrue(
        chart
            .caption()
            .description()
            .endsWith("Noted on it: Moulds up, 4 October 2025; Turned over, 10 January 2026."));
    assertEquals(List.of("Hours", "To date", "Noted"), chart.table().heads());
    assertEquals("", chart.table().rows().get(0).cells().get(2));
    assertEquals("Moulds up", chart.table().rows().get(1).cells().get(2));
  }

  @Test
  void onAPhoneNotesAreNumberedAndKeyedBelow() {
    RunningCurve narrow = noted(Size.NARROW, TURNED, MOULDS);
    assertEquals(
        List.of("1", "2"), narrow.notes().stream().map(note -> note.label().text()).toList());
    assertEquals(
        List.of("1  Moulds up, 4 October 2025", "2  Turned over, 10 January 2026"),
        narrow.keys().stream().map(Label::text).toList());
    assertTrue(narrow.keys().get(1).y() < narrow.height());
    assertEquals(List.of(), noted(Size.WIDE, TURNED, MOULDS).keys());
  }

  @Test
  void spansStandUnderTheirDatesAndNeverOnOneAnother() {
    RunningCurve wide = noted(Size.WIDE);
    assertEquals(2, wide.spans().size());
    assertEquals(wide.spans().get(0).y() + SpanLine.PITCH, wide.spans().get(1).y());
    assertTrue(wide.spans().get(1).y() < wide.height());
    assertTrue(wide.spans().get(0).start() < wide.spans().get(1).start());
    assertEquals(List.of(), noted(Size.NARROW).spans());
  }

  @Test
  void theTotalAndThePlanStandAtTheLinesEndsAndKeepApart() {
    for (long planned : new long[] {1, 100, 199, 200, 201, 250, 640}) {
      RunningCurve wide =
          RunningCurve.chart(
                  CAPTION,
                  RunningCurve.Growth.STEADY,
                  0,
                  List.of(step("2026-01-01", 3600), step("2026-05-01", 199 * 3600L)),
                  List.of(),
                  List.of(new RunningCurve.Plan(planned * 3600, planned + ":00 planned")),
                  List.of(),
                  Sheets.HOURS)
              .wide();
      assertEquals("200:00", wide.total().text());
      assertFalse(
          wide.total().largeBox().overlaps(wide.planName().get(0).box()), "planned " + planned);
      assertTrue(wide.planName().get(0).box().right() <= wide.width());
    }
  }

  @Test
  void eachBarSaysHowItStandsToItsPlan() {
    Chart<PhaseBars> chart =
        PhaseBars.chart(
            CAPTION,
            List.of(
                phase("Lofting", PhaseBars.State.DONE, 95_400, 86_400L),
                phase("Moulds", PhaseBars.State.DONE, 3600, 7200L),
                phase("Planking", PhaseBars.State.OPEN, 3600, 7200L),
                phase("Rudder", PhaseBars.State.OPEN, 7210, 7200L),
                phase("Rigging", PhaseBars.State.OPEN, 0, 7200L),
                phase("Fairing", PhaseBars.State.OPEN, 10_800)),
            Sheets.HOURS);
    assertEquals(
        List.of(
            "26:30, 2:30 over",
            "1:00, 1:00 under",
            "1:00, 1:00 left",
            "2:00, as planned",
            "2:00 planned",
            "3:00"),
        chart.wide().bars().stream().map(bar -> bar.figures().text()).toList());
    assertEquals(Table.Row.of("Lofting", List.of("26:30", "24:00")), chart.table().rows().get(0));
    assertEquals(Table.Row.of("Fairing", List.of("3:00", "–")), chart.table().rows().get(5));
    assertEquals(Table.Row.of("All", List.of("33:30", "32:00")), chart.table().foot().get(0));
    for (PhaseBars shape : chart.shapes()) {
      PhaseBars.Bar over = shape.bars().get(0);
      assertTrue(over.plan().get(0) < over.x() + over.length());
      assertEquals(List.of("plan"), shape.planName().stream().map(Label::text).toList());
      assertEquals(over.plan().get(0), shape.planName().get(0).x());
    }
  }

  private static PhaseBars.Phase phase(
      String name, PhaseBars.State state, long actual, Long... plan) {
    return new PhaseBars.Phase(name, Weight.QUIET, state, actual, List.of(plan));
  }

  @Test
  void theLongestNightOfAllYearsSetsTheScale() {
    List<YearOfNights.Night> nights =
        List.of(night("2025-03-01", 7200), night("2026-02-28", 3600), night("2026-12-31", 1800));
    Chart<YearOfNights> chart = YearOfNights.chart(CAPTION, 2026, nights, Sheets.HOURS);
    YearOfNights.Line february = chart.wide().lines().get(1);
    YearOfNights.Line december = chart.wide().lines().get(11);
    int hour = february.y() - february.ticks().get(0).top();
    assertEquals(hour, 2 * (december.y() - december.ticks().get(0).top()), 1);
    assertEquals(february.end(), february.ticks().get(0).x());
    assertEquals("28 February 2026: 1 hour", february.ticks().get(0).said());
    assertEquals(
        new Table(
            "Night",
            List.of("Hours"),
            List.of(
                new Table.Row("28 February 2026", "e/2026-02-28.html", List.of("1:00")),
                new Table.Row("31 December 2026", "e/2026-12-31.html", List.of("0:30"))),
            List.of(Table.Row.of("All", List.of("1:30")))),
        chart.table());
  }

  @Test
  void onlyASingleLongestNightIsMarked() {
    assertEquals(1, marked(List.of(night("2026-01-01", 2), night("2026-01-02", 1))));
    assertEquals(0, marked(List.of(night("2026-01-01", 2), night("2026-01-02", 2))));
  }

  private static long marked(List<YearOfNights.Night> nights) {
    return YearOfNights.chart(CAPTION, 2026, nights, Sheets.HOURS).wide().lines().stream()
        .flatMap(line -> line.ticks().stream())
        .filter(YearOfNights.Tick::longest)
        .count();
  }

  @Test
  void theLongestNightHasItsFigureBesideItWhereNoOtherNightIs() {
    assertEquals(
        Label.Anchor.START,
        longest(night("2026-01-10", 7200), night("2026-02-11", 3600)).get(0).anchor());
    assertEquals(
        Label.Anchor.END,
        longest(night("2026-01-10", 7200), night("2026-01-11", 7100)).get(0).anchor());
    assertEquals(
        List.of(),
        longest(night("2026-01-10", 7200), night("2026-01-11", 7100), night("2026-01-09", 7100)));
  }

  private static List<Label> longest(YearOfNights.Night... nights) {
    YearOfNights.Line january =
        YearOfNights.chart(CAPTION, 2026, List.of(nights), Sheets.HOURS).wide().lines().get(0);
    january.longest().forEach(label -> assertEquals("2:00", label.text()));
    return january.longest();
  }

  @Test
  void idleMonthsAreQuiet() {
    YearOfNights shape =
        YearOfNights.chart(CAPTION, 2026, List.of(night("2026-02-11", 3600)), Sheets.HOURS).wide();
    assertEquals(Weight.QUIET, shape.lines().get(0).weight());
    assertEquals(Weight.STRONG, shape.lines().get(1).weight());
  }

  private static MonthRows.Month month(int year, int month, long... amounts) {
    return Sheets.month(YearMonth.of(year, month), Arrays.stream(amounts).boxed().toList());
  }

  private static RunningCurve.Step step(String date, long amount) {
    return new RunningCurve.Step(day(date), amount);
  }

  private static YearOfNights.Night night(String date, long amount) {
    return new YearOfNights.Night(day(date), amount, "e/" + date + ".html");
  }

  private static LocalDate day(String date) {
    return LocalDate.parse(date);
  }
}
