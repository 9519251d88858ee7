package ribband.recap;

import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import ribband.jobs.OpenJob.State;
import ribband.jobs.PunchList;
import ribband.joints.Bonds;
import ribband.journal.Journal;
import ribband.ledger.Ledger;
import ribband.measure.Name;
import ribband.measure.Saying;
import ribband.pieces.PieceCount;
import ribband.plan.PhaseStanding;
import ribband.plan.Standing;
import ribband.stock.Stock.Told;

/** Tells what comes next at the end of a day, in a few lines that readers may see. */
final class NextWork {
  private static final int MOST = 3;

  private final Journal journal;
  private final Ledger ledger;

  NextWork(Journal journal, Ledger ledger) {
    this.journal = journal;
    this.ledger = ledger;
  }

  /**
   * Jobs that are ready, with room kept for a kind of pieces; then the kinds begun, and the first
   * of the others.
   */
  List<String> asOf(LocalDate day) {
    List<String> pieces = pieces(day);
    List<String> jobs = jobs(day);
    int room = MOST - Math.min(pieces.size(), 1);
    List<String> next = new ArrayList<>(jobs.subList(0, Math.min(room, jobs.size())));
    pieces.stream().limit(MOST - next.size()).forEach(next::add);
    return List.copyOf(next);
  }

  private List<String> jobs(LocalDate day) {
    Instant night = day.plusDays(1).atStartOfDay(journal.project().zone()).toInstant();
    return PunchList.of(journal, day, Bonds.of(journal, night), Told.TO_READERS)
        .in(State.READY)
        .stream()
        .map(open -> PlainName.of(open.job().what()))
        .filter(what -> !what.isEmpty())
        .toList();
  }

  private List<String> pieces(LocalDate day) {
    Map<String, PieceCount> counts = PieceCount.of(journal, day);
    Set<String> finished = finished(counts, day);
    List<PieceCount> open =
        counts.values().stream()
            .filter(count -> count.left() > 0)
            .filter(
                count -> count.kind().phase().map(Name::fold).filter(finished::contains).isEmpty())
            .toList();
    List<String> lines = new ArrayList<>();
    open.stream().filter(count -> count.done() > 0).map(NextWork::left).forEach(lines::add);
    open.stream()
        .filter(count -> count.done() == 0)
        .findFirst()
        .map(NextWork::all)
        .ifPresent(lines::add);
    return lines;
  }

  /** Where a phase has pieces these and its notes tell whether it is done, and no hours do. */
  private Set<String> finished(Map<String, PieceCount> counts, LocalDate day) {
    return Standing.of(journal, ledger, counts, day).phases().stream()
        .filter(PhaseStanding::isDone)
        .map(phase -> Name.fold(phase.phase().id()))
        .collect(Collectors.toSet());
  }

  private static String left(PieceCount count) {
    return name(count)
        + ": "
        + Saying.count(count.left())
        + " of "
        + Saying.count(count.kind().total())
        + " left";
  }

  private static String all(PieceCount count) {
    return name(count) + ": " + Saying.count(count.left()) + " to make";
  }

  private static String name(PieceCount count) {
    return PlainName.of(Saying.capitalised(count.kind().name()));
  }
}
