package ribband.chart;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
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
    return Fan.chart(CAPTION, DAYS, DONE, List.of(cold), List.of(), Sheets.HOURS);
  }

  @Test
  void itsFiguresAreThoseAtTheEndOfEachMonth() {
    assertEquals(
        new Table(
            "Month",
            List.of("Left, P50", "Left, P80", "Left, P95"),
            List.of(
                Table.Row.of("December 2026", List.of("30:00", "34:00", "38:00")),
                Table.Row.of("January 2027", List.of("10:00", "16:00", "20:00")),
                Table.Row.of("February 2027", List.of("0:00", "6:00", "10:00")),
                Table.Row.of("March 2027", List.of("0:00", "0:00", "4:00")),
                Table.Row.of("April 2027", List.of("0:00", "0:00", "0:00"))),
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
                List.of(),
                Sheets.HOURS)
            .table();
    assertEquals(
        List.of(
            Table.Row.of("December 2026", List.of("40:00", "40:00", "40:00", "epoxy and glue")),
            Table.Row.of("January 2027", List.of("–", "–", "–", "epoxy")),
            Table.Row.of("April 2027", List.of("0:00", "0:00", "0:00", "–"))),
        table.rows());
    assertEquals("Too cold for", table.heads().get(3));
    assertEquals("–", table.foot().get(0).cells().get(3));
  }

  @Test
  void itBeginsAtAllThatIsLeftAndSaysHowMuch() {
    Fan wide = chart().wide();
    assertEquals("40:00 left", wide.now().text());
    assertEquals(wide.left(), wide.startX());
    // 40 stands at the top of the plot of 320.
    assertEquals(wide.zero() - 320, wide.startY());
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
    List<Integer> feet = wide.ends().stream().map(Callout::x).toList();
    assertEquals(last.x() / 10.0, feet.get(0), 0.6);
    assertEquals(rightmost(wide.inner()), feet.get(1));
    assertEquals(rightmost(wide.outer()), feet.get(2));
    assertEquals(wide.right(), feet.get(2));
    wide.ends().forEach(end -> assertEquals(wide.zero(), end.foot()));
    assertEquals(
        List.of("even odds: 28 February 2027", "4 in 5: 14 March 2027", "19 in 20: 4 April 2027"),
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
    // 34 and 24 of 40 on a plot of 320.
    assertEquals(wide.zero() - 272, edge.get(1).y());
    assertEquals(wide.zero() - 192, edge.get(8).y());
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
  void theDatesStandApartAndNoLeaderRunsThroughOne() {
    for (Sheets.Sheet sheet : FanSheets.all()) {
      for (Object shape : ((Chart<?>) sheet.chart()).shapes()) {
        Fan fan = (Fan) shape;
        // Figures of thirteen digits fill a phone.
        boolean isFull = sheet.title().equals("Fan: huge") && fan.width() == Size.NARROW.width();
        assertTrue(isFull || fan.ends().stream().allMatch(Callout::isTold), sheet.title());
        for (Callout one : fan.ends()) {
          for (Callout other : fan.ends()) {
            Box leader = new Box(other.x(), other.head(), other.x(), other.foot());
            boolean runsThrough = one != other && one.label().box().overlaps(leader);
            assertFalse(runsThrough, sheet.title() + one + other);
          }
        }
      }
    }
  }

  @Test
  void theBandsAreNamedWhereTheyAreThick() {
    for (Fan shape : chart().shapes()) {
      assertEquals(
          List.of("9 in 10 odds", "6 in 10"),
          shape.bands().stream().map(band -> band.label().text()).toList());
      for (Callout band : shape.bands()) {
        assertTrue(band.x() > shape.left() && band.x() < shape.ends().get(0).x());
        assertTrue(band.foot() < shape.median().heightAt(band.x()), band.toString());
      }
    }
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
                List.of(),
                Sheets.HOURS)
            .wide();
    assertEquals(
        List.of("19 in 20: 7 March 2027"),
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
        List.of("too cold for epoxy", "too cold for epoxy and glue", ""),
        wide.spells().stream().map(line -> line.name().text()).toList());
    SpanLine first = wide.spells().get(0);
    SpanLine second = wide.spells().get(1);
    SpanLine third = wide.spells().get(2);
    assertEquals(wide.left(), first.start());
    assertTrue(first.end() < second.start());
    assertEquals(wide.right(), third.end());
    assertTrue(first.y() > wide.zero() && wide.height() > third.y());
  }

  @Test
  void aNameTooLongForASheetIsSaidShort() {
    Fan.ColdMonth month = cold(2027, 1, "epoxy, primer, enamel, varnish and a glue of our own");
    assertEquals(
        "too cold for epoxy, primer, enamel, varnish and a glue of our own",
        chart(month).wide().spells().get(0).name().text());
    assertEquals(
        "too cold to glue or to coat", chart(month).narrow().spells().get(0).name().text());
  }

  @Test
  void daysWithoutWorkAreNamedUnderTheFanAndCountedInTheFigures() {
    Chart<Fan> chart =
        Fan.chart(
            CAPTION,
            DAYS,
            DONE,
            List.of(cold(2027, 1, "epoxy")),
            List.of(
                rest("2027-01-04", "2027-01-31"),
                rest("2026-12-20", "2027-01-03"),
                rest("2027-03-01", "2027-03-07"),
                rest("2027-05-01", "2027-05-07")),
            Sheets.HOURS);
    assertEquals("Days without work", chart.table().heads().get(4));
    assertEquals(
        List.of("12", "31", "–", "7", "–"),
        chart.table().rows().stream().map(row -> row.cells().get(4)).toList());
    for (Fan shape : chart.shapes()) {
      assertEquals(
          List.of("too cold for epoxy", "nobody builds", ""),
          shape.spells().stream().map(line -> line.name().text()).toList());
      SpanLine first = shape.spells().get(1);
      SpanLine second = shape.spells().get(2);
      assertTrue(first.start() > shape.left() && first.end() < second.start());
      assertTrue(second.end() < shape.right());
      assertTrue(first.y() > shape.zero() && first.y() < shape.height());
    }
  }

  private static Fan.Rest rest(String from, String to) {
    return new Fan.Rest("nobody builds", LocalDate.parse(from), LocalDate.parse(to));
  }

  @Test
  void noDateReadsAsIfItWentOnFromTheScale() {
    for (int weeks = 1; weeks < 40; weeks++) {
      // All that is left stands well below the topmost figure of the scale.
      Fan.Day now = day("2026-12-02", 31, 31, 31, 31, 31);
      LocalDate even = START.plusWeeks(weeks);
      LocalDate end = START.plusWeeks(40);
      List<Fan.Day> days =
          List.of(now, new Fan.Day(even, 0, 0, 0, 9, 9), new Fan.Day(end, 0, 0, 0, 0, 0));
      Fan.Done done = new Fan.Done(even, end, end);
      for (Fan fan : Fan.chart(CAPTION, days, done, List.of(), List.of(), Sheets.HOURS).shapes()) {
        for (Rule rule : fan.rules()) {
          Box scale = rule.lettering().box();
          Box beside = new Box(scale.left(), scale.top(), scale.right() + 12, scale.bottom());
          for (Callout date : fan.ends()) {
            boolean isClear = !date.isTold() || !date.label().box().overlaps(beside);
            assertTrue(isClear, weeks + ": " + date + rule);
          }
        }
      }
    }
  }

  @Test
  void monthsOutsideTheFanAreNotMarked() {
    assertEquals(List.of(), chart(cold(2026, 11, "epoxy"), cold(2027, 5, "epoxy")).wide().spells());
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
      for (Object shape : chart.shapes()) {
        Fan fan = (Fan) shape;
        for (Fan.Band band : List.of(fan.outer(), fan.inner())) {
          for (Fan.Corner corner : band.edge()) {
            assertTrue(corner.x() >= fan.left() && corner.x() <= fan.right(), sheet.title());
            assertTrue(corner.y() >= 0 && corner.y() <= fan.zero(), sheet.title());
          }
        }
        assertTrue(fan.now().largeBox().right() <= fan.width(), sheet.title());
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
