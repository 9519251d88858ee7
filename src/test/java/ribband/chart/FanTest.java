package ribband.chart;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.time.YearMonth;
import java.util.List;
import org.junit.jupiter.api.Test;

class FanTest {
  private static final Caption CAPTION = Sheets.caption("fan");
  private static final LocalDate START = LocalDate.of(2026, 12, 2);
  private static final List<Fan.Day> DAYS =
      List.of(
          day("2026-12-02", 40, 40, 40, 40, 40),
          day("2026-12-27", 20, 24, 30, 34, 38),
          day("2027-01-31", 0, 4, 10, 16, 20),
          day("2027-02-28", 0, 0, 0, 6, 10),
          day("2027-03-14", 0, 0, 0, 0, 4),
          day("2027-04-04", 0, 0, 0, 0, 0));
  private static final Fan.Done DONE =
      new Fan.Done(LocalDate.of(2027, 2, 28), LocalDate.of(2027, 3, 14), LocalDate.of(2027, 4, 4));

  private static Fan.Day day(String date, long p5, long p20, long p50, long p80, long p95) {
    return new Fan.Day(
        LocalDate.parse(date), p5 * 3600, p20 * 3600, p50 * 3600, p80 * 3600, p95 * 3600);
  }

  private static Fan.ColdMonth cold(int year, int month, String what) {
    return new Fan.ColdMonth(YearMonth.of(year, month), what);
  }

  private static Chart<Fan> chart(Fan.ColdMonth... cold) {
    return Fan.chart(CAPTION, DAYS, DONE, List.of(cold), Sheets.HOURS);
  }

  @Test
  void itsFiguresAreThoseAtTheEndOfEachMonth() {
    assertEquals(
        new Table(
            "Month",
            List.of("Left, P50", "Left, P80", "Left, P95"),
            List.of(
                Table.Row.of("December 2026", List.of("30", "34", "38")),
                Table.Row.of("January 2027", List.of("10", "16", "20")),
                Table.Row.of("February 2027", List.of("0", "6", "10")),
                Table.Row.of("March 2027", List.of("0", "0", "4")),
                Table.Row.of("April 2027", List.of("0", "0", "0"))),
            List.of(
                Table.Row.of(
                    "Nothing left by",
                    List.of("28 February 2027", "14 March 2027", "4 April 2027")))),
        chart().table());
  }

  @Test
  void coldMonthsStandInTheFiguresEvenWhereNothingElseDoes() {
    Table table =
        Fan.chart(
                CAPTION,
                List.of(DAYS.get(0), DAYS.get(5)),
                new Fan.Done(DONE.p95(), DONE.p95(), DONE.p95()),
                List.of(cold(2027, 1, "epoxy"), cold(2026, 12, "epoxy and glue")),
                Sheets.HOURS)
            .table();
    assertEquals(
        List.of(
            Table.Row.of("December 2026", List.of("40", "40", "40", "epoxy and glue")),
            Table.Row.of("January 2027", List.of("–", "–", "–", "epoxy")),
            Table.Row.of("April 2027", List.of("0", "0", "0", "–"))),
        table.rows());
    assertEquals("Too cold for", table.heads().get(3));
    assertEquals("–", table.foot().get(0).cells().get(3));
  }

  @Test
  void itBeginsAtAllThatIsLeftAndSaysHowMuch() {
    Fan wide = chart().wide();
    assertEquals("40 hours left", wide.now().text());
    assertEquals(wide.left(), wide.startX());
    // 40 stands at the top of the plot of 240.
    assertEquals(wide.zero() - 240, wide.startY());
    assertEquals(10 * wide.startX(), wide.median().x());
    assertEquals(10 * wide.startY(), wide.median().y());
  }

  @Test
  void eachPercentileReachesTheZeroLineOnItsDate() {
    Fan wide = chart().wide();
    List<FairCurve.Piece> pieces = wide.median().pieces();
    FairCurve.Piece last = pieces.get(pieces.size() - 1);
    assertEquals(3, pieces.size());
    assertEquals(10 * wide.zero(), last.y());
    List<Integer> feet = wide.ends().stream().map(Callout::footX).toList();
    assertEquals(last.x() / 10.0, feet.get(0), 0.6);
    assertEquals(rightmost(wide.inner()), feet.get(1));
    assertEquals(rightmost(wide.outer()), feet.get(2));
    assertEquals(wide.right(), feet.get(2));
    wide.ends().forEach(end -> assertEquals(wide.zero(), end.foot()));
    assertEquals(
        List.of("P50: 28 February 2027", "P80: 14 March 2027", "P95: 4 April 2027"),
        wide.ends().stream().map(end -> end.label().text()).toList());
  }

