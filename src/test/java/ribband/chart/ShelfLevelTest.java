package ribband.chart;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;

class ShelfLevelTest {
  private static final Caption CAPTION = new Caption("shelf", "Epoxy on hand", "A line.", "Now 3.");
  private static final Yardstick OUNCES =
      new Yardstick(
          "On hand",
          1000,
          Yardstick.Division.TENTHS,
          parts -> "" + parts / 1000,
          parts -> parts / 1000 + " fl oz",
          parts -> parts / 1000 + " fl oz",
          parts -> parts / 1000 + " fl oz");
  private static final List<ShelfLevel.Day> DAYS =
      List.of(
          day("2026-02-10", 0, 4000, 16000),
          day("2026-02-20", 32000, 0, 48000),
          day("2026-04-01", 0, 45000, 3000));

  private static ShelfLevel.Day day(String date, long came, long went, long level) {
    return new ShelfLevel.Day(LocalDate.parse(date), came, went, level);
  }

  private static Chart<ShelfLevel> chart(
      List<ShelfLevel.Day> days, List<ShelfLevel.Delivery> deliveries, long reserve) {
    return ShelfLevel.chart(
        CAPTION,
        20000,
        days,
        LocalDate.of(2026, 5, 1),
        deliveries,
        List.of(new RunningCurve.Plan(reserve, "never below " + reserve / 1000 + " fl oz")),
        OUNCES);
  }

  @Test
  void itsFiguresAreThoseOfTheMonths() {
    assertEquals(
        new Table(
            "Month",
            List.of("Came", "Went", "Left"),
            List.of(
                Table.Row.of("February 2026", List.of("32 fl oz", "4 fl oz", "48 fl oz")),
                Table.Row.of("March 2026", List.of("0 fl oz", "0 fl oz", "48 fl oz")),
                Table.Row.of("April 2026", List.of("0 fl oz", "45 fl oz", "3 fl oz")),
                Table.Row.of("May 2026", List.of("0 fl oz", "0 fl oz", "3 fl oz"))),
            List.of()),
        chart(DAYS, List.of(), 4000).table());
  }

  @Test
  void theLineIsLevelFromDayToDay() {
    ShelfLevel wide = chart(DAYS, List.of(), 4000).wide();
    assertEquals(3, wide.level().corners().size());
    // 50 stands at the top of the plot of 120, so a fluid ounce is 2.4 high.
    assertEquals("50 fl oz", wide.rules().get(wide.rules().size() - 1).label());
    assertEquals(wide.zero() - 48, wide.level().y());
    assertEquals(
        List.of(wide.zero() - 38, wide.zero() - 115, wide.zero() - 7),
        wide.level().corners().stream().map(Steps.Corner::y).toList());
    assertEquals(wide.zero() - 7, wide.endY());
    assertEquals("3 fl oz", wide.now().text());
    assertEquals(wide.right(), wide.endX());
    assertTrue(wide.level().corners().get(0).x() > wide.left());
  }

  @Test
  void deliveriesAreNamedWhereTheLineRises() {
    ShelfLevel wide =
        chart(
                DAYS,
                List.of(new ShelfLevel.Delivery(LocalDate.of(2026, 2, 20), "32 fl oz came")),
                4000)
            .wide();
    Callout came = wide.came().get(0);
    assertEquals("32 fl oz came", came.label().text());
    assertEquals(wide.level().corners().get(1), new Steps.Corner(came.x(), List.of(), came.foot()));
  }

