package ribband.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.time.Instant;
import java.time.LocalDateTime;
import java.util.Optional;
import ribband.ahead.Ahead;
import ribband.ahead.AheadList;
import ribband.measure.Saying;
import ribband.problem.OneLine;
import ribband.problem.Paragraph;
import ribband.shop.Caution;

/** Tells what lies ahead to the builder, in lines of at most 80 characters. */
final class AheadText {
  private final Ahead ahead;
  private final Instant now;
  private final PrintWriter out;
  private final PiecesText pieces;
  private final PlanText plan;
  private final JobsText jobs;

  AheadText(Ahead ahead, Instant now, PrintWriter out) {
    this.ahead = ahead;
    this.now = now;
    this.out = out;
    this.pieces = new PiecesText(ahead, out);
    this.plan = new PlanText(ahead, out);
    this.jobs = new JobsText(ahead, out);
  }

  /**
   * Tells it.
   *
   * @param list one part alone; empty for all
   */
  void tell(Optional<AheadList> list) throws IOException {
    LocalDateTime moment = LocalDateTime.ofInstant(now, ahead.zone());
    out.println(
        OneLine.of(ahead.journal().project().name())
            + ", what lies ahead on "
            + Saying.day(ahead.asOf())
            + " at "
            + Saying.clock(moment.toLocalTime()));
    out.println();
    if (list.isPresent()) {
      tell(list.get());
      return;
    }
    jobs.list(ahead.jobs());
    jobs.chain(ahead.chain());
    ahead.evening().ifPresent(jobs::evening);
    pieces.pieces();
    pieces.changes();
    plan.plan(PlanText.Signs.LEFT_OUT);
    plan.forecast();
    cautions();
  }

  private void tell(AheadList list) throws IOException {
    switch (list) {
      case JOBS -> {
        jobs.list(ahead.jobs());
        jobs.chain(ahead.chain());
        ahead.evening().ifPresent(jobs::evening);
      }
      case PIECES -> {
        pieces.noPieces();
        pieces.pieces();
      }
      case NIGHTS -> {
        pieces.noPieces();
        pieces.limits();
        pieces.changes();
      }
      case PLAN -> {
        plan.plan(PlanText.Signs.SHOWN);
        plan.planTable();
      }
      case LEFT -> plan.left();
      case FORECAST -> {
        pieces.changes();
        plan.forecast();
      }
    }
    cautions();
  }

  private void cautions() {
    if (ahead.nightly().values().stream().anyMatch(kind -> kind.resin().isPresent())) {
      out.print(Paragraph.of("", 0, Caution.RESIN.words()));
    }
    out.print(Paragraph.of("", 0, Caution.GOVERNS));
  }
}
