package ribband.site;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import ribband.album.Leaf;
import ribband.chart.Chart;
import ribband.chart.MonthRows;
import ribband.journal.Entry;
import ribband.journal.Phase;
import ribband.ledger.PhaseRow;
import ribband.ledger.Row;
import ribband.measure.Hours;
import ribband.measure.Money;
import ribband.measure.Saying;
import ribband.plan.PhaseStanding;
import ribband.plan.StandingWords;

/** One phase: plan beside actual, and where its hours went, night by night. */
final class PhasePage {
  private final Book book;
  private final LessonsPage lessons;
  private final EntryNames names;

  PhasePage(Book book) {
    this.book = book;
    this.lessons = new LessonsPage(book);
    this.names = new EntryNames(book.album());
  }

  /**
   * What the template shows.
   *
   * @param plan what the plan says against it, in words; empty without a plan
   * @param nights the audit, oldest first; its hours add up to the phase's
   * @param lessons where they stand; none where there are none
   */
  record View(
      String title,
      String sentence,
      String hours,
      String hoursPlanned,
      String cost,
      String costPlanned,
      boolean showsMoney,
      List<Chart<MonthRows>> chart,
      List<Audit> nights,
      String total,
      String totalCost,
      List<Link> links,
      List<Prints.View> prints) {}

  /** A link in words. */
  record Link(String words, String href) {}

  /**
   * A line of the audit.
   *
   * @param href empty where there is no page to lead to
   * @param date for machines; empty where it is no single day that may be told
   * @param turns whether the line before is of another month
   */
  record Audit(
      String date,
      String day,
      String title,
      String href,
      String hours,
      String running,
      String cost,
      boolean turns) {}

  View view(PhaseRow row, List<Leaf> leaves) {
    String page = Addresses.phase(row.phase().id());
    Phase phase = row.phase();
    List<Leaf> inPhase = leaves(phase, leaves);
    return new View(
        phase.title(),
        sentence(row),
        Saying.hoursInColumn(row.hours()),
        phase.hours().map(Saying::hoursInColumn).orElse(""),
        book.words().moneyOrDash(row.cost()),
        phase.cost().map(book.words()::money).orElse(""),
        book.showsMoney(),
        new HoursCharts(book).phaseMonths(row),
        audit(phase.id(), page),
        Saying.hoursInColumn(row.hours()),
        book.words().money(row.cost()),
        Stream.concat(standingInWords(phase, page), lessons(phase, page).stream()).toList(),
        new Prints(page).gallery(inPhase, true));
  }

  /** How it stands against its plan, once it is begun. */
  private Stream<Link> standingInWords(Phase phase, String page) {
    return standing(phase).stream()
        .filter(standing -> standing.planned().isPresent() && !standing.hours().isZero())
        .map(
            standing ->
                new Link(
                    Saying.capitalised(StandingWords.of(standing)),
                    Addresses.href(page, Addresses.AHEAD + "#plan")));
  }

  private Optional<PhaseStanding> standing(Phase phase) {
    return book.ahead().stream()
        .flatMap(ahead -> ahead.standing().phases().stream())
        .filter(standing -> standing.phase().id().equals(phase.id()))
        .findFirst();
  }

  private List<Link> lessons(Phase phase, String page) {
    int count = lessons.count(phase.id());
    return count == 0
        ? List.of()
        : List.of(
            new Link(
                Saying.counted(count, "lesson", "lessons") + " learned in this phase",
                Addresses.href(page, Addresses.lessons(phase.id()))));
  }

  /** Those of the leaves that are of a phase. */
  static List<Leaf> leaves(Phase phase, List<Leaf> leaves) {
    return leaves.stream().filter(leaf -> leaf.entry().phases().contains(phase.id())).toList();
  }

