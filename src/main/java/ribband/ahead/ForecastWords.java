package ribband.ahead;

import java.time.LocalDate;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import ribband.measure.Hours;
import ribband.measure.Saying;
import ribband.plan.ColdMonths.ColdMonth;
import ribband.plan.Forecast;
import ribband.plan.HoursLeft;
import ribband.plan.Standing;
import ribband.plan.StandingWords;
import ribband.shop.Figure;

/** Says a forecast to a person: dates with their odds, never one date alone. */
public final class ForecastWords {
  private static final int MOST_SPELLS = 4;
  private static final long QUARTER = 900;

  private ForecastWords() {}

  /**
   * {@code 212 hours are left, by the plan and the pace so far}; why not, where that is unknown.
   */
  public static String left(Forecast forecast) {
    return forecast
        .left()
        .value()
        .map(
            left ->
                Saying.hoursInWords(rounded(left))
                    + (Saying.hourOrHours(rounded(left)).equals("hour") ? " is" : " are")
                    + " left")
        .orElse("How many hours are left is unknown: " + forecast.left().why());
  }

  /**
   * {@code 212 hours are left, with even odds of being done by 14 March 2027}; empty where the
   * hours are unknown.
   */
  public static Optional<String> inShort(Forecast forecast) {
    return forecast
        .left()
        .value()
        .map(
            hours ->
                left(forecast)
                    + forecast
                        .p50()
                        .value()
                        .map(day -> ", with even odds of being done by " + Saying.day(day))
                        .orElse(""));
  }

  /** In quarters of an hour, rounded up: nobody knows to the minute what is not yet done. */
  public static Hours rounded(Hours left) {
    return new Hours((left.seconds() + QUARTER - 1) / QUARTER * QUARTER);
  }

  /** {@code 9¼}: the hours left of a part, in quarters too. */
  public static String hours(HoursLeft.Part part) {
    return Saying.hours(rounded(part.hours()));
  }

  /** The Sundays with their odds, or why there is none; a sentence each. */
  public static List<String> dates(Forecast forecast) {
    if (forecast.p50().value().isEmpty()) {
      return List.of("No date: " + forecast.p50().why() + ".");
    }
    return List.of(
        "Even odds by " + date(forecast.p50()) + ".",
        "Four in five by " + date(forecast.p80()) + ".",
        "Nineteen in twenty by " + date(forecast.p95()) + ".");
  }

  private static String date(Figure<LocalDate> sunday) {
    return sunday.value().map(Saying::dayInFull).orElse("no date, it takes " + sunday.why());
  }

  /** What it was drawn from. */
  public static String drawn(Forecast forecast) {
    int weeks = forecast.past().weeks().size();
    String idle = weeks > 1 ? ", idle ones among them" : "";
    return "Drawn "
        + Saying.count(Forecast.DRAWS)
        + " times from the last "
        + Saying.counted(weeks, "whole week", "whole weeks")
        + idle
        + (forecast.away().isEmpty() ? "" : ", days away left out")
        + "; a guess from the past, and no promise.";
  }

  /** Why plan against actual comes to other hours; empty where it comes to the same. */
  public static Optional<String> otherEstimate(HoursLeft left, Standing standing) {
    Optional<Hours> here = left.total().value().map(ForecastWords::rounded);
    return StandingWords.leftAtOneRate(standing)
        .map(ForecastWords::rounded)
        .filter(there -> here.isPresent() && !here.get().equals(there))
        .map(
            there ->
                "Plan against actual comes to other hours, as it takes one rate for the whole of a"
                    + " phase and one for all of them; here pieces left go at their own rate, and"
                    + " each phase at its own.");
  }

  /** Phases that only their hours tell of, and whose hours are used up; empty where none. */
  public static Optional<String> usedUp(HoursLeft left) {
    List<String> phases =
        left.parts().stream()
            .filter(part -> part.basis() == HoursLeft.Basis.USED_UP)
            .map(HoursLeft.Part::name)
            .toList();
    return phases.isEmpty()
        ? Optional.empty()
        : Optional.of(
            "Taken for done, as the planned hours are used up: "
                + list(phases)
                + "; note complete to tell how far that is.");
  }

  /** The phases that nothing is left of; empty where none. */
  public static Optional<String> finished(HoursLeft left) {
    List<String> phases =
        left.parts().stream()
            .filter(part -> part.basis() == HoursLeft.Basis.FINISHED)
            .map(HoursLeft.Part::name)
            .toList();
    return phases.isEmpty() ? Optional.empty() : Optional.of("Finished: " + list(phases) + ".");
  }

  /** Titles may hold commas of their own. */
  private static String list(List<String> titles) {
    return titles.stream().anyMatch(title -> title.contains(","))
        ? String.join("; ", titles)
        : Saying.list(titles);
  }

  /** What the hours leave out; empty where nothing. */
  public static Optional<String> leftOut(HoursLeft left) {
    return left.leftOut().isEmpty()
        ? Optional.empty()
        : Optional.of("Left out, as no hours are planned for them: " + list(left.leftOut()) + ".");
  }

  /** {@code Too cold in the shop for epoxy: December 2026 to February 2027.}, a sentence each. */
  public static List<String> cold(List<ColdMonth> months) {
    Map<String, List<YearMonth>> byAdhesive = new LinkedHashMap<>();
    for (ColdMonth cold : months) {
      cold.adhesives()
          .forEach(
              adhesive ->
                  byAdhesive
                      .computeIfAbsent(adhesive, none -> new ArrayList<>())
                      .add(cold.month()));
    }
    Map<List<YearMonth>, List<String>> bySpell = new LinkedHashMap<>();
    byAdhesive.forEach(
        (adhesive, cold) -> bySpell.computeIfAbsent(cold, none -> new ArrayList<>()).add(adhesive));
    return bySpell.entrySet().stream()
        .map(
            e ->
                "Too cold in the shop for "
                    + Saying.list(e.getValue())
                    + ": "
                    + spells(e.getKey())
                    + ".")
        .toList();
  }

  private static String spells(List<YearMonth> months) {
    List<String> spells = new ArrayList<>();
    int start = 0;
    for (int i = 1; i <= months.size(); i++) {
      if (i == months.size() || !months.get(i - 1).plusMonths(1).equals(months.get(i))) {
        String first = Saying.month(months.get(start));
        String last = Saying.month(months.get(i - 1));
        spells.add(first.equals(last) ? first : first + " to " + last);
        start = i;
      }
    }
    // A forecast of decades has a winter each year.
    int more = spells.size() - MOST_SPELLS;
    return more <= 0
        ? Saying.list(spells)
        : String.join(", ", spells.subList(0, MOST_SPELLS))
            + " and "
            + Saying.count(more)
            + " more";
  }

  /** How the hours left of a part were reckoned. */
  public static String how(HoursLeft.Basis basis) {
    return switch (basis) {
      case FINISHED -> "nothing is left";
      case USED_UP -> "the planned hours are used up; note complete to tell how far it is";
      case PIECES -> "the pieces left, at their own rate";
      case RATE -> "the plan's share still open, at the rate so far";
      case PLAN -> "the plan's share still open, as there is no rate yet";
    };
  }
}
