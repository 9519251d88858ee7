package ribband.recap;

import java.time.YearMonth;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import ribband.journal.Journal;
import ribband.ledger.Ledger;
import ribband.ledger.Row;
import ribband.measure.Hours;
import ribband.measure.Money;
import ribband.measure.SaidMoney;
import ribband.measure.Saying;

/** Says a month as a builder would say it aloud. */
public final class MonthSentence {
  private final Journal journal;
  private final Ledger ledger;
  private final SaidMoney words;
  private final RankWords<YearMonth> ranks;

  public MonthSentence(Journal journal, Ledger ledger, SaidMoney words) {
    this.journal = journal;
    this.ledger = ledger;
    this.words = words;
    this.ranks = new RankWords<>(ledger.months(), "month", MonthSentence::names);
  }

  /** Hours, rank, money, where they went and where that leaves her. */
  public String of(Row<YearMonth> month) {
    Figures figures = Figures.of(month);
    String went = whereItWent(month, figures);
    return worked(month, figures)
        + (went.isEmpty() ? "; " : ": " + went + ", and ")
        + standing(month, figures)
        + ".";
  }

  private String worked(Row<YearMonth> month, Figures figures) {
    String name = Saying.month(month.period());
    String money = words.moved(month.cost()).map(moved -> ", and " + moved).orElse("");
    if (month.hours().isZero()) {
      return "No work on the boat in " + name + money;
    }
    return figures.inWords(month.hours())
        + " in "
        + name
        + ", over "
        + Saying.counted(month.nights(), "night", "nights")
        + ", "
        + rank(month)
        + money;
  }

  /** How the month ranks by hours, and which months beat it. */
  public String rank(Row<YearMonth> month) {
    return ranks.of(month);
  }

  /** The same in the fewest words. */
  public String briefRank(Row<YearMonth> month) {
    return ranks.brief(month);
  }

  /** Where all are of the same year as the one told of, they go without it. */
  static List<String> names(List<YearMonth> months, YearMonth told) {
    boolean sameYear = months.stream().allMatch(m -> m.getYear() == told.getYear());
    return months.stream().map(m -> sameYear ? Saying.monthName(m) : Saying.month(m)).toList();
  }

  private String whereItWent(Row<YearMonth> month, Figures figures) {
    List<String> phases = new ArrayList<>();
    for (String id : ledger.mostFirst(month)) {
      Hours hours = month.sums().hoursOf(id);
      Hours stands = month.toDate().hoursOf(id);
      String worked = figures.of(hours);
      phases.add(
          stands.equals(hours)
              ? journal.phaseTitle(id) + " took its first " + worked
              : journal.phaseTitle(id)
                  + " took "
                  + worked
                  + " and now stands at "
                  + figures.of(stands));
    }
    return String.join("; ", phases);
  }

  private String standing(Row<YearMonth> month, Figures figures) {
    Money cost = month.costToDate();
    String money = words.shown() && !cost.isZero() ? " and " + words.money(cost) : "";
    return "the whole boat stands at " + figures.inWords(month.hoursToDate()) + money;
  }

  /**
   * How a sentence writes hours: all in quarters where that says each of them, else all to the
   * minute.
   */
  private enum Figures {
    QUARTERS,
    MINUTES;

    static Figures of(Row<YearMonth> month) {
      return Stream.of(
                  Stream.of(month.hours(), month.hoursToDate()),
                  month.sums().hours().entrySet().stream()
                      .filter(phase -> !phase.getValue().isZero())
                      .flatMap(
                          phase ->
                              Stream.of(phase.getValue(), month.toDate().hoursOf(phase.getKey()))))
              .flatMap(hours -> hours)
              .allMatch(Saying::isInQuarters)
          ? QUARTERS
          : MINUTES;
    }

    String of(Hours hours) {
      return this == QUARTERS ? Saying.hours(hours) : Saying.hoursInColumn(hours);
    }

    String inWords(Hours hours) {
      return hours.seconds() < 3600
          ? Saying.hoursInWords(hours)
          : of(hours) + " " + Saying.hourOrHours(hours);
    }
  }
}