  private String sentence(PhaseRow row) {
    List<String> parts = new ArrayList<>();
    Hours whole = book.ledger().whole().totalHours();
    Optional<PhaseStanding> done = standing(row.phase()).filter(PhaseStanding::isDone);
    parts.add(
        row.phase().title()
            + (done.isPresent() ? " took " : " has taken ")
            + Saying.hoursInWords(row.hours())
            + " in "
            + Saying.counted(row.sessions(), "session", "sessions")
            + ", "
            + Saying.share(row.hours().seconds(), whole.seconds())
            + " of all hours.");
    Ended ended = done.isPresent() ? Ended.YES : Ended.NOT_YET;
    row.phase().hours().ifPresent(plan -> parts.add(againstPlan(row.hours(), plan, ended)));
    return String.join(" ", parts);
  }

  /** Whether a phase is done; hours of a plan are left only where it is not. */
  private enum Ended {
    YES,
    NOT_YET
  }

  private static String againstPlan(Hours actual, Hours plan, Ended ended) {
    Hours gap = new Hours(Math.abs(actual.seconds() - plan.seconds()));
    String planned = " the " + Saying.hoursInWords(plan) + " planned";
    // Less than is ever said.
    if (gap.seconds() < 30) {
      return ended == Ended.YES ? "It is done, to plan." : "That is the plan to the minute.";
    }
    boolean isOver = actual.compareTo(plan) > 0;
    return switch (ended) {
      case YES ->
          "It is done, " + Saying.hours(gap) + (isOver ? " over" : " under") + planned + ".";
      case NOT_YET ->
          isOver
              ? "That is " + Saying.hours(gap) + " over" + planned + "."
              : Saying.hours(gap) + " of" + planned + " are left.";
    };
  }

  private List<Audit> audit(String phase, String page) {
    List<Audit> lines = new ArrayList<>();
    MonthTurn month = new MonthTurn();
    Hours running = book.ledger().carried().hoursOf(phase);
    Money carried = book.ledger().carried().costOf(phase);
    if (!running.isZero() || !carried.isZero() && book.showsMoney()) {
      lines.add(
          new Audit(
              "",
              "Before",
              "Carried in from before this journal",
              "",
              Saying.hoursInColumn(running),
              Saying.hoursInColumn(running),
              book.words().moneyOrDash(carried),
              month.at(Optional.empty())));
    }
    for (Row<Entry> row : book.ledger().entries()) {
      Hours hours = row.sums().hoursOf(phase);
      Money cost = row.sums().costOf(phase);
      Entry entry = row.period();
      boolean showsCost = !cost.isZero() && book.showsMoney();
      if (!entry.isPublic() || hours.isZero() && !showsCost) {
        continue;
      }
      running = running.plus(hours);
      lines.add(
          new Audit(
              entry.date().toString(),
              Saying.day(entry.date()),
              names.of(entry),
              Addresses.href(page, Addresses.entry(entry)),
              hours.isZero() ? "–" : Saying.hoursInColumn(hours),
              Saying.hoursInColumn(running),
              book.words().moneyOrDash(cost),
              month.at(Optional.of(entry.date()))));
    }
    notShown(phase, running).ifPresent(lines::add);
    return lines;
  }

  /** Private nights as one line without a day, so that the hours add up. */
  private Optional<Audit> notShown(String phase, Hours shown) {
    List<Row<Entry>> rows =
        book.ledger().entries().stream()
            .filter(row -> !row.period().isPublic())
            .filter(row -> !row.sums().hoursOf(phase).isZero())
            .toList();
    long nights = rows.stream().map(row -> row.period().date()).distinct().count();
    Hours hours = Hours.sum(rows.stream().map(row -> row.sums().hoursOf(phase)).toList());
    return rows.isEmpty()
        ? Optional.empty()
        : Optional.of(
            new Audit(
                "",
                "–",
                "Not shown, " + Saying.counted(nights, "night", "nights"),
                "",
                Saying.hoursInColumn(hours),
                Saying.hoursInColumn(shown.plus(hours)),
                "",
                true));
  }
}
