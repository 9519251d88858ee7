package ribband.ahead;

import java.math.RoundingMode;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import ribband.jobs.Lasting;
import ribband.measure.Hours;
import ribband.measure.Name;
import ribband.nights.Clamping;
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
          cures.put(
              fold, kind.clamping().flatMap(Clamping::every).value().map(n -> n - 1).orElse(0L));
        });
    Optional<Hours> evening = setting.evening().hours().filter(hours -> !hours.isZero());
    return new Lasting(evening, kinds, cures, phases(standing, left, evening));
  }

  /** spec: at the builder's pace, or at what a night can bring where that takes longer. */
  static long nights(Nightly kind) {
    long pace = kind.count().nightsLeft().orElse(1);
    return Math.max(1, Math.max(pace, kind.nightsLeft().value().orElse(1L)));
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
