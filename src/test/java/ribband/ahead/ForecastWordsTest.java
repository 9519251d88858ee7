package ribband.ahead;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Path;
import java.time.LocalDate;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import ribband.journal.Away;
import ribband.measure.Hours;
import ribband.plan.ColdMonths.ColdMonth;
import ribband.plan.Forecast;
import ribband.plan.HoursLeft;
import ribband.plan.WeeksWorked;
import ribband.shop.Figure;

class ForecastWordsTest {
  private static final LocalDate TODAY = LocalDate.of(2026, 3, 17);

  @TempDir Path folder;

  private static Forecast left(long minutes) {
    Figure<LocalDate> none = Figure.unknown(Forecast.NO_PACE);
    return new Forecast(
        TODAY,
        Figure.of(Hours.ofMinutes(minutes)),
        new WeeksWorked(List.of()),
        List.of(),
        none,
        none,
        none);
  }

  /** Rounded up to the quarter hour, so that what is left is never said to be nothing. */
  @Test
  void hoursLeftAreSaidInQuarters() {
    assertEquals("44 hours are left", ForecastWords.left(left(44 * 60)));
    assertEquals("1 hour is left", ForecastWords.left(left(60)));
    assertEquals("1 hour is left", ForecastWords.left(left(46)));
    assertEquals("1¼ hours are left", ForecastWords.left(left(61)));
    assertEquals("0 hours are left", ForecastWords.left(left(0)));
  }

  @Test
  void inShortItIsWhatIsLeftAndTheEvenOdds() throws Exception {
    assertEquals(
        Optional.of("44 hours are left, with even odds of being done by 10 May 2026"),
        ForecastWords.inShort(Skiff.ahead(folder, Wish.NONE).forecast()));
    assertEquals(Optional.of("1 hour is left"), ForecastWords.inShort(left(60)));
    Figure<LocalDate> none = Figure.unknown("no phase has planned hours");
    assertEquals(
        Optional.empty(),
        ForecastWords.inShort(
            new Forecast(
                TODAY,
                Figure.unknown("no phase has planned hours"),
                new WeeksWorked(List.of()),
                List.of(),
                none,
                none,
                none)));
  }

  /** Strakes at their own 5 hours each, and nights of the phase that made none beside them. */
  @Test
  void whyPlanAgainstActualComesToOtherHoursIsSaid() throws Exception {
    Ahead skiff = Skiff.ahead(folder, Wish.NONE);
    assertEquals(
        Optional.of(
            "Plan against actual comes to other hours, as it takes one rate for the whole of a phase"
                + " and one for all of them; here pieces left go at their own rate, and each phase"
                + " at its own."),
        ForecastWords.otherEstimate(skiff.left(), skiff.standing()));
  }

  @Test
  void ofEqualEstimatesNothingIsSaid() throws Exception {
    Ahead skiff = Skiff.ahead(folder, Wish.NONE);
    BigFraction same = skiff.standing().whole().orElseThrow().etc().orElseThrow();
    HoursLeft.Part part = new HoursLeft.Part("Planking", same, HoursLeft.Basis.RATE);
    assertEquals(
        Optional.empty(),
        ForecastWords.otherEstimate(new HoursLeft(List.of(part), List.of()), skiff.standing()));
  }

  @Test
  void phasesWhoseHoursAreUsedUpAreNamed() {
    HoursLeft.Part spars = new HoursLeft.Part("Spars", BigFraction.ZERO, HoursLeft.Basis.USED_UP);
    HoursLeft.Part oars = new HoursLeft.Part("Oars", BigFraction.ONE, HoursLeft.Basis.PLAN);
    assertEquals(
        Optional.of(
            "Taken for done, as the planned hours are used up: Spars; note complete to tell how far"
                + " that is."),
        ForecastWords.usedUp(new HoursLeft(List.of(oars, spars), List.of())));
    assertEquals(Optional.empty(), ForecastWords.usedUp(new HoursLeft(List.of(oars), List.of())));
  }

  @Test
  void finishedPhasesAreNamedTogetherAndTheirOwnCommasDoNotMixWithOurs() {
    HoursLeft.Part stem =
        new HoursLeft.Part("Stem, keelson", BigFraction.ZERO, HoursLeft.Basis.FINISHED);
    HoursLeft.Part spars = new HoursLeft.Part("Spars", BigFraction.ZERO, HoursLeft.Basis.FINISHED);
    HoursLeft.Part oars = new HoursLeft.Part("Oars", BigFraction.ONE, HoursLeft.Basis.PLAN);
    assertEquals(
        Optional.of("Finished: Stem, keelson; Spars."),
        ForecastWords.finished(new HoursLeft(List.of(stem, oars, spars), List.of())));
    assertEquals(Optional.empty(), ForecastWords.finished(new HoursLeft(List.of(oars), List.of())));
  }

  @Test
  void hoursLeftAreToldInQuartersRoundedUp() {
    HoursLeft.Part part =
        new HoursLeft.Part("Spars", BigFraction.of(9 * 3600 + 1), HoursLeft.Basis.PLAN);
    assertEquals("9¼", ForecastWords.hours(part));
  }

