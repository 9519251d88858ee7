package ribband.recap;

import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import ribband.jobs.OpenJob.State;
import ribband.jobs.PunchList;
import ribband.joints.Bonds;
import ribband.journal.Journal;
import ribband.journal.PieceKind;
import ribband.measure.Name;
import ribband.measure.Percent;
import ribband.measure.Saying;
import ribband.stock.Stock.Told;

/** Tells what comes next at the end of a day, in a few lines that readers may see. */
final class NextWork {
  private static final int MOST = 3;

  private final Journal journal;
  private final PiecesToDate pieces;

  NextWork(Journal journal, PiecesToDate pieces) {
    this.journal = journal;
    this.pieces = pieces;
  }

  /**
   * Jobs that are ready, with room kept for a kind of pieces; then the kinds begun, and the first
   * of the others.
   */
  List<String> asOf(LocalDate day) {
    List<String> kinds = pieces(day);
    List<String> jobs = jobs(day);
    int room = MOST - Math.min(kinds.size(), 1);
    List<String> next = new ArrayList<>(jobs.subList(0, Math.min(room, jobs.size())));
    kinds.stream().limit(MOST - next.size()).forEach(next::add);
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
    Set<String> finished = finished(day);
    List<String> begun = new ArrayList<>();
    List<String> others = new ArrayList<>();
    for (PieceKind kind : pieces.kinds()) {
      int done = pieces.done(kind, day);
      int left = kind.total() - done;
      if (left > 0 && kind.phase().map(Name::fold).filter(finished::contains).isEmpty()) {
        (done > 0 ? begun : others).add(line(kind, done, left));
      }
    }
    others.stream().findFirst().ifPresent(begun::add);
    return begun;
  }

  /** spec: a last {@code complete} of 100% finishes a phase whatever the pieces say. */
  private Set<String> finished(LocalDate day) {
    Map<String, Percent> last = journal.complete(day);
    last.values().removeIf(share -> !share.isWhole());
    return last.keySet();
  }

  private static String line(PieceKind kind, int done, int left) {
    return PlainName.of(Saying.capitalised(kind.name()))
        + ": "
        + Saying.count(left)
        + (done == 0 ? " to make" : " of " + Saying.count(kind.total()) + " left");
  }
}
