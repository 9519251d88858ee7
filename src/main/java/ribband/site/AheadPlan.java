package ribband.site;

import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;
import ribband.measure.Hours;
import ribband.measure.Saying;
import ribband.plan.Complete;
import ribband.plan.EarnedValue;
import ribband.plan.PhaseStanding;
import ribband.plan.Standing;
import ribband.plan.StandingWords;

/** Plan against actual as the page of what is ahead shows it. */
final class AheadPlan {
  /** The signs of earned value; the words beside them are for a builder. */
  static final List<Sign> SIGNS =
      List.of(
          new Sign("EV", "earned value: what is done, in planned hours"),
          new Sign("AC", "actual cost: the hours worked"),
          new Sign("CV", "cost variance, EV − AC: below zero it took more than planned"),
          new Sign(
              "CPI", "cost performance index, EV ÷ AC: planned hours earned by an hour worked"),
          new Sign("EAC", "estimate at completion, AC + (BAC − EV) ÷ CPI: all of it, at this rate"),
          new Sign("ETC", "estimate to complete, EAC − AC: what is left, at this rate"),
          new Sign("VAC", "variance at completion, BAC − EAC, BAC being the planned hours"),
          new Sign(
              "TCPI",
              "to-complete performance index, (BAC − EV) ÷ (BAC − AC): the rate that would still"
                  + " end on plan"));

  private final Book book;
  private final Standing standing;

  AheadPlan(Book book, Standing standing) {
    this.book = book;
    this.standing = standing;
  }

  /** A sign and what it means. */
  record Sign(String sign, String words) {}

  /**
   * A phase, or all of them.
   *
   * @param href its page; empty for the whole
   * @param planned a dash where nothing is
   * @param from what tells how much is complete
   */
  record Line(
      String title,
      String href,
      String planned,
      String worked,
      String complete,
      String from,
      String costPlanned,
      String cost) {}

  /** A phase's figures, in the order of the signs. */
  record Values(String title, List<String> figures) {}

  List<Line> lines() {
    List<Line> lines = new ArrayList<>();
    standing.phases().stream().filter(AheadPlan::isTold).map(this::line).forEach(lines::add);
    standing.whole().ifPresent(whole -> lines.add(line(whole)));
    return lines;
  }

  private static boolean isTold(PhaseStanding phase) {
    return phase.planned().isPresent() || !phase.hours().isZero();
  }

  private Line line(PhaseStanding phase) {
    return new Line(
        phase.phase().title(),
        Addresses.href(Addresses.AHEAD, Addresses.phase(phase.phase().id())),
        phase.planned().map(Saying::hoursInColumn).orElse("–"),
        Saying.hoursInColumn(phase.hours()),
        phase.complete().share().map(StandingWords::share).orElse("–"),
        from(phase.complete()),
        book.showsMoney() ? phase.phase().cost().map(book.words()::money).orElse("–") : "",
        book.showsMoney() ? book.words().moneyOrDash(phase.cost()) : "");
  }

  private Line line(EarnedValue whole) {
    return new Line(
        "All with planned hours",
        "",
        Saying.hoursInColumn(whole.bac()),
        Saying.hoursInColumn(whole.ac()),
        StandingWords.share(whole.complete()),
        standing.assumed().isEmpty() ? "" : "partly assumed",
        book.showsMoney() ? standing.costPlanned().map(book.words()::money).orElse("–") : "",
        book.showsMoney()
            ? standing.costPlanned().map(p -> book.words().money(standing.costInPlan())).orElse("–")
            : "");
  }

  private static String from(Complete complete) {
    return switch (complete.basis()) {
      case PIECES -> "pieces";
      case NOTED -> "as noted";
      case ASSUMED -> "assumed, by hours";
      case UNKNOWN -> "–";
    };
  }

  List<Values> values() {
    List<Values> values = new ArrayList<>();
    standing
        .phases()
        .forEach(
            phase -> phase.earned().ifPresent(e -> values.add(values(phase.phase().title(), e))));
    standing.whole().ifPresent(whole -> values.add(values("All with planned hours", whole)));
    return values;
  }

  private static Values values(String title, EarnedValue earned) {
    return new Values(
        title,
        List.of(
            hours(earned.ev()),
            Saying.hoursInColumn(earned.ac()),
            hours(earned.cv()),
            StandingWords.index(earned.cpi()),
            hours(earned.eac()),
            hours(earned.etc()),
            hours(earned.vac()),
            StandingWords.index(earned.tcpi())));
  }

  private static String hours(Optional<BigFraction> seconds) {
    return seconds.map(AheadPlan::hours).orElse("–");
  }

  /** {@code −12:30}; zero without a sign. */
  static String hours(BigFraction seconds) {
    long whole = seconds.bigDecimalValue(0, RoundingMode.HALF_UP).longValueExact();
    String said = Saying.hoursInColumn(new Hours(Math.abs(whole)));
    return whole <= -30 ? "−" + said : said;
  }

  /** A sentence for each phase begun, and for the whole. */
  List<String> said() {
    List<String> said = new ArrayList<>();
    for (PhaseStanding phase : standing.phases()) {
      if (phase.planned().isPresent() && !phase.hours().isZero()) {
        said.add(phase.phase().title() + ": " + StandingWords.of(phase) + ".");
      }
    }
    if (standing.whole().map(EarnedValue::ac).filter(ac -> !ac.isZero()).isPresent()) {
      said.add("All of it: " + StandingWords.ofWhole(standing) + ".");
    }
    if (!standing.leftOut().isEmpty() && !said.isEmpty()) {
      said.add(
          "Not in the whole, as no hours are planned: "
              + Saying.list(standing.leftOut().stream().map(p -> p.phase().title()).toList())
              + ".");
    }
    return said;
  }
}