  @Test
  void hoursLeftUnknownSayWhy() {
    Figure<LocalDate> none = Figure.unknown("no phase has planned hours");
    Forecast forecast =
        new Forecast(
            TODAY,
            Figure.unknown("no phase has planned hours"),
            new WeeksWorked(List.of()),
            List.of(),
            none,
            none,
            none);
    assertEquals(
        "How many hours are left is unknown: no phase has planned hours",
        ForecastWords.left(forecast));
    assertEquals(List.of("No date: no phase has planned hours."), ForecastWords.dates(forecast));
  }

  @Test
  void datesHaveTheirOdds() throws Exception {
    Forecast forecast = Skiff.ahead(folder, Wish.NONE).forecast();
    assertEquals(
        List.of(
            "Even odds by Sunday 10 May 2026.",
            "Four in five by Sunday 17 May 2026.",
            "Nineteen in twenty by Sunday 17 May 2026."),
        ForecastWords.dates(forecast));
    assertEquals(
        "Drawn 10,000 times from the last 2 whole weeks, idle ones among them; a guess from the"
            + " past, and no promise.",
        ForecastWords.drawn(forecast));
  }

  /** A single week is no idle one: it would be no pace. */
  @Test
  void ofOneWeekNoneIsIdle() throws Exception {
    Forecast forecast = Skiff.at("2026-03-10T22:00", Skiff.journal(folder), Wish.NONE).forecast();
    assertEquals(
        "Drawn 10,000 times from the last 1 whole week; a guess from the past, and no promise.",
        ForecastWords.drawn(forecast));
  }

  @Test
  void aDateTooFarOffIsNone() {
    Figure<LocalDate> far = Figure.unknown(Forecast.TOO_FAR);
    Forecast forecast =
        new Forecast(
            TODAY,
            Figure.of(Hours.ofMinutes(60)),
            new WeeksWorked(List.of()),
            List.of(new Away(TODAY, TODAY.plusDays(9), Optional.empty())),
            Figure.of(LocalDate.of(2120, 1, 7)),
            far,
            far);
    assertEquals(
        List.of(
            "Even odds by Sunday 7 January 2120.",
            "Four in five by no date, it takes more than 100 years.",
            "Nineteen in twenty by no date, it takes more than 100 years."),
        ForecastWords.dates(forecast));
    assertEquals(
        "Drawn 10,000 times from the last 0 whole weeks, days away left out;"
            + " a guess from the past, and no promise.",
        ForecastWords.drawn(forecast));
  }

  @Test
  void whatIsLeftOutIsNamed() {
    assertEquals(
        Optional.of("Left out, as no hours are planned for them: Rigging and cleats."),
        ForecastWords.leftOut(new HoursLeft(List.of(), List.of("Rigging", "cleats"))));
    assertEquals(Optional.empty(), ForecastWords.leftOut(new HoursLeft(List.of(), List.of())));
  }

  private static List<ColdMonth> cold(String adhesive, String... months) {
    List<ColdMonth> cold = new ArrayList<>();
    for (String month : months) {
      cold.add(new ColdMonth(YearMonth.parse(month), List.of(adhesive)));
    }
    return cold;
  }

  @Test
  void coldMonthsInARowAreOneSpell() {
    assertEquals(
        List.of(
            "Too cold in the shop for epoxy: December 2026 to February 2027 and November 2027."),
        ForecastWords.cold(cold("epoxy", "2026-12", "2027-01", "2027-02", "2027-11")));
    assertEquals(List.of(), ForecastWords.cold(List.of()));
  }

  @Test
  void adhesivesOfTheSameMonthsAreSaidTogether() {
    List<ColdMonth> cold =
        List.of(
            new ColdMonth(YearMonth.of(2026, 12), List.of("epoxy", "resorcinol", "hide glue")),
            new ColdMonth(YearMonth.of(2027, 1), List.of("epoxy", "resorcinol")));
    assertEquals(
        List.of(
            "Too cold in the shop for epoxy and resorcinol: December 2026 to January 2027.",
            "Too cold in the shop for hide glue: December 2026."),
        ForecastWords.cold(cold));
  }

  @Test
  void wintersBeyondTheFourthAreCounted() {
    assertEquals(
        List.of(
            "Too cold in the shop for epoxy: January 2027, January 2028, January 2029 and January"
                + " 2030."),
        ForecastWords.cold(cold("epoxy", "2027-01", "2028-01", "2029-01", "2030-01")));
    assertEquals(
        List.of(
            "Too cold in the shop for epoxy: January 2027, January 2028, January 2029, January"
                + " 2030 and 2 more."),
        ForecastWords.cold(
            cold("epoxy", "2027-01", "2028-01", "2029-01", "2030-01", "2031-01", "2032-01")));
  }

  @Test
  void eachBasisIsSaid() {
    assertEquals("nothing is left", ForecastWords.how(HoursLeft.Basis.FINISHED));
    assertEquals(
        "the planned hours are used up; note complete to tell how far it is",
        ForecastWords.how(HoursLeft.Basis.USED_UP));
    assertEquals("the pieces left, at their own rate", ForecastWords.how(HoursLeft.Basis.PIECES));
    assertEquals(
        "the plan's share still open, at the rate so far", ForecastWords.how(HoursLeft.Basis.RATE));
    assertEquals(
        "the plan's share still open, as there is no rate yet",
        ForecastWords.how(HoursLeft.Basis.PLAN));
  }
}
