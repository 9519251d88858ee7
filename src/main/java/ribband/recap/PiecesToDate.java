package ribband.recap;

import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.NavigableMap;
import java.util.TreeMap;
import ribband.journal.PieceKind;
import ribband.journal.Project;
import ribband.ledger.Ledger;
import ribband.ledger.Made;
import ribband.measure.Name;

/** How many pieces were done on any day: added up once, as every month of a journal asks. */
final class PiecesToDate {
  /** By folded name, in the project's order; less those taken back, at the end of a day. */
  private final Map<String, NavigableMap<LocalDate, Long>> sums = new LinkedHashMap<>();

  private final Project project;

  PiecesToDate(Project project, Ledger ledger) {
    this.project = project;
    project.pieces().keySet().forEach(fold -> sums.put(fold, new TreeMap<>()));
    for (Made made : ledger.made()) {
      NavigableMap<LocalDate, Long> kind = sums.get(Name.fold(made.kind()));
      kind.put(made.date(), sum(kind, made.date()) + made.count());
    }
  }

  private static long sum(NavigableMap<LocalDate, Long> kind, LocalDate day) {
    Map.Entry<LocalDate, Long> last = kind.floorEntry(day);
    return last == null ? 0 : last.getValue();
  }

  /** Every kind, in the project's order. */
  Iterable<PieceKind> kinds() {
    return project.pieces().values();
  }

  /** Made in some days, both ends included; below zero where more were taken back. */
  long made(PieceKind kind, LocalDate first, LocalDate last) {
    NavigableMap<LocalDate, Long> its = sums.get(Name.fold(kind.name()));
    return sum(its, last) - sum(its, first.minusDays(1));
  }

  /** Of all the boat has, at the end of a day. */
  int done(PieceKind kind, LocalDate day) {
    return (int) sum(sums.get(Name.fold(kind.name())), day);
  }
}
