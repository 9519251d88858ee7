package ribband.ahead;

import java.math.RoundingMode;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;
import ribband.jobs.Lasting;
import ribband.measure.Hours;
import ribband.measure.Name;
import ribband.nights.Clamping;
import ribband.nights.Limit;
import ribband.nights.Nightly;
import ribband.nights.Setting;
import ribband.pieces.PieceCount;
import ribband.plan.HoursLeft;
import ribband.plan.Standing;

/** How many nights pieces and phases take, for the longest chain. */
final class Lastings {
  private Lastings() {}

  static Lasting of(
      Map<String, PieceCount> pieces,
      Map<String, Nightly> nightly,
      Standing standing,
      HoursLeft left,
      Setting setting) {
    Map<String, Long> kinds = new HashMap<>();
    Map<String, Long> cures = new HashMap<>();
    nightly.forEach(
        (fold, kind) -> {
          kinds.put(fold, nights(kind));
          cures.put(fold, every(kind) - 1);
        });
    Optional<Hours> evening = setting.evening().hours();
    return new Lasting(evening, kinds, cures, phases(standing, left, evening));
  }

  /**
   * spec: at the builder's pace, or at what a night can bring where that takes longer; the last of
   * them is the night in which the last piece is glued.
   */
  private static long nights(Nightly kind) {
    long pace = kind.count().nightsLeft().orElse(1);
    long loads = loads(kind, Limit.CLAMPS);
    long glued = loads == 0 ? 0 : (loads - 1) * every(kind) + 1;
    return Math.max(Math.max(1, pace), Math.max(loads(kind, Limit.HOURS), glued));
  }

  /** Nights for what is left, were this the only limit; 0 where it is unknown or allows none. */
  private static long loads(Nightly kind, Limit limit) {
    return kind.by(limit)
        .value()
        .filter(each -> each.signum() > 0)
        .map(each -> BigFraction.of(kind.count().left()).divide(each))
        .map(nights -> nights.bigDecimalValue(0, RoundingMode.CEILING).longValueExact())
        .orElse(0L);
  }

  /** Nights from one load of the clamps to the next. */
  private static long every(Nightly kind) {
    return kind.clamping().flatMap(Clamping::every).value().orElse(1L);
  }

  private static Map<String, Long> phases(
      Standing standing, HoursLeft left, Optional<Hours> evening) {
    Map<String, Long> phases = new HashMap<>();
    standing
        .phases()
        .forEach(
            phase ->
                left.parts().stream()
                    .filter(part -> part.name().equals(phase.phase().title()))
                    .findFirst()
                    .flatMap(part -> evening.map(e -> part.seconds().divide(e.seconds())))
                    .map(nights -> nights.bigDecimalValue(0, RoundingMode.CEILING))
                    .ifPresent(
                        nights ->
                            phases.put(
                                Name.fold(phase.phase().id()),
                                Math.max(1, nights.longValueExact()))));
    return phases;
  }
}
