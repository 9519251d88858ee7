package ribband.site;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.OptionalLong;
import java.util.Set;
import ribband.ahead.Ahead;
import ribband.ahead.ForecastWords;
import ribband.ahead.PieceWords;
import ribband.chart.Chart;
import ribband.chart.Fan;
import ribband.chart.WorkOrder;
import ribband.jobs.JobWords;
import ribband.jobs.OpenJob.State;
import ribband.measure.Saying;
import ribband.measure.ShopTalk;
import ribband.nights.NightWords;
import ribband.nights.Nightly;
import ribband.pieces.PieceCount;
import ribband.plan.HoursLeft;
import ribband.shop.Caution;

/** What next, how much is left, and when she floats. */
final class AheadPage {
  private final Book book;
  private final Ahead ahead;
  private final JobWords words;
  private final AheadJobs jobs;
  private final AheadPlan plan;
  private final NightWords nights;

  AheadPage(Book book) {
    this.book = book;
    this.ahead = book.ahead().orElseThrow();
    ShopTalk talk = new ShopTalk(book.journal().project().units());
    this.words =
        new JobWords(ahead.jobs(), AheadJobs::name, book::phaseTitle, ahead.pieces(), ahead.zone());
    this.jobs = new AheadJobs(ahead, words, talk);
    this.plan = new AheadPlan(book, ahead.standing());
    this.nights = new NightWords(talk, ahead.zone());
  }

  /** Whether there is anything to tell. */
  static boolean isOfUse(Ahead ahead) {
    return !ahead.jobs().open().isEmpty()
        || !ahead.jobs().done().isEmpty()
        || !ahead.pieces().isEmpty()
        || ahead.standing().whole().isPresent();
  }

  /**
   * What the template shows.
   *
   * @param forecast sentences; empty where nothing is planned or counted
   * @param jobs whether any is noted
   */
  record View(
      String sentence,
      List<Chart<Fan>> fan,
      List<String> forecast,
      List<LeftLine> left,
      boolean jobs,
      List<AheadJobs.Line> ready,
      List<AheadJobs.Line> held,
      List<AheadJobs.Line> waiting,
      String moreJobs,
      List<Chart<WorkOrder>> order,
      String chainSentence,
      List<String> chain,
      List<PieceLine> pieces,
      List<String> pieceNotes,
      List<AheadPlan.Line> plan,
      List<String> planSaid,
      List<AheadPlan.Values> values,
      List<AheadPlan.Sign> signs,
      boolean money,
      List<String> cautions,
      String governs) {}

  /** The hours left of a phase. */
  record LeftLine(String title, String hours, String how) {}

  /** A kind of pieces. */
  record PieceLine(
      String name,
      String made,
      String left,
      String share,
      String aSession,
      String sessions,
      String nights,
      String each,
      String planned) {}

  View view() {
    boolean planned = ahead.left().total().value().isPresent();
    return new View(
        sentence(),
        FanChart.of(ahead),
        planned ? forecast() : List.of(),
        planned ? left() : List.of(),
        !ahead.jobs().open().isEmpty(),
        jobs.in(State.READY),
        jobs.in(State.HELD),
        jobs.in(State.WAITING),
        jobs.more(),
        jobs.order(),
        Saying.capitalised(Saying.number(ahead.chain().nights()))
            + (ahead.chain().nights() == 1 ? " night" : " nights")
            + " of work that must follow each other, however many evenings are free.",
        ahead.chain().links().stream().map(words::link).map(Saying::capitalised).toList(),
        ahead.pieces().values().stream().map(AheadPage::pieces).toList(),
        pieceNotes(),
        plan.lines(),
        plan.said(),
        plan.values(),
        AheadPlan.SIGNS,
        book.showsMoney(),
        cautions().stream().map(Caution::words).toList(),
        Caution.GOVERNS);
  }

  private String sentence() {
    List<String> parts = new ArrayList<>();
    ForecastWords.inShort(ahead.forecast()).ifPresent(said -> parts.add(said + "."));
    int open = ahead.jobs().open().size();
    int ready = ahead.jobs().in(State.READY).size();
    if (open == 1) {
      parts.add(ready == 1 ? "One job is open and ready." : "One job is open, not yet ready.");
    } else if (open > 1) {
      parts.add(
          Saying.capitalised(Saying.number(open))
              + " jobs are open, "
              + (ready == 0 ? "none" : Saying.number(ready))
              + " of them ready.");
    }
    return parts.isEmpty() ? "Nothing is left that anybody wrote down." : String.join(" ", parts);
  }

  private List<String> forecast() {
    List<String> said = new ArrayList<>();
    if (ahead.forecast().p95().value().isEmpty()) {
      said.addAll(ForecastWords.dates(ahead.forecast()));
    }
    if (ahead.forecast().p50().value().isPresent()) {
      said.add(ForecastWords.drawn(ahead.forecast()));
    }
    said.addAll(ForecastWords.cold(ahead.cold()));
    ForecastWords.otherEstimate(ahead.left(), ahead.standing()).ifPresent(said::add);
    ForecastWords.usedUp(ahead.left()).ifPresent(said::add);
    ForecastWords.leftOut(ahead.left()).ifPresent(said::add);
    return said;
  }

  private List<LeftLine> left() {
    return ahead.left().parts().stream()
        .filter(part -> part.basis() != HoursLeft.Basis.FINISHED)
        .map(
            part ->
                new LeftLine(
                    Saying.capitalised(part.name()),
                    ForecastWords.hours(part),
                    ForecastWords.how(part.basis())))
        .toList();
  }

  private static PieceLine pieces(PieceCount count) {
    return new PieceLine(
        Saying.capitalised(count.kind().name()),
        Saying.count(count.done()) + " of " + Saying.count(count.kind().total()),
        Saying.count(count.left()),
        count.shareInWords(),
        count.sessions().median().map(PieceWords::number).orElse("–"),
        number(count.sessionsLeft()),
        number(count.nightsLeft()),
        count.sessions().secondsEach().map(AheadPlan::hours).orElse("–"),
        count.kind().hours().map(Saying::hoursInColumn).orElse("–"));
  }

  private static String number(OptionalLong number) {
    return number.isEmpty() ? "–" : Saying.count(number.getAsLong());
  }

  private List<String> pieceNotes() {
    List<String> notes = new ArrayList<>();
    for (Nightly kind : ahead.nightly().values()) {
      String name = Saying.capitalised(kind.count().kind().name());
      String rate = PieceWords.rate(kind.count());
      notes.add(
          name + ": " + PieceWords.count(kind.count()) + (rate.isEmpty() ? "" : "; " + rate) + ".");
      notes.add(name + ": " + nights.binding(kind) + ".");
    }
    if (!notes.isEmpty()) {
      notes.add(
          "A session is a night that made some; nights left count those that finished none, too.");
    }
    return notes;
  }

  /** Whoever reads what comes next may be about to do it. */
  private Set<Caution> cautions() {
    boolean glued = ahead.nightly().values().stream().anyMatch(kind -> kind.resin().isPresent());
    return glued ? EnumSet.of(Caution.RESIN, Caution.DUST) : EnumSet.noneOf(Caution.class);
  }
}
