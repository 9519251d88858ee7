package ribband.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;
import ribband.journal.Away;
import ribband.measure.Hours;
import ribband.measure.Week;
import ribband.shop.Figure;

class ForecastTest {
  /** A Wednesday; its week ends on 2026-05-10, week 1 on 2026-05-17. */
  private static final LocalDate WEDNESDAY = LocalDate.of(2026, 5, 6);

  private static final LocalDate WEEK_1 = LocalDate.of(2026, 5, 17);

  private static WeeksWorked past(long... hours) {
    List<WeeksWorked.Worked> weeks = new ArrayList<>();
    for (long each : hours) {
      Week week = Week.of(WEDNESDAY.minusWeeks(hours.length - weeks.size()));
      weeks.add(new WeeksWorked.Worked(week, Boats.hours(each), each == 0 ? 0 : 1));
    }
    return new WeeksWorked(weeks);
  }

  private static Forecast forecast(long left, WeeksWorked past, Away... away) {
    return Forecast.of(Figure.of(Boats.hours(left)), past, List.of(away), WEDNESDAY, new Random(7));
  }

  private static Away away(String from, String to) {
    return new Away(LocalDate.parse(from), LocalDate.parse(to), Optional.empty());
  }

  private static List<StillLeft> stillLeft(Forecast forecast) {
    return StillLeft.of(forecast, new Random(7));
  }

  private static void assertAll(Figure<LocalDate> date, Forecast forecast) {
    assertEquals(date, forecast.p50());
    assertEquals(date, forecast.p80());
    assertEquals(date, forecast.p95());
  }

  @Test
  void steadyWeeksEndOnTheSundayOfThePlainRate() {
    assertAll(Figure.of(WEEK_1), forecast(4, past(4)));
    assertAll(Figure.of(WEEK_1.plusWeeks(3)), forecast(15, past(4, 4, 4)));
    assertAll(Figure.of(WEEK_1.plusWeeks(9)), forecast(40, past(4, 4)));
  }

  @Test
  void theFirstWeekIsTheOneAfterTheAsOfDays() {
    for (int day = 0; day < 7; day++) {
      LocalDate asOf = LocalDate.of(2026, 5, 4).plusDays(day);
      Forecast forecast =
          Forecast.of(Figure.of(Boats.hours(1)), past(1), List.of(), asOf, new Random(7));
      assertEquals(Figure.of(WEEK_1), forecast.p50());
    }
  }

  /** Weeks {1, 2, 3} to work off 6: P50 is 3 weeks and P80 and P95 are 4 and 5, by enumeration. */
  @Test
  void theDatesAreThoseOfTheEnumeration() {
    Forecast forecast = forecast(6, past(1, 2, 3));
    assertEquals(Figure.of(WEEK_1.plusWeeks(2)), forecast.p50());
    assertEquals(Figure.of(WEEK_1.plusWeeks(3)), forecast.p80());
    // P(4 or fewer) is 76/81, which is less than 95 of 100.
    assertEquals(Figure.of(WEEK_1.plusWeeks(4)), forecast.p95());
  }

  @Test
  void theSameSeedGivesTheSameDates() {
    WeeksWorked past = past(0, 9, 3, 0, 6, 2);
    assertEquals(forecast(300, past), forecast(300, past));
    assertEquals(stillLeft(forecast(300, past)), stillLeft(forecast(300, past)));
  }

  @Test
  void aLaterPIsALaterSunday() {
    Random random = new Random(3);
    for (int i = 0; i < 40; i++) {
      long[] hours = random.longs(1 + random.nextInt(26), 0, 12).toArray();
      hours[0] = 1;
      Forecast forecast = forecast(1 + random.nextInt(400), past(hours));
      LocalDate p50 = forecast.p50().value().orElseThrow();
      LocalDate p80 = forecast.p80().value().orElseThrow();
      LocalDate p95 = forecast.p95().value().orElseThrow();
      assertFalse(p80.isBefore(p50) || p95.isBefore(p80), p50 + " " + p80 + " " + p95);
      assertEquals(DayOfWeek.SUNDAY, p50.getDayOfWeek());
      assertEquals(DayOfWeek.SUNDAY, p95.getDayOfWeek());
    }
  }

  @Test
  void moreHoursLeftNeverEndEarlier() {
    WeeksWorked past = past(0, 5, 3);
    LocalDate before = WEDNESDAY;
    for (int left = 1; left <= 60; left++) {
      LocalDate p80 = forecast(left, past).p80().value().orElseThrow();
      assertFalse(p80.isBefore(before));
      before = p80;
    }
  }

  @Test
  void weeksOfNothingGiveNoPaceToGoBy() {
    Figure<LocalDate> none = Figure.unknown("no pace to go by");
    assertAll(none, forecast(10, past()));
    assertAll(none, forecast(10, past(0)));
    assertAll(none, forecast(10, past(new long[26])));
    assertEquals(List.of(), stillLeft(forecast(10, past(0))));
  }

  @Test
  void nothingLeftIsSaidBeforeAnyPace() {
    assertAll(Figure.unknown("nothing left by the plan"), forecast(0, past(0)));
    assertAll(Figure.unknown("nothing left by the plan"), forecast(0, past(4)));
  }

  @Test
  void whatIsLeftMayBeUnknown() {
    Figure<Hours> unknown = Figure.unknown("no phase has planned hours");
    assertAll(
        Figure.unknown("no phase has planned hours"),
        Forecast.of(unknown, past(4), List.of(), WEDNESDAY, new Random(7)));
  }

