package ribband.journal;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import ribband.measure.Name;
import ribband.problem.Place;
import ribband.problem.Problems;

/** Counts pieces through the entries and tells what cannot be; for one run. */
final class PieceChecks {
  private final Project project;
  private final Problems problems;
  private final Map<String, Integer> done = new HashMap<>();
  private final Map<String, Place> numbered = new HashMap<>();

  /** Pieces taken back by count, of which nobody knows which they were. */
  private final Map<String, Integer> scrapped = new HashMap<>();

  PieceChecks(Project project, Problems problems) {
    this.project = project;
    this.problems = problems;
  }

  /**
   * @param entries by date, those of one day by path
   */
  void run(List<Entry> entries) {
    entries.forEach(
        entry ->
            entry
                .pieces()
                .forEach(
                    work -> project.pieceKind(work.kind()).ifPresent(kind -> count(kind, work))));
  }

  private void count(PieceKind kind, PieceWork work) {
    work.numbers().forEach(number -> number(kind, work, number));
    String fold = Name.fold(kind.name());
    within(kind.name(), fold, kind.total(), work);
    work.side()
        .ifPresent(
            side ->
                within(
                    kind.name() + " " + side,
                    fold + "/" + Name.fold(side),
                    mostOnASide(kind),
                    work));
    if (work.numbers().isEmpty() && work.count() < 0) {
      scrapped.merge(lot(kind, work), -work.count(), Integer::sum);
    }
  }

  /** spec: the sides share the total; where it does not divide one may have one more. */
  private static int mostOnASide(PieceKind kind) {
    return -Math.floorDiv(-kind.total(), kind.sides().size());
  }

  private void within(String what, String key, int most, PieceWork work) {
    int before = done.getOrDefault(key, 0);
    int after = before + work.count();
    done.put(key, after);
    if (after > most && before <= most) {
      problems.error(
          work.place(),
          what
              + " come to "
              + after
              + " with this, more than the "
              + most
              + " there are in project.yaml; lower this count, or raise the total");
    } else if (after < 0 && before >= 0 && work.numbers().isEmpty()) {
      problems.error(
          work.place(),
          what
              + " "
              + work.count()
              + " takes back more than the "
              + before
              + " done by then; take back what was counted");
    }
  }

  private void number(PieceKind kind, PieceWork work, int number) {
    String lot = lot(kind, work);
    String key = lot + "/" + Math.abs(number);
    String what =
        kind.name()
            + " number "
            + Math.abs(number)
            + work.side().map(side -> " " + side).orElse("");
    if (number < 0) {
      if (numbered.remove(key) == null) {
        problems.error(
            work.place(), what + " was not done by then; take back one that was done by number");
      }
      return;
    }
    Optional<Place> first = Optional.ofNullable(numbered.put(key, work.place()));
    if (first.isPresent() && scrapped.merge(lot, -1, Integer::sum) < 0) {
      scrapped.put(lot, 0);
      problems.error(
          work.place(),
          what
              + " was done already, in "
              + first.get().file()
              + ":"
              + first.get().line()
              + "; take one out, or take a scrapped one back first with -"
              + number);
    }
  }

  private static String lot(PieceKind kind, PieceWork work) {
    return Name.fold(kind.name()) + "/" + work.side().map(Name::fold).orElse("");
  }
}