  private static int rightmost(Fan.Band band) {
    return band.edge().stream().mapToInt(Fan.Corner::x).max().orElseThrow();
  }

  @Test
  void aBandGoesAlongItsUpperEdgeAndBackAlongTheLowerOne() {
    Fan wide = chart().wide();
    List<Fan.Corner> edge = wide.inner().edge();
    assertEquals(10, edge.size());
    for (int i = 0; i < 5; i++) {
      Fan.Corner above = edge.get(i);
      Fan.Corner below = edge.get(9 - i);
      assertEquals(above.x(), below.x());
      assertTrue(above.y() <= below.y());
    }
    // 34 and 24 of 40 on a plot of 240.
    assertEquals(wide.zero() - 204, edge.get(1).y());
    assertEquals(wide.zero() - 144, edge.get(8).y());
    assertTrue(wide.inner().hatch() != wide.outer().hatch());
  }

  @Test
  void cornersKeepApartOnAPhone() {
    for (Sheets.Sheet sheet : FanSheets.all()) {
      Fan narrow = (Fan) ((Chart<?>) sheet.chart()).narrow();
      for (Fan.Band band : List.of(narrow.outer(), narrow.inner())) {
        List<Integer> upper =
            band.edge().subList(0, band.edge().size() / 2).stream().map(Fan.Corner::x).toList();
        // All but the last, which stands where the edge ends.
        for (int i = 1; i + 1 < upper.size(); i++) {
          assertTrue(upper.get(i) - upper.get(i - 1) >= 10, sheet.title() + upper);
        }
      }
    }
  }

  @Test
  void theDatesStandLeftOfTheirLeadersAndNoLeaderRunsThroughOne() {
    for (Fan shape : List.of(chart().wide(), chart().narrow())) {
      for (int i = 0; i < 3; i++) {
        Callout end = shape.ends().get(i);
        assertEquals(Label.Anchor.END, end.label().anchor());
        assertTrue(end.label().x() < end.x());
        if (i > 0) {
          assertTrue(end.label().y() < shape.ends().get(i - 1).label().y());
        }
      }
    }
  }

  @Test
  void nearTheLeftTheDatesStandRightOfTheirLeaders() {
    List<Callouts.Placed> laid =
        FanEnds.lay(
            List.of(new Callouts.Flag(60, "P50: 1 May 2027"), new Callouts.Flag(90, "P80: 9 May")),
            800);
    assertEquals(List.of(1, 0), laid.stream().map(Callouts.Placed::row).toList());
    assertEquals(List.of(64, 94), laid.stream().map(Callouts.Placed::start).toList());
    assertEquals(Label.Anchor.START, laid.get(0).anchor());
    int room = Lettering.width("P50");
    List<Callouts.Flag> exact = List.of(new Callouts.Flag(room + 4, "P50"));
    assertEquals(Label.Anchor.END, FanEnds.lay(exact, 800).get(0).anchor());
    List<Callouts.Flag> nearer = List.of(new Callouts.Flag(room + 3, "P50"));
    assertEquals(Label.Anchor.START, FanEnds.lay(nearer, 2 * room + 7).get(0).anchor());
    assertEquals(0, FanEnds.lay(nearer, 2 * room + 6).get(0).row());
  }

  @Test
  void endsOfOneDayAreOneLabel() {
    LocalDate end = LocalDate.of(2027, 3, 7);
    Fan wide =
        Fan.chart(
                CAPTION,
                List.of(DAYS.get(0), new Fan.Day(end, 0, 0, 0, 0, 0)),
                new Fan.Done(end, end, end),
                List.of(),
                Sheets.HOURS)
            .wide();
    assertEquals(
        List.of("P50, P80 and P95: 7 March 2027"),
        wide.ends().stream().map(e -> e.label().text()).toList());
  }

