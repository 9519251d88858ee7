package ribband.ledger;

import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import ribband.journal.Entry;
import ribband.journal.Journal;
import ribband.journal.Phase;
import ribband.journal.PieceKind;
import ribband.journal.PieceWork;

/**
 * Pieces of one kind made on one day.
 *
 * @param kind as project.yaml spells it
 * @param count less those taken back that day; may be below zero
 */
public record Made(LocalDate date, String kind, long count) {
  public Made {
    Objects.requireNonNull(date);
    Objects.requireNonNull(kind);
  }

  /** All that was made, by day, then in the order written. */
  static List<Made> of(Journal journal, Selection selection) {
    record Key(LocalDate date, String kind) {}
    Map<Key, Long> counts = new LinkedHashMap<>();
    for (Entry entry : journal.entries()) {
      for (PieceWork work : entry.pieces()) {
        if (selection.covers(entry.date()) && selection.covers(phase(journal, entry, work))) {
          counts.merge(new Key(entry.date(), work.kind()), (long) work.count(), Long::sum);
        }
      }
    }
    return counts.entrySet().stream()
        .map(made -> new Made(made.getKey().date(), made.getKey().kind(), made.getValue()))
        .toList();
  }

  /** A piece counts for the phase of its kind, else for that of its entry. */
  private static String phase(Journal journal, Entry entry, PieceWork work) {
    return journal
        .project()
        .pieceKind(work.kind())
        .flatMap(PieceKind::phase)
        .or(entry::phase)
        .orElse(Phase.UNSORTED.id());
  }
}
