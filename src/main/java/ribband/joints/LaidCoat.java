package ribband.joints;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import ribband.shop.Figure;

/**
 * A coat and its times.
 *
 * @param recoatFrom from then on the next coat bonds without sanding
 * @param recoatTo until then; afterwards sand first
 * @param coveredAt when the next coat of the same went over it
 */
public record LaidCoat(
    Made made,
    Optional<Instant> at,
    Figure<Instant> recoatFrom,
    Figure<Instant> recoatTo,
    Figure<Instant> fullCure,
    Optional<Instant> coveredAt)
    implements Bond {

  LaidCoat covered(Optional<Instant> when) {
    return new LaidCoat(made, at, recoatFrom, recoatTo, fullCure, when);
  }

  @Override
  public String kind() {
    return "coat";
  }

  @Override
  public Optional<Instant> begun() {
    return at;
  }

  @Override
  public State state(Instant now) {
    if (at.filter(now::isBefore).isPresent()) {
      return State.AHEAD;
    }
    if (coveredAt.isPresent()) {
      return State.COVERED;
    }
    if (recoatFrom.value().filter(now::isBefore).isPresent()) {
      return State.SETTING;
    }
    if (recoatTo.value().filter(to -> !now.isAfter(to)).isPresent()) {
      return State.OPEN;
    }
    if (fullCure.value().filter(cured -> !now.isBefore(cured)).isPresent()) {
      return State.CURED;
    }
    if (recoatTo.value().isPresent()) {
      return State.SHUT;
    }
    return fullCure.value().isPresent() ? State.CURING : State.UNKNOWN;
  }

  @Override
  public boolean isLive(Instant now) {
    Instant end =
        Stream.of(recoatTo, fullCure)
            .flatMap(figure -> figure.value().stream())
            .max(Comparator.naturalOrder())
            .orElse(made.forgotten());
    return coveredAt.isEmpty() && now.isBefore(end);
  }

  @Override
  public List<Due> dues() {
    List<Due> dues = new ArrayList<>();
    if (coveredAt.isEmpty()) {
      recoatFrom.value().ifPresent(at -> dues.add(new Due(Due.Kind.RECOAT_FROM, at, this)));
      recoatTo.value().ifPresent(at -> dues.add(new Due(Due.Kind.RECOAT_TO, at, this)));
      fullCure.value().ifPresent(at -> dues.add(new Due(Due.Kind.FULL_CURE, at, this)));
    }
    return List.copyOf(dues);
  }
}
