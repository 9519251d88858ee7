package ribband.desk;

import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import ribband.jobs.JobWords;
import ribband.jobs.OpenJob;
import ribband.jobs.PunchList;
import ribband.joints.Bonds;
import ribband.joints.LiveWords;
import ribband.journal.Journal;
import ribband.measure.Name;
import ribband.measure.Saying;
import ribband.pieces.PieceCount;
import ribband.pieces.Side;
import ribband.problem.OneLine;
import ribband.stock.Stock.Told;

/**
 * What somebody may want to know while writing: the phase's pieces and jobs, and what is still
 * soft. As of a night, with private entries, for the builder alone.
 *
 * @param pieces kinds that are not all made, by name
 * @param jobs open ones by id, those that are ready first
 * @param live joints and coats
 */
record Reminders(Map<String, String> pieces, Map<String, String> jobs, List<String> live) {
  /** Reminds of one thing after the other, not of all at once. */
  static final int MOST = 12;

  private static final int LONGEST = 120;

  /**
   * Of a journal that may have errors.
   *
   * @param phase whose pieces and jobs are wanted; of all phases where none is known
   */
  static Reminders of(Journal journal, LocalDate night, Instant now, Optional<String> phase) {
    Map<String, PieceCount> counts = PieceCount.of(journal, night);
    Bonds bonds = Bonds.of(journal, now);
    return new Reminders(
        pieces(counts, phase),
        jobs(journal, night, bonds, counts, phase),
        LiveWords.of(bonds).stream().map(Reminders::cut).toList());
  }

  private static boolean isOf(Optional<String> wanted, Optional<String> phase) {
    return wanted.isEmpty()
        || phase.isEmpty()
        || Name.fold(phase.get()).equals(Name.fold(wanted.get()));
  }

  private static Map<String, String> pieces(
      Map<String, PieceCount> counts, Optional<String> phase) {
    return inOrder(
        counts.values().stream()
            .filter(count -> count.left() > 0 && isOf(phase, count.kind().phase()))
            .map(count -> Map.entry(count.kind().name(), cut(pieces(count)))));
  }

  /** {@code 9 of 16 are done: port 5 of 8, starboard 4 of 8}. */
  private static String pieces(PieceCount count) {
    String done = of(count.done(), count.kind().total()) + " are done";
    return count.sides().isEmpty()
        ? done
        : done
            + ": "
            + count.sides().stream().map(Reminders::side).collect(Collectors.joining(", "));
  }

  private static String side(Side side) {
    return side.name() + " " + of(side.done(), side.total());
  }

  private static String of(int done, int total) {
    return Saying.count(done) + " of " + Saying.count(total);
  }

  private static Map<String, String> jobs(
      Journal journal,
      LocalDate night,
      Bonds bonds,
      Map<String, PieceCount> counts,
      Optional<String> phase) {
    Optional<PunchList> list = list(journal, night, bonds);
    if (list.isEmpty()) {
      return Map.of();
    }
    JobWords words =
        new JobWords(
            list.get(), job -> job.id(), journal::phaseTitle, counts, bonds.project().zone());
    List<OpenJob> wanted = new ArrayList<>();
    for (OpenJob.State state : OpenJob.State.values()) {
      list.get().in(state).stream()
          .filter(open -> isOf(phase, open.job().phase()))
          .forEach(wanted::add);
    }
    return inOrder(wanted.stream().map(open -> Map.entry(open.job().id(), cut(job(open, words)))));
  }

  /** In a journal with errors jobs may wait for each other in a circle: no order tells of them. */
  private static Optional<PunchList> list(Journal journal, LocalDate night, Bonds bonds) {
    try {
      return Optional.of(PunchList.of(journal, night, bonds, Told.TO_THE_BUILDER));
    } catch (IllegalArgumentException circle) {
      return Optional.empty();
    }
  }

  private static String job(OpenJob open, JobWords words) {
    String what = OneLine.cut(open.job().what());
    return switch (open.state()) {
      case READY -> what;
      case HELD -> what + "; " + open.hold().map(words::hold).orElse("");
      case WAITING -> what + "; waits for " + words.waitsFor(open);
    };
  }

  /** Whatever names are as long as a page: the keys of an entry have bounds. */
  private static String cut(String words) {
    int[] points = words.codePoints().limit(LONGEST + 1L).toArray();
    return points.length <= LONGEST ? words : new String(points, 0, LONGEST) + "...";
  }

  private static Map<String, String> inOrder(Stream<Map.Entry<String, String>> entries) {
    Map<String, String> ordered = new LinkedHashMap<>();
    entries.forEach(entry -> ordered.put(entry.getKey(), entry.getValue()));
    return ordered;
  }
}
