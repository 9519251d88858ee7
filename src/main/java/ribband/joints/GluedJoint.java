package ribband.joints;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import ribband.shop.Figure;

/**
 * A joint and its times.
 *
 * @param closeBy the end of the open time
 * @param softUntil as long as the clamps can be moved
 * @param lastLook while a slipped clamp can still be put right
 */
public record GluedJoint(
    Made made,
    Optional<Instant> spreadAt,
    Optional<Instant> clampedAt,
    Figure<Instant> closeBy,
    Figure<Instant> lastLook,
    Figure<Instant> softUntil,
    Figure<Instant> clampsOff,
    Figure<Instant> fullCure)
    implements Bond {

  /** How long after the open time it was closed; none where it was closed in time. */
  public Figure<Duration> late() {
    return closeBy.flatMap(
        by ->
            Figure.of(clampedAt, "\"clamped at\" is not written")
                .map(at -> at.isAfter(by) ? Duration.between(by, at) : Duration.ZERO));
  }

  /** Whether the last look is due as soon as the joint is closed. */
  public boolean isLookedAtAtOnce() {
    return lastLook.value().equals(begun()) && begun().isPresent();
  }

  @Override
  public String kind() {
    return "joint";
  }

  @Override
  public Optional<Instant> begun() {
    return spreadAt.or(() -> clampedAt);
  }

  @Override
  public State state(Instant now) {
    if (begun().filter(now::isBefore).isPresent()) {
      return State.AHEAD;
    }
    if (softUntil.value().filter(now::isBefore).isPresent()) {
      return State.SOFT;
    }
    if (clampsOff.value().filter(now::isBefore).isPresent()) {
      return State.CLAMPED;
    }
    return fullCure
        .value()
        .map(cured -> now.isBefore(cured) ? State.CURING : State.CURED)
        .orElse(clampsOff.value().isPresent() ? State.CURING : State.UNKNOWN);
  }

  @Override
  public boolean isLive(Instant now) {
    return now.isBefore(fullCure.value().or(clampsOff::value).orElse(made.forgotten()));
  }

  @Override
  public List<Due> dues() {
    List<Due> dues = new ArrayList<>();
    if (clampedAt.isEmpty()) {
      closeBy.value().ifPresent(at -> dues.add(new Due(Due.Kind.CLOSE, at, this)));
    }
    lastLook.value().ifPresent(at -> dues.add(new Due(Due.Kind.LAST_LOOK, at, this)));
    clampsOff.value().ifPresent(at -> dues.add(new Due(Due.Kind.CLAMPS_OFF, at, this)));
    fullCure.value().ifPresent(at -> dues.add(new Due(Due.Kind.FULL_CURE, at, this)));
    return List.copyOf(dues);
  }
}
