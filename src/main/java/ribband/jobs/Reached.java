package ribband.jobs;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import ribband.journal.Entry;
import ribband.journal.Journal;
import ribband.journal.PieceKind;
import ribband.journal.PieceWork;
import ribband.measure.Name;
import ribband.measure.Percent;

/** Which goals are reached, and in which entry; for one reading. */
final class Reached {
  private final Map<String, Entry> jobs = new HashMap<>();
  private final Map<String, Entry> pieces = new HashMap<>();
  private final Map<String, Entry> complete = new HashMap<>();
  private final Map<String, Integer> counts = new HashMap<>();
  private final Map<String, PieceKind> kinds;

  private Reached(Map<String, PieceKind> kinds) {
    this.kinds = kinds;
  }

  /**
   * Goes through the entries.
   *
   * @param entries those that count, by date
   */
  static Reached of(Journal journal, List<Entry> entries) {
    Reached reached = new Reached(journal.project().pieces());
    entries.forEach(reached::read);
    return reached;
  }

  private void read(Entry entry) {
    entry.done().forEach(mark -> jobs.put(Name.fold(mark.name()), entry));
    for (PieceWork work : entry.pieces()) {
      count(Name.fold(work.kind()), work.count(), entry);
    }
    entry.complete().forEach((phase, share) -> stands(Name.fold(phase), share, entry));
  }

  private void count(String kind, int made, Entry entry) {
    int before = counts.getOrDefault(kind, 0);
    int after = counts.merge(kind, made, Integer::sum);
    int total = kinds.get(kind).total();
    if (after < total) {
      pieces.remove(kind);
    } else if (before < total) {
      pieces.put(kind, entry);
    }
  }

  private void stands(String phase, Percent share, Entry entry) {
    if (share.isWhole()) {
      complete.putIfAbsent(phase, entry);
    } else {
      complete.remove(phase);
    }
  }

  /** The entry in which a goal was reached; empty while it is open. */
  Optional<Entry> in(Goal goal) {
    return switch (goal.kind()) {
      case JOB, UNTOLD -> Optional.ofNullable(jobs.get(goal.fold()));
      case PIECES -> Optional.ofNullable(pieces.get(goal.fold()));
      case PHASE -> Optional.ofNullable(complete.get(goal.fold())).or(() -> lastPieceOf(goal));
    };
  }

  /** spec: a phase is over when {@code complete} says 100%, or all its pieces are made. */
  private Optional<Entry> lastPieceOf(Goal phase) {
    List<String> its =
        kinds.entrySet().stream()
            .filter(
                kind -> kind.getValue().phase().map(Name::fold).equals(Optional.of(phase.fold())))
            .map(Map.Entry::getKey)
            .toList();
    return pieces.keySet().containsAll(its)
        ? its.stream().map(pieces::get).reduce((a, b) -> a.date().isAfter(b.date()) ? a : b)
        : Optional.empty();
  }
}
