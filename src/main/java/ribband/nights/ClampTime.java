package ribband.nights;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import ribband.joints.Warm;
import ribband.journal.Entry;
import ribband.journal.Joint;
import ribband.journal.Project;
import ribband.measure.Name;
import ribband.measure.Span;
import ribband.measure.Warmth;
import ribband.pieces.PieceCount;
import ribband.pieces.Session;
import ribband.shop.Adhesive;
import ribband.shop.Cure;
import ribband.shop.Figure;
import ribband.stock.Stock.Told;

/**
 * How long pieces stay in clamps.
 *
 * @param adhesive empty where none is named
 * @param warm the temperature it is reckoned at; from an entry, it is that of the latest joint
 * @param lasts unknown with the reason where no time is promised
 */
public record ClampTime(Optional<Adhesive> adhesive, Warm warm, Figure<Span> lasts) {
  /**
   * spec: at the temperature of the latest night that made some and glued, else the month's mean,
   * else as rated.
   */
  static ClampTime of(PieceCount count, Project project, LocalDate night, Told told) {
    List<Joint> joints =
        latestJoints(
            count.sessions().all().stream()
                .filter(made -> told == Told.TO_THE_BUILDER || made.entry().isPublic())
                .toList());
    Optional<Warmth> written =
        last(joints.stream().flatMap(j -> j.temperature().stream()).toList());
    Optional<String> named =
        count
            .kind()
            .adhesive()
            .or(() -> last(joints.stream().flatMap(j -> j.adhesive().stream()).toList()));
    return of(
        named.map(name -> project.adhesives().get(Name.fold(name))),
        Warm.of(written, night, project));
  }

  static ClampTime of(Optional<Adhesive> adhesive, Warm warm) {
    return new ClampTime(
        adhesive,
        warm,
        Figure.of(adhesive, "no adhesive is named")
            .flatMap(
                a ->
                    Figure.of(a.clampTime(), a.name() + " has no \"clamp time\" in project.yaml")
                        .flatMap(rated -> Cure.of(a).lasts(rated, warm.warmth()))));
  }

  private static List<Joint> latestJoints(List<Session> sessions) {
    return last(sessions.stream()
            .map(Session::entry)
            .map(Entry::joints)
            .filter(joints -> !joints.isEmpty())
            .toList())
        .orElse(List.of());
  }

  private static <T> Optional<T> last(List<T> list) {
    return list.isEmpty() ? Optional.empty() : Optional.of(list.get(list.size() - 1));
  }

  /** Whether a time is known for it that is not promised at this temperature. */
  boolean isRefused() {
    return lasts.value().isEmpty() && adhesive.flatMap(Adhesive::clampTime).isPresent();
  }
}
