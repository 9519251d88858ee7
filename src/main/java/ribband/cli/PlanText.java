package ribband.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.util.List;
import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;
import ribband.ahead.Ahead;
import ribband.ahead.ForecastWords;
import ribband.ahead.PlanSheet;
import ribband.measure.Saying;
import ribband.plan.EarnedValue;
import ribband.plan.HoursLeft;
import ribband.plan.PhaseStanding;
import ribband.plan.StandingWords;
import ribband.problem.Paragraph;

/** Tells plan against actual and the forecast to the builder. */
final class PlanText {
  /** Whether earned value is told by its abbreviations, for those who know them. */
  enum Signs {
    SHOWN,
    LEFT_OUT
  }

  private final Ahead ahead;
  private final PrintWriter out;

  PlanText(Ahead ahead, PrintWriter out) {
    this.ahead = ahead;
    this.out = out;
  }

  /** Hours planned and worked, phase by phase. */
  void planTable() throws IOException {
    if (ahead.standing().phases().isEmpty()) {
      noPlan();
    } else {
      SheetTable.write(
          PlanSheet.narrow(ahead.standing(), ahead.journal().project().currency()), out);
    }
    out.println();
  }

  private void noPlan() {
    out.println("No phase has planned hours; write them in project.yaml, as");
    out.println("  phases: [{id: planking, hours: 120}]");
  }

  /**
   * Each phase begun and the whole, in words; nothing where none is planned.
   *
   * @param signs whether the figures of earned value stand below
   */
  void plan(Signs signs) {
    List<PhaseStanding> begun =
        ahead.standing().phases().stream()
            .filter(phase -> phase.planned().isPresent() && !phase.hours().isZero())
            .toList();
    if (begun.isEmpty()) {
      return;
    }
    out.println("Plan against actual");
    for (PhaseStanding phase : begun) {
      sentence(phase.phase().id() + ": " + StandingWords.of(phase));
      // What is done is told by its hours; the signs tell where the rest is bound for.
      phase.earned().filter(e -> signs == Signs.SHOWN && !phase.isDone()).ifPresent(this::signs);
    }
    ahead
        .standing()
        .whole()
        .ifPresent(
            whole -> {
              sentence("all with a plan: " + StandingWords.ofWhole(ahead.standing()));
              if (signs == Signs.SHOWN) {
                signs(whole);
              }
            });
    out.println();
  }

  private void signs(EarnedValue earned) {
    detail(
        "EV "
            + StandingWords.hours(earned.ev())
            + ", AC "
            + Saying.hours(earned.ac())
            + ", CV "
            + StandingWords.hours(earned.cv())
            + ", CPI "
            + StandingWords.index(earned.cpi()));
    detail(
        "EAC "
            + hours(earned.eac())
            + ", ETC "
            + hours(earned.etc())
            + ", VAC "
            + hours(earned.vac())
            + ", TCPI "
            + StandingWords.index(earned.tcpi()));
  }

  private static String hours(Optional<BigFraction> seconds) {
    return seconds.map(StandingWords::hours).orElse("–");
  }

  /** The hours left, phase by phase. */
  void left() {
    if (ahead.left().parts().isEmpty()) {
      ForecastWords.leftOut(ahead.left()).ifPresent(this::sentence);
      noPlan();
    } else {
      out.println("Hours left");
      for (HoursLeft.Part part : ahead.left().parts()) {
        if (part.basis() == HoursLeft.Basis.FINISHED) {
          continue;
        }
        sentence(
            part.name()
                + ": "
                + Saying.hoursInWords(ForecastWords.rounded(part.hours()))
                + ", "
                + ForecastWords.how(part.basis()));
      }
      otherEstimate();
      ForecastWords.finished(ahead.left()).ifPresent(this::sentence);
      ForecastWords.leftOut(ahead.left()).ifPresent(this::sentence);
    }
    out.println();
  }

  /** When she may float. */
  void forecast() {
    out.println("When she floats");
    if (ahead.forecast().left().value().isEmpty()) {
      sentence("No date: " + ahead.forecast().left().why() + ".");
      sentence("Write them in project.yaml, as phases: [{id: planking, hours: 120}]");
      out.println();
      return;
    }
    sentence(ForecastWords.left(ahead.forecast()) + ".");
    ForecastWords.dates(ahead.forecast()).forEach(this::sentence);
    if (ahead.forecast().p50().value().isPresent()) {
      sentence(ForecastWords.drawn(ahead.forecast()));
    }
    ForecastWords.cold(ahead.cold()).forEach(this::sentence);
    otherEstimate();
    ForecastWords.usedUp(ahead.left()).ifPresent(this::sentence);
    ForecastWords.leftOut(ahead.left()).ifPresent(this::sentence);
    out.println();
  }

  private void otherEstimate() {
    ForecastWords.otherEstimate(ahead.left(), ahead.standing()).ifPresent(this::sentence);
  }

  private void detail(String words) {
    out.print(Paragraph.of("    ", 6, words));
  }

  private void sentence(String words) {
    out.print(Paragraph.of("  ", 4, words));
  }
}