  @Test
  void whatCameAndWentOnOneDayRisesFirstAndThenFalls() {
    LocalDate came = LocalDate.of(2026, 2, 20);
    List<ShelfLevel.Day> days =
        List.of(new ShelfLevel.Day(came, 40000, 50000, 10000), day("2026-04-01", 0, 10000, 0));
    for (ShelfLevel shape :
        chart(days, List.of(new ShelfLevel.Delivery(came, "40 fl oz came")), 4000).shapes()) {
      // 20 and 40 were there at once, on a scale to 60.
      assertEquals("60 fl oz", shape.rules().get(shape.rules().size() - 1).label());
      int top = shape.rules().get(shape.rules().size() - 1).at();
      Steps.Corner corner = shape.level().corners().get(0);
      assertEquals(List.of(top), corner.turns());
      assertEquals(shape.zero() - (shape.zero() - top) / 6, corner.y(), 1);
      assertEquals(top, shape.came().get(0).foot());
      assertEquals(List.of(), shape.level().corners().get(1).turns());
    }
  }

  @Test
  void aChangeOnTheLastDayIsDrawnBeforeTheEnd() {
    for (long level : new long[] {0, 3000, 47000, 48000}) {
      List<ShelfLevel.Day> days = new ArrayList<>(DAYS);
      days.add(new ShelfLevel.Day(LocalDate.of(2026, 5, 1), 0, 0, level));
      for (ShelfLevel shape : chart(days, List.of(), 4000).shapes()) {
        List<Steps.Corner> corners = shape.level().corners();
        Steps.Corner last = corners.get(corners.size() - 1);
        assertEquals(shape.endY(), last.y());
        assertEquals(shape.endX(), shape.level().endX());
        assertEquals(shape.endX(), last.x() + Steps.TAIL);
        assertTrue(shape.endX() <= shape.right());
      }
    }
  }

  @Test
  void manyDeliveriesAreNotNamed() {
    List<ShelfLevel.Delivery> nine =
        LongStream.range(0, 9)
            .mapToObj(i -> new ShelfLevel.Delivery(LocalDate.of(2026, 2, 20), "a can"))
            .toList();
    assertEquals(8, chart(DAYS, nine.subList(0, 8), 4000).wide().came().size());
    assertEquals(List.of(), chart(DAYS, nine, 4000).wide().came());
  }

  @Test
  void theReserveIsNamedAtItsLinesEndOutOfTheWayOfWhatIsThere() {
    for (long reserve : new long[] {500, 1000, 3000, 4000, 12000, 60000}) {
      ShelfLevel wide = chart(DAYS, List.of(), reserve).wide();
      assertEquals(1, wide.reserve().size());
      Label name = wide.reserveName().get(0);
      assertEquals("never below " + reserve / 1000 + " fl oz", name.text());
      assertFalse(name.box().overlaps(wide.now().largeBox()), "reserve " + reserve);
      assertTrue(name.box().right() <= wide.width());
    }
  }

  @Test
  void onAPhoneTheReserveIsNamedWhereTheLineLeavesItRoom() {
    ShelfLevel start = chart(DAYS, List.of(), 4000).narrow();
    assertEquals(Label.Anchor.START, start.reserveName().get(0).anchor());
    List<ShelfLevel.Day> low =
        List.of(day("2026-02-02", 0, 19000, 1000), day("2026-04-20", 47000, 0, 48000));
    assertEquals(start.left(), chart(low, List.of(), 30000).narrow().reserveName().get(0).x());
    List<ShelfLevel.Day> always = List.of(day("2026-02-02", 0, 18000, 5000));
    assertEquals(List.of(), chart(always, List.of(), 4000).narrow().reserveName());
  }

  /** A journal of years has more days than a sheet has places. */
  @Test
  void noPlaceOnTheSheetHasTwoCorners() {
    List<ShelfLevel.Day> years = new ArrayList<>();
    for (int i = 0; i < 4000; i++) {
      years.add(
          new ShelfLevel.Day(LocalDate.of(2015, 1, 1).plusDays(i), i % 2, 0, 1000 + i % 7 * 1000));
    }
    Chart<ShelfLevel> chart = chart(years, List.of(), 4000);
    for (ShelfLevel shape : chart.shapes()) {
      long places = shape.level().corners().stream().map(Steps.Corner::x).distinct().count();
      assertEquals(places, shape.level().corners().size());
      assertTrue(places <= shape.width());
    }
  }
}
