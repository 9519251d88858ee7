package ribband.joints;

import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.Optional;
import java.util.function.Function;
import ribband.journal.Coat;
import ribband.journal.Entry;
import ribband.journal.Joint;
import ribband.journal.Project;
import ribband.measure.Name;
import ribband.measure.Span;
import ribband.measure.SpanRange;
import ribband.shop.Adhesive;
import ribband.shop.Cure;
import ribband.shop.Figure;

/**
 * Reckons when what becomes of joints and coats, in elapsed seconds: a night in which the clock
 * changes is as long as it is. What is a deadline is told at the minute before, what has to be
 * waited for at the minute after.
 */
final class Reckoner {
  /** spec: the last look is so long before the joint can no longer be moved. */
  private static final long LOOK_BEFORE = 15 * 60L;

  /** spec: where no time is known it is live for 7 days after its night. */
  private static final int REMEMBERED = 7;

  private final Project project;

  Reckoner(Project project) {
    this.project = project;
  }

  GluedJoint joint(Joint joint, Entry entry, int number) {
    Optional<Instant> spread = joint.spreadAt().map(this::instant);
    Optional<Instant> clamped = joint.clampedAt().map(this::instant);
    Optional<LocalDateTime> local = joint.spreadAt().or(joint::clampedAt);
    Made made =
        made(
            joint.name(),
            entry,
            number,
            joint.adhesive(),
            Warm.of(joint.temperature(), day(local, entry), project),
            EstimatedUse.of(joint, entry, project));
    Figure<Instant> spreading = Figure.of(spread, "\"spread at\" is not written");
    Figure<Instant> wet = either(spread, clamped);
    Figure<Instant> held = either(clamped, spread);
    Figure<Instant> soft =
        after(wet, made, "soft for", Adhesive::softFor).map(Reckoner::minuteBefore);
    return new GluedJoint(
        made,
        spread,
        clamped,
        after(spreading, made, "open time", Adhesive::openTime).map(Reckoner::minuteBefore),
        soft.flatMap(until -> wet.map(begun -> lastLook(until, begun))),
        soft,
        after(held, made, "clamp time", Adhesive::clampTime).map(Reckoner::minuteAfter),
        after(held, made, "full cure", Adhesive::fullCure).map(Reckoner::minuteAfter));
  }

  private static Figure<Instant> either(Optional<Instant> first, Optional<Instant> second) {
    return Figure.of(first.or(() -> second), "neither \"spread at\" nor \"clamped at\" is written");
  }

  private static Instant lastLook(Instant softUntil, Instant begun) {
    Instant look = softUntil.minusSeconds(LOOK_BEFORE);
    return look.isBefore(begun) ? begun : look;
  }

  LaidCoat coat(Coat coat, Entry entry, int number) {
    Optional<Instant> laid = coat.at().map(this::instant);
    Made made =
        made(
            coat.what(),
            entry,
            number,
            coat.adhesive(),
            Warm.of(coat.temperature(), day(coat.at(), entry), project),
            EstimatedUse.of(coat, entry, project));
    Figure<Instant> at = Figure.of(laid, "\"at\" is not written");
    return new LaidCoat(
        made,
        laid,
        after(at, made, "recoat", a -> a.recoat().map(SpanRange::from)).map(Reckoner::minuteAfter),
        after(at, made, "recoat", a -> a.recoat().map(SpanRange::to)).map(Reckoner::minuteBefore),
        after(at, made, "full cure", Adhesive::fullCure).map(Reckoner::minuteAfter),
        Optional.empty());
  }

  private static LocalDate day(Optional<LocalDateTime> begun, Entry entry) {
    return begun.map(LocalDateTime::toLocalDate).orElse(entry.date());
  }

  private Made made(
      String name,
      Entry entry,
      int number,
      Optional<String> adhesive,
      Warm warm,
      Optional<EstimatedUse> mixed) {
    LocalDate last = entry.date().plusDays(REMEMBERED);
    return new Made(
        name,
        entry.address(),
        entry.date(),
        number,
        adhesive.map(a -> project.adhesives().get(Name.fold(a))),
        warm,
        mixed,
        last.plusDays(1).atStartOfDay(project.zone()).toInstant());
  }

  /**
   * A clock time; one that the change of clocks skips is as much later, one it repeats the first.
   */
  private Instant instant(LocalDateTime local) {
    return local.atZone(project.zone()).toInstant();
  }

  /** The moment at which a time of the data sheet is over, to the second. */
  private static Figure<Instant> after(
      Figure<Instant> begun, Made made, String key, Function<Adhesive, Optional<Span>> rated) {
    return Figure.of(made.adhesive(), "no adhesive is named")
        .flatMap(
            adhesive ->
                Figure.of(
                        rated.apply(adhesive),
                        adhesive.name() + " has no \"" + key + "\" in project.yaml")
                    .flatMap(
                        span ->
                            begun.flatMap(
                                from ->
                                    Cure.of(adhesive)
                                        .lasts(span, made.warm().warmth())
                                        .map(lasts -> from.plusSeconds(lasts.seconds())))));
  }

  private static Instant minuteBefore(Instant exact) {
    return Instant.ofEpochSecond(Math.floorDiv(exact.getEpochSecond(), 60L) * 60);
  }

  private static Instant minuteAfter(Instant exact) {
    return minuteBefore(exact.plusSeconds(59));
  }
}
