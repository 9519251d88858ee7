package ribband.pieces;

import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import ribband.journal.Entry;
import ribband.journal.Journal;
import ribband.journal.PieceKind;
import ribband.journal.PieceWork;
import ribband.measure.Hours;
import ribband.measure.Name;

/**
 * How many pieces of a kind are made.
 *
 * @param done less those taken back; never more than the total, never below 0
 */
public record PieceCount(PieceKind kind, int done) {
  private static PieceCount of(PieceKind kind, long done) {
    return new PieceCount(kind, (int) Math.max(0, Math.min(done, kind.total())));
  }

  /**
   * Counts every kind of the project, in its order.
   *
   * @param asOf entries after it do not count
   */
  public static Map<String, PieceCount> of(Journal journal, LocalDate asOf) {
    Map<String, Long> done = new LinkedHashMap<>();
    for (Entry entry : journal.entries()) {
      if (!entry.date().isAfter(asOf)) {
        for (PieceWork work : entry.pieces()) {
          done.merge(Name.fold(work.kind()), (long) work.count(), Long::sum);
        }
      }
    }
    Map<String, PieceCount> counts = new LinkedHashMap<>();
    journal
        .project()
        .pieces()
        .forEach((fold, kind) -> counts.put(fold, of(kind, done.getOrDefault(fold, 0L))));
    return counts;
  }

  public int left() {
    return kind.total() - done;
  }

  public Optional<Hours> hoursLeft() {
    return kind.hours().map(each -> new Hours(Math.multiplyExact(each.seconds(), (long) left())));
  }
}
