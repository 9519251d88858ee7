package ribband.chart;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.time.YearMonth;
import java.util.List;
import org.junit.jupiter.api.Test;

class ShapesTest {
  private static final Caption CAPTION = Sheets.caption("c");
  private static final List<StackedMonths.Phase> TWO =
      List.of(new StackedMonths.Phase("Planking", 0), new StackedMonths.Phase("Fairing", 1));

  @Test
  void missingMonthsStandWithZeros() {
    Chart<StackedMonths> chart =
        StackedMonths.chart(
            CAPTION,
            TWO,
            List.of(month(2026, 3, 9000, 1800), month(2025, 12, 3600, 0)),
            Sheets.HOURS);
    assertEquals(
        new Table(
            "Month",
            List.of("Planking", "Fairing", "All"),
            List.of(
                Table.Row.of("December 2025", List.of("1", "0", "1")),
                Table.Row.of("January 2026", List.of("0", "0", "0")),
                Table.Row.of("February 2026", List.of("0", "0", "0")),
                Table.Row.of("March 2026", List.of("2½", "½", "3"))),
            List.of(Table.Row.of("All", List.of("3½", "½", "4")))),
        chart.table());
    assertEquals(4, chart.wide().bars().size());
    assertEquals("March 2026: 3 hours", chart.wide().bars().get(3).said());
  }

  @Test
  void aBarsBlocksAddUpToItsTotalOnTheScale() {
    for (int count : new int[] {1, 8, 50, 120}) {
      List<StackedMonths.Month> months = Sheets.months(4, count, count);
      List<StackedMonths.Phase> phases = List.of(TWO.get(0), TWO.get(1), TWO.get(0), TWO.get(1));
      Chart<StackedMonths> chart = StackedMonths.chart(CAPTION, phases, months, Sheets.HOURS);
      for (StackedMonths shape : List.of(chart.wide(), chart.narrow())) {
        Rule top = shape.rules().get(shape.rules().size() - 1);
        long most =
            Sheets.HOURS
                .ticks(0, months.stream().mapToLong(StackedMonths.Month::total).max().orElse(0))
                .to();
        for (int i = 0; i < count; i++) {
          int height = shape.bars().get(i).blocks().stream().mapToInt(Block::height).sum();
          double due = (double) months.get(i).total() * (shape.zero() - top.at()) / most;
          assertEquals(due, height, 0.5001);
        }
      }
    }
  }

  @Test
  void whatCameBackHangsBelowZero() {
    StackedMonths shape =
        StackedMonths.chart(CAPTION, TWO, List.of(month(2026, 1, 5000, -2500)), Sheets.DOLLARS)
            .wide();
    List<Block> blocks = shape.bars().get(0).blocks();
    assertEquals(shape.zero(), blocks.get(0).y() + blocks.get(0).height());
    assertEquals(shape.zero(), blocks.get(1).y());
    assertEquals(blocks.get(0).height(), 2 * blocks.get(1).height(), 1);
  }

  @Test
  void everyPhaseWithAnAmountIsNamedOnceAndNoOther() {
    Chart<StackedMonths> chart =
        StackedMonths.chart(CAPTION, TWO, List.of(month(2026, 1, 5000, 0)), Sheets.HOURS);
    assertEquals(
        List.of("Planking"),
        chart.narrow().names().stream().map(name -> name.label().text()).toList());
  }

  @Test
  void barsOfTenYearsStayOnTheSheetAndKeepApart() {
    Chart<StackedMonths> chart =
        StackedMonths.chart(CAPTION, TWO, Sheets.months(2, 120, 1), Sheets.HOURS);
    for (StackedMonths shape : List.of(chart.wide(), chart.narrow())) {
      List<Block> feet =
          shape.bars().stream().flatMap(bar -> bar.blocks().stream().limit(1)).toList();
      for (int i = 1; i < feet.size(); i++) {
        assertTrue(feet.get(i - 1).x() + feet.get(i - 1).width() <= feet.get(i).x());
      }
      Block last = feet.get(feet.size() - 1);
      assertTrue(last.x() + last.width() <= shape.width());
    }
  }

  @Test
  void aMonthGivenTwiceIsRefused() {
    assertThrows(
        IllegalArgumentException.class,
        () ->
            StackedMonths.chart(
                CAPTION, TWO, List.of(month(2026, 1, 1, 1), month(2026, 1, 1, 1)), Sheets.HOURS));
  }

  @Test
  void theRunningTableTellsEachMonthAndTheTotalToDate() {
    Table table =
        RunningCurve.chart(
                CAPTION,
                7200,
                List.of(step("2026-03-02", 5400), step("2026-01-31", 3600)),
                List.of(),
                List.of(),
                Sheets.HOURS)
            .table();
    assertEquals(
        List.of(
            Table.Row.of("Before", List.of("2", "2")),
            Table.Row.of("January 2026", List.of("1", "3")),
            Table.Row.of("February 2026", List.of("0", "3")),
            Table.Row.of("March 2026", List.of("1½", "4½"))),
        table.rows());
  }

  @Test
  void aGrowingTotalIsDrawnByACurveThatNeverFalls() {
    for (int count : new int[] {1, 2, 30, 900}) {
      Chart<RunningCurve> chart =
          RunningCurve.chart(
              CAPTION,
              0,
              Sheets.steps(count, count, Sheets::evening),
              List.of(),
              List.of(),
              Sheets.HOURS);
      for (RunningCurve shape : List.of(chart.wide(), chart.narrow())) {
        double before = shape.curve().y();
        double from = before;
        for (FairCurve.Piece piece : shape.curve().pieces()) {
          for (int i = 1; i <= 20; i++) {
            double y = FairCurveTest.cubic(i / 20.0, from, piece.y1(), piece.y2(), piece.y());
            // A tenth of a unit is what rounding to whole tenths may cost.
            assertTrue(y <= before + 1, "falls at " + piece);
            before = Math.min(before, y);
          }
          from = piece.y();
        }
        assertEquals(shape.endY(), from / FairCurve.FINENESS, 0.6);
        assertEquals(shape.zero(), shape.curve().y() / FairCurve.FINENESS, 0.6);
      }
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

  @Test
  void figuresStandBesideThePlanAndAtTheEnd() {
    Chart<PhaseBars> chart =
        PhaseBars.chart(
            CAPTION,
            List.of(
                new PhaseBars.Phase("Lofting", 0, 95_400, List.of(86_400L)),
                new PhaseBars.Phase("Fairing", 1, 10_800, List.of())),
            Sheets.HOURS);
    assertEquals(
        List.of("26½ of 24", "3"),
        chart.wide().bars().stream().map(bar -> bar.figures().text()).toList());
    assertEquals(
        new Table(
            "Phase",
            List.of("Hours", "Planned"),
            List.of(
                Table.Row.of("Lofting", List.of("26½", "24")),
                Table.Row.of("Fairing", List.of("3", "–"))),
            List.of(Table.Row.of("All", List.of("29½", "24")))),
        chart.table());
    PhaseBars.Bar over = chart.narrow().bars().get(0);
    assertTrue(over.plan().get(0) < over.block().x() + over.block().width());
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
                new Table.Row("28 February 2026", "e/2026-02-28.html", List.of("1")),
                new Table.Row("31 December 2026", "e/2026-12-31.html", List.of("½"))),
            List.of(Table.Row.of("All", List.of("1½")))),
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

  private static StackedMonths.Month month(int year, int month, long... amounts) {
    return new StackedMonths.Month(
        YearMonth.of(year, month), java.util.Arrays.stream(amounts).boxed().toList());
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
