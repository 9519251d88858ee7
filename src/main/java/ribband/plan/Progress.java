package ribband.plan;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;
import ribband.journal.Journal;
import ribband.journal.PieceKind;
import ribband.measure.Hours;
import ribband.measure.Name;
import ribband.measure.Percent;
import ribband.pieces.PieceCount;

/**
 * What tells how much of each phase is done.
 *
 * @param kinds the counts of each phase's pieces, by phase id
 * @param noted the last {@code complete} of each phase, by phase id
 */
record Progress(Map<String, List<PieceCount>> kinds, Map<String, Percent> noted) {
  static Progress of(Journal journal, Map<String, PieceCount> pieces, LocalDate asOf) {
    Map<String, List<PieceCount>> kinds = new HashMap<>();
    for (PieceCount count : pieces.values()) {
      count
          .kind()
          .phase()
          .ifPresent(
              phase ->
                  kinds.computeIfAbsent(Name.fold(phase), none -> new ArrayList<>()).add(count));
    }
    return new Progress(kinds, journal.complete(asOf));
  }

  List<PieceCount> kindsOf(String phase) {
    return kinds.getOrDefault(Name.fold(phase), List.of());
  }

  /**
   * spec: from the pieces of the phase, else from the last {@code complete}, else by hours; a last
   * {@code complete} of 100% finishes it whatever the pieces say.
   *
   * @param planned more than none
   */
  Complete of(String phase, Hours worked, Optional<Hours> planned) {
    Optional<Percent> note = Optional.ofNullable(noted.get(Name.fold(phase)));
    if (note.isPresent() && note.get().isWhole()) {
      return Complete.of(BigFraction.ONE, Complete.Basis.NOTED);
    }
    if (!kindsOf(phase).isEmpty()) {
      return Complete.of(share(kindsOf(phase)), Complete.Basis.PIECES);
    }
    if (note.isPresent()) {
      return Complete.of(note.get().share(), Complete.Basis.NOTED);
    }
    return planned
        .map(plan -> Complete.of(used(worked, plan), Complete.Basis.ASSUMED))
        .orElse(Complete.UNKNOWN);
  }

  private static BigFraction used(Hours worked, Hours plan) {
    return BigFraction.of(Math.min(worked.seconds(), plan.seconds()), plan.seconds());
  }

  /** Kinds weigh by their planned hours where all have them, else each piece weighs the same. */
  private static BigFraction share(List<PieceCount> counts) {
    boolean planned =
        counts.stream().allMatch(c -> c.kind().hours().filter(h -> !h.isZero()).isPresent());
    long done = 0;
    long total = 0;
    for (PieceCount count : counts) {
      long weight = planned ? secondsEach(count.kind()) : 1;
      done = Math.addExact(done, Math.multiplyExact(weight, (long) count.done()));
      total = Math.addExact(total, Math.multiplyExact(weight, (long) count.kind().total()));
    }
    return BigFraction.of(done, total);
  }

  private static long secondsEach(PieceKind kind) {
    return kind.hours().orElseThrow().seconds();
  }
}