  @Test
  void coldMonthsInARowAreOneStripOnTheSheet() {
    Fan wide =
        chart(
                cold(2027, 1, "epoxy"),
                cold(2026, 12, "epoxy"),
                cold(2027, 2, "epoxy and glue"),
                cold(2027, 4, "epoxy"),
                cold(2027, 5, "epoxy"))
            .wide();
    assertEquals(
        List.of(
            "December 2026 to January 2027: too cold for epoxy",
            "February 2027: too cold for epoxy and glue",
            "April 2027 to May 2027: too cold for epoxy"),
        wide.cold().stream().map(Fan.ColdStrip::said).toList());
    Block first = wide.cold().get(0).block();
    Block second = wide.cold().get(1).block();
    Block third = wide.cold().get(2).block();
    assertEquals(wide.left(), first.x());
    assertEquals(first.x() + first.width(), second.x());
    assertEquals(wide.right(), third.x() + third.width());
    assertTrue(first.y() > wide.zero() && wide.ticks() > first.y() + first.height());
    assertEquals("too cold for an adhesive", wide.keys().get(2).label().text());
  }

  @Test
  void monthsOutsideTheFanAreNotMarked() {
    Fan wide = chart(cold(2026, 11, "epoxy"), cold(2027, 5, "epoxy")).wide();
    assertEquals(List.of(), wide.cold());
    assertEquals(wide.zero(), wide.ticks());
    assertEquals(
        List.of("6 of 10 draws", "9 of 10 draws"),
        wide.keys().stream().map(key -> key.label().text()).toList());
  }

  @Test
  void keysThatDoNotFitStandInTheNextRow() {
    Chart<Fan> chart = chart(cold(2027, 1, "epoxy"));
    List<Integer> wide = chart.wide().keys().stream().map(key -> key.label().y()).toList();
    List<Integer> narrow = chart.narrow().keys().stream().map(key -> key.label().y()).toList();
    assertEquals(wide.get(0), wide.get(2));
    assertEquals(narrow.get(0), narrow.get(1));
    assertTrue(narrow.get(2) > narrow.get(1));
    assertEquals(0, chart.narrow().keys().get(2).sample().x());
    assertTrue(chart.narrow().height() > narrow.get(2));
  }

  @Test
  void aMonthIsMarkedHoweverShortTheFan() {
    for (int day = 0; day < 62; day++) {
      LocalDate from = START.plusDays(day);
      LocalDate to = from.plusDays(1);
      Fan wide =
          Fan.chart(
                  CAPTION,
                  List.of(new Fan.Day(from, 1, 1, 1, 1, 1), new Fan.Day(to, 0, 0, 0, 0, 0)),
                  new Fan.Done(to, to, to),
                  List.of(),
                  Sheets.HOURS)
              .wide();
      assertTrue(wide.months().size() >= 1);
      wide.months()
          .forEach(mark -> assertTrue(mark.x() >= wide.left() && mark.x() <= wide.right()));
    }
  }

  @Test
  void everyShapeStaysOnItsSheet() {
    for (Sheets.Sheet sheet : FanSheets.all()) {
      Chart<?> chart = (Chart<?>) sheet.chart();
      for (Fan fan : List.of((Fan) chart.wide(), (Fan) chart.narrow())) {
        for (Fan.Band band : List.of(fan.outer(), fan.inner())) {
          for (Fan.Corner corner : band.edge()) {
            assertTrue(corner.x() >= fan.left() && corner.x() <= fan.right(), sheet.title());
            assertTrue(corner.y() >= 0 && corner.y() <= fan.zero(), sheet.title());
          }
        }
        assertTrue(fan.now().x() + Lettering.width(fan.now().text()) <= fan.width(), sheet.title());
      }
    }
  }

  @Test
  void fallingPercentilesAndDatesAreRefused() {
    assertThrows(IllegalArgumentException.class, () -> day("2026-12-02", -1, 2, 3, 4, 5));
    assertThrows(IllegalArgumentException.class, () -> day("2026-12-02", 3, 2, 3, 4, 5));
    assertThrows(IllegalArgumentException.class, () -> day("2026-12-02", 1, 4, 3, 4, 5));
    assertThrows(IllegalArgumentException.class, () -> day("2026-12-02", 1, 2, 5, 4, 5));
    assertThrows(IllegalArgumentException.class, () -> day("2026-12-02", 1, 2, 3, 6, 5));
    assertThrows(
        IllegalArgumentException.class, () -> new Fan.Done(START, START.minusDays(1), START));
    assertThrows(
        IllegalArgumentException.class, () -> new Fan.Done(START, START, START.minusDays(1)));
  }
}