  @Test
  void noForecastGoesBeyondAHundredYears() {
    assertAll(Figure.unknown("more than 100 years"), forecast(9000, past(1)));
    assertAll(Figure.unknown("more than 100 years"), forecast(5219, past(1)));
    LocalDate last = LocalDate.of(2126, 5, 12);
    assertAll(Figure.of(last), forecast(5218, past(1)));
    assertEquals(DayOfWeek.SUNDAY, last.getDayOfWeek());
  }

  /** Half of the draws may be done in time and the rest not: each percentile has its own answer. */
  @Test
  void aPercentileBeyondTheLimitLeavesTheOthers() {
    Forecast forecast = forecast(2600, past(0, 1));
    assertTrue(forecast.p50().value().isPresent());
    assertEquals(Figure.unknown("more than 100 years"), forecast.p95());
    assertEquals(List.of(), stillLeft(forecast));
  }

  @Test
  void whoIsAwayForeverIsNeverDone() {
    assertAll(
        Figure.unknown("more than 100 years"),
        forecast(1, past(4), away("2026-05-06", "2199-12-31")));
  }

  @Test
  void weeksAwayMoveTheDatesOn() {
    Away july = away("2026-05-18", "2026-05-31");
    assertAll(Figure.of(WEEK_1), forecast(4, past(4), july));
    assertAll(Figure.of(WEEK_1.plusWeeks(3)), forecast(8, past(4), july));
    assertAll(
        Figure.of(WEEK_1.plusWeeks(1)), forecast(4, past(4), away("2026-05-11", "2026-05-14")));
    assertAll(Figure.of(WEEK_1), forecast(4, past(4), away("2026-05-11", "2026-05-13")));
  }

  @Test
  void whatIsStillLeftFallsFromAllToNothing() {
    Forecast forecast = forecast(6, past(1, 2, 3));
    List<StillLeft> days = stillLeft(forecast);
    Hours all = Boats.hours(6);
    assertEquals(new StillLeft(WEDNESDAY, all, all, all, all, all), days.get(0));
    assertEquals(new StillLeft(LocalDate.of(2026, 5, 10), all, all, all, all, all), days.get(1));
    assertEquals(
        List.of(
            WEEK_1,
            WEEK_1.plusWeeks(1),
            WEEK_1.plusWeeks(2),
            WEEK_1.plusWeeks(3),
            WEEK_1.plusWeeks(4)),
        days.subList(2, 7).stream().map(StillLeft::date).toList());
    // After one week 5, 4 or 3 are left, a third of the draws each.
    assertEquals(left(WEEK_1, 3, 3, 4, 5, 5), days.get(2));
    // Two weeks bring 2, 3, 3, 4, 4, 4, 5, 5, 6 of nine.
    assertEquals(left(WEEK_1.plusWeeks(1), 0, 1, 2, 3, 4), days.get(3));
    assertEquals(left(WEEK_1.plusWeeks(4), 0, 0, 0, 0, 0), days.get(6));
    assertEquals(7, days.size());
  }

  private static StillLeft left(LocalDate date, int p5, int p20, int p50, int p80, int p95) {
    return new StillLeft(
        date,
        Boats.hours(p5),
        Boats.hours(p20),
        Boats.hours(p50),
        Boats.hours(p80),
        Boats.hours(p95));
  }

  @Test
  void theFanReachesTheZeroLineOnTheDatesOfTheForecast() {
    Forecast forecast = forecast(50, past(0, 4, 1, 7));
    for (StillLeft day : stillLeft(forecast)) {
      assertEquals(!day.date().isBefore(forecast.p50().value().get()), day.p50().isZero());
      assertEquals(!day.date().isBefore(forecast.p80().value().get()), day.p80().isZero());
      assertEquals(!day.date().isBefore(forecast.p95().value().get()), day.p95().isZero());
    }
  }

  @Test
  void hoursStayLevelOverWeeksAway() {
    Forecast forecast = forecast(8, past(4), away("2026-05-18", "2026-05-31"));
    assertEquals(
        List.of(
            left(WEDNESDAY, 8, 8, 8, 8, 8),
            left(LocalDate.of(2026, 5, 10), 8, 8, 8, 8, 8),
            left(WEEK_1, 4, 4, 4, 4, 4),
            left(LocalDate.of(2026, 5, 31), 4, 4, 4, 4, 4),
            left(LocalDate.of(2026, 6, 7), 0, 0, 0, 0, 0)),
        stillLeft(forecast));
  }

  @Test
  void aLongFanIsThinned() {
    Forecast sixty = forecast(60, past(1));
    assertEquals(62, stillLeft(sixty).size());
    Forecast years = forecast(1000, past(1));
    List<StillLeft> days = stillLeft(years);
    assertEquals(61, days.size());
    assertEquals(years.p95().value().get(), days.get(60).date());
    assertEquals(left(WEEK_1.plusWeeks(15), 984, 984, 984, 984, 984), days.get(1));
    assertEquals(WEEK_1.plusWeeks(499), days.get(30).date());
  }

  @Test
  void aThinnedFanKeepsTheDatesOfItsPercentiles() {
    Forecast forecast = forecast(900, past(0, 9, 2, 4));
    List<StillLeft> days = stillLeft(forecast);
    List<LocalDate> dates = days.stream().map(StillLeft::date).toList();
    assertTrue(days.size() > 62 && days.size() <= 65, days.size() + " days");
    for (Figure<LocalDate> end : List.of(forecast.p50(), forecast.p80(), forecast.p95())) {
      assertTrue(dates.contains(end.value().orElseThrow()));
    }
    assertEquals(dates.stream().sorted().distinct().toList(), dates);
    for (StillLeft day : days) {
      assertEquals(!day.date().isBefore(forecast.p50().value().get()), day.p50().isZero());
      assertEquals(!day.date().isBefore(forecast.p80().value().get()), day.p80().isZero());
    }
  }
}
