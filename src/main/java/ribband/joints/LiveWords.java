package ribband.joints;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import ribband.measure.Saying;

/**
 * Says in a line each what joints and coats are still worked with, and what each calls for next.
 */
public final class LiveWords {
  private static final Set<State> AT_WORK =
      EnumSet.of(State.AHEAD, State.SOFT, State.CLAMPED, State.SETTING, State.OPEN, State.UNKNOWN);

  private LiveWords() {}

  /**
   * {@code soft: Starboard garboard scarf, last look 22:27}, by time, those without one last.
   *
   * @return in words that may hold anything a builder can type
   */
  public static List<String> of(Bonds bonds) {
    return bonds.live().stream()
        .filter(bond -> AT_WORK.contains(bond.state(bonds.now())))
        .sorted(Comparator.comparing(bond -> next(bond, bonds).map(Due::at).orElse(Instant.MAX)))
        .map(bond -> line(bond, bonds))
        .toList();
  }

  private static String line(Bond bond, Bonds bonds) {
    ZoneId zone = bonds.project().zone();
    LocalDate today = bonds.now().atZone(zone).toLocalDate();
    return bond.state(bonds.now()).said()
        + ": "
        + bond.made().name()
        + next(bond, bonds)
            .map(
                due ->
                    ", "
                        + due.kind().said()
                        + " "
                        + Saying.moment(due.at().atZone(zone).toLocalDateTime(), today))
            .orElse("");
  }

  private static Optional<Due> next(Bond bond, Bonds bonds) {
    return bond.dues().stream()
        .filter(due -> due.isAhead(bonds.now()))
        .min(Comparator.comparing(Due::at));
  }
}
