package ribband.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.time.Instant;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import ribband.ahead.Ahead;
import ribband.ahead.AheadList;
import ribband.ahead.Changes;
import ribband.ahead.ForecastWords;
import ribband.ahead.PieceWords;
import ribband.ahead.PlanSheet;
import ribband.jobs.JobWords;
import ribband.jobs.NotedJob;
import ribband.measure.Name;
import ribband.measure.Saying;
import ribband.measure.ShopTalk;
import ribband.nights.HeldClamps;
import ribband.nights.NightWords;
import ribband.nights.Nightly;
import ribband.pieces.PieceCount;
import ribband.plan.EarnedValue;
import ribband.plan.HoursLeft;
import ribband.plan.PhaseStanding;
import ribband.plan.StandingWords;
import ribband.problem.OneLine;
import ribband.problem.Paragraph;
import ribband.shop.Caution;

/** Tells what lies ahead to the builder, in lines of at most 80 characters. */
final class AheadText {
  private final Ahead ahead;
  private final Instant now;
  private final PrintWriter out;
  private final NightWords nights;
  private final JobsText jobs;

  AheadText(Ahead ahead, Instant now, PrintWriter out) {
    this.ahead = ahead;
    this.now = now;
    this.out = out;
    this.nights = new NightWords(new ShopTalk(ahead.journal().project().units()), ahead.zone());
    this.jobs =
        new JobsText(
            new JobWords(ahead.jobs(), NotedJob::id, id -> id, ahead.pieces(), ahead.zone()), out);
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
    pieces();
    changes();
    plan();
    forecast();
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
        noPieces();
        pieces();
      }
      case NIGHTS -> {
        noPieces();
        limits();
        changes();
      }
      case PLAN -> {
        plan();
        planTable();
      }
      case LEFT -> left();
      case FORECAST -> {
        changes();
        forecast();
      }
    }
    cautions();
  }

  private void noPieces() {
    if (ahead.pieces().isEmpty()) {
      out.println("No piece is counted; list kinds in project.yaml, as");
      out.println("  pieces: {strakes: {total: 16}}");
      out.println();
    }
  }

  private void planTable() throws IOException {
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

  private void pieces() {
    if (ahead.pieces().isEmpty()) {
      return;
    }
    out.println("Pieces");
    for (PieceCount count : ahead.pieces().values()) {
      String name = count.kind().name();
      sentence(name + ": " + PieceWords.count(count));
      detail(PieceWords.rate(count));
      detail(PieceWords.pace(count, ahead.asOf()));
      Optional.ofNullable(ahead.nightly().get(Name.fold(name)))
          .ifPresent(kind -> detail(nights.binding(kind)));
    }
    out.println();
  }

  private void limits() {
    if (ahead.pieces().isEmpty()) {
      return;
    }
    out.println(
        ahead.nightly().isEmpty() ? "No pieces are left to make." : "What a night can bring");
    for (Nightly kind : ahead.nightly().values()) {
      sentence(
          kind.count().kind().name()
              + ": "
              + kind.nightsLeft()
                  .value()
                  .map(left -> Saying.counted(left, "night", "nights") + " left at best")
                  .orElse("nights left unknown: " + kind.nightsLeft().why())
              + ", tonight "
              + Saying.counted(kind.tonight(), "piece", "pieces")
              + kind.binding()
                  .map(limit -> "; " + limit.word() + (limit.isPlural() ? " bind" : " binds"))
                  .orElse(""));
      nights.limits(kind).forEach(this::detail);
    }
    ahead.nightly().values().stream()
        .findFirst()
        .map(Nightly::held)
        .map(HeldClamps::lots)
        .filter(lots -> !lots.isEmpty())
        .ifPresent(
            lots -> {
              sentence("clamps still on");
              nights.held(new HeldClamps(lots)).forEach(this::detail);
            });
    out.println();
  }

  private void changes() {
    if (ahead.changes().isEmpty()) {
      return;
    }
    Changes changes = ahead.changes().get();
    out.println("With " + wished(changes));
    for (Changes.Kind kind : changes.kinds()) {
      sentence(kind.whatIf().now().count().kind().name() + ": " + nights.whatIf(kind.whatIf()));
      detail(dates(kind));
    }
    changes
        .launch()
        .ifPresent(
            launch ->
                sentence(
                    "the boat, every night so long: "
                        + launch
                            .p50()
                            .value()
                            .map(day -> "even odds by " + Saying.day(day))
                            .orElse(launch.p50().why())
                        + ahead
                            .forecast()
                            .p50()
                            .value()
                            .map(day -> " instead of " + Saying.day(day))
                            .orElse("")));
    if (changes.launch().isEmpty()) {
      sentence("the boat: her date goes by hours, which clamps do not change");
    }
    out.println();
  }

  private static String wished(Changes changes) {
    List<String> parts = new ArrayList<>();
    changes
        .wish()
        .evening()
        .ifPresent(hours -> parts.add("evenings of " + Saying.hoursInWords(hours)));
    if (changes.wish().clamps().isPresent()) {
      parts.add(Saying.counted(changes.wish().clamps().getAsInt(), "clamp", "clamps"));
    }
    return String.join(" and ", parts);
  }

  private static String dates(Changes.Kind kind) {
    return kind.after()
        .value()
        .map(
            after ->
                "every night theirs, even odds by "
                    + Saying.day(after)
                    + kind.before()
                        .value()
                        .map(
                            before ->
                                before.equals(after)
                                    ? " as before"
                                    : " instead of " + Saying.day(before))
                        .orElse(""))
        .orElse("");
  }

  private void plan() {
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
      phase.earned().map(AheadText::indices).ifPresent(this::detail);
    }
    ahead
        .standing()
        .whole()
        .ifPresent(
            whole -> {
              sentence("all with a plan: " + StandingWords.ofWhole("the boat", ahead.standing()));
              detail(indices(whole));
            });
    out.println();
  }

  private static String indices(EarnedValue earned) {
    return "EV "
        + StandingWords.hours(earned.ev())
        + ", AC "
        + Saying.hours(earned.ac())
        + ", CV "
        + StandingWords.hours(earned.cv())
        + ", CPI "
        + StandingWords.index(earned.cpi())
        + ", EAC "
        + earned.eac().map(StandingWords::hours).orElse("–")
        + ", ETC "
        + earned.etc().map(StandingWords::hours).orElse("–")
        + ", VAC "
        + earned.vac().map(StandingWords::hours).orElse("–")
        + ", TCPI "
        + StandingWords.index(earned.tcpi());
  }

  private void left() {
    out.println("Hours left");
    for (HoursLeft.Part part : ahead.left().parts()) {
      sentence(
          part.name()
              + ": "
              + StandingWords.hours(part.seconds())
              + " hours, "
              + ForecastWords.how(part.basis()));
    }
    ForecastWords.leftOut(ahead.left()).ifPresent(this::sentence);
    if (ahead.left().parts().isEmpty()) {
      noPlan();
    }
    out.println();
  }

  private void forecast() {
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
    ForecastWords.usedUp(ahead.left()).ifPresent(this::sentence);
    ForecastWords.leftOut(ahead.left()).ifPresent(this::sentence);
    out.println();
  }

  private void cautions() {
    if (ahead.nightly().values().stream().anyMatch(kind -> kind.resin().isPresent())) {
      out.print(Paragraph.of("", 0, Caution.RESIN.words()));
    }
    out.print(Paragraph.of("", 0, Caution.GOVERNS));
  }

  private void detail(String words) {
    if (!words.isEmpty()) {
      out.print(Paragraph.of("    ", 6, words));
    }
  }

  private void sentence(String words) {
    out.print(Paragraph.of("  ", 4, words));
  }
}
