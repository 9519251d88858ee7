package ribband.spoken;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import ribband.journal.Journal;
import ribband.journal.Phase;
import ribband.journal.Project;
import ribband.spoken.Segment.Join;

/** Reads what a builder says of a night in one line. Keeps nothing between lines. */
public final class SpokenLine {
  private SpokenLine() {}

  /**
   * What the line says. A part of it is taken only when all of its words are understood; all else
   * is loose, in its order.
   *
   * @param line any text, of any length
   * @param phases those of the project, or those its entries use where it lists none
   */
  public static Spoken read(String line, Project project, List<Phase> phases) {
    String tidy = Lexer.tidy(line);
    return spoken(tidy, PieceTotals.check(found(tidy, project, phases)));
  }

  /**
   * The same of a journal's night: pieces that are taken back and were not done by then are loose
   * too.
   *
   * @param journal which may have errors
   */
  public static Spoken read(String line, Journal journal, LocalDate night) {
    String tidy = Lexer.tidy(line);
    List<Found> found = found(tidy, journal.project(), journal.phases());
    List<Found> counted = PieceTotals.check(TakenBack.check(found, journal, night));
    // Once more, as pieces that were too many do not count as done.
    return spoken(tidy, TakenBack.check(counted, journal, night));
  }

  private static List<Found> found(String tidy, Project project, List<Phase> phases) {
    List<Found> heard =
        new Listener(tidy, new Vocabulary(project, phases), project.currency()).listen();
    return PhaseOfHours.settle(Ties.loosen(heard));
  }

  private static Spoken spoken(String tidy, List<Found> found) {
    return new Spoken(
        worked(found), firstPhase(found), spent(found), pieces(found), loose(tidy, found));
  }

  private static List<Worked> worked(List<Found> found) {
    return found.stream()
        .flatMap(f -> f.work().stream())
        .flatMap(
            work ->
                work.time().map(t -> new Worked(work.phase().map(Phase::id), t.hours())).stream())
        .toList();
  }

  private static Optional<String> firstPhase(List<Found> found) {
    return found.stream()
        .flatMap(f -> f.work().flatMap(Heard.Work::phase).stream())
        .map(Phase::id)
        .findFirst();
  }

  private static List<Spent> spent(List<Found> found) {
    return found.stream()
        .flatMap(f -> f.heard().stream())
        .filter(Heard.Cost.class::isInstance)
        .map(heard -> ((Heard.Cost) heard).spent())
        .toList();
  }

  private static List<Piece> pieces(List<Found> found) {
    return found.stream()
        .flatMap(f -> f.heard().stream())
        .filter(Heard.Count.class::isInstance)
        .flatMap(heard -> ((Heard.Count) heard).pieces().stream())
        .toList();
  }

  /** What hangs together stays together; remarks side by side are one. */
  private static List<Loose> loose(String line, List<Found> found) {
    List<Loose> loose = new ArrayList<>();
    int at = 0;
    while (at < found.size()) {
      Found first = found.get(at);
      int end = at + 1;
      Optional<String> why = first.why();
      while (first.isLoose() && end < found.size() && goesOn(why, found.get(end))) {
        Optional<String> next = found.get(end).why();
        why = why.or(() -> next);
        end++;
      }
      if (first.isLoose()) {
        String words = line.substring(first.start(), found.get(end - 1).end()).strip();
        loose.add(new Loose(words, why));
      }
      at = end;
    }
    return loose;
  }

  private static boolean goesOn(Optional<String> why, Found next) {
    boolean bothRemarks = why.isEmpty() && next.why().isEmpty();
    return next.isLoose() && (next.join() == Join.SOFT || bothRemarks);
  }
}
