package ribband.nights;

import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import ribband.joints.Bond;
import ribband.joints.Bonds;
import ribband.joints.GluedJoint;
import ribband.joints.Warm;
import ribband.journal.Entry;
import ribband.journal.Project;
import ribband.measure.Name;
import ribband.pieces.PieceCount;
import ribband.pieces.Session;
import ribband.shop.Adhesive;

/**
 * Clamps that hold pieces at a moment.
 *
 * @param lots those still on, in the order of their entries
 */
public record HeldClamps(List<Lot> lots) {
  /** spec: where no time is promised, they may be on for 7 days after their night. */
  private static final int REMEMBERED = 7;

  /**
   * The clamps of one kind of pieces, of one entry.
   *
   * @param until empty where no time is promised
   */
  public record Lot(Entry entry, String kind, int clamps, Optional<Instant> until, Basis basis) {}

  /** What tells how long they are on. */
  public enum Basis {
    /** The entry's joint that is longest in clamps. */
    JOINT,
    /** No joint's times are written: the clamp time after the end of its day, at the latest. */
    END_OF_DAY,
    /** Too cold for any time to be promised. */
    NOT_PROMISED
  }

  public HeldClamps {
    lots = List.copyOf(lots);
  }

  /** How many of them. */
  public int number() {
    return (int) Math.min(Integer.MAX_VALUE, lots.stream().mapToLong(Lot::clamps).sum());
  }

  /** Looks through what was made, up to the moment of the bonds. */
  static HeldClamps of(Collection<PieceCount> counts, Bonds bonds) {
    Map<String, List<GluedJoint>> joints = new HashMap<>();
    for (Bond bond : bonds.all()) {
      if (bond instanceof GluedJoint joint) {
        joints.computeIfAbsent(joint.made().entry(), entry -> new ArrayList<>()).add(joint);
      }
    }
    List<Lot> lots = new ArrayList<>();
    for (PieceCount count : counts) {
      for (Session session : count.sessions().all()) {
        int clamps = clamps(count, session);
        if (clamps > 0) {
          List<GluedJoint> its = joints.getOrDefault(session.entry().address(), List.of());
          of(count, session.entry(), its, bonds)
              .filter(hold -> hold.isOn(bonds.now()))
              .ifPresent(hold -> lots.add(hold.lot(count, session.entry(), clamps)));
        }
      }
    }
    lots.sort(Comparator.comparing(lot -> lot.entry().date()));
    return new HeldClamps(lots);
  }

  private static int clamps(PieceCount count, Session session) {
    return (int)
        Math.min(Integer.MAX_VALUE, (long) count.kind().clamps().orElse(0) * session.pieces());
  }

  /**
   * How long an entry's clamps are on.
   *
   * @param until at the latest
   */
  private record Hold(Instant until, Basis basis) {
    boolean isOn(Instant now) {
      return now.isBefore(until);
    }

    Lot lot(PieceCount count, Entry entry, int clamps) {
      return new Lot(
          entry,
          count.kind().name(),
          clamps,
          basis == Basis.NOT_PROMISED ? Optional.empty() : Optional.of(until),
          basis);
    }
  }

  /** Empty where nothing tells it: clamps that nobody can tell of are taken for free. */
  private static Optional<Hold> of(
      PieceCount count, Entry entry, List<GluedJoint> joints, Bonds bonds) {
    Instant dayEnd = startOf(entry.date().plusDays(1), bonds.project());
    Hold unpromised =
        new Hold(
            startOf(entry.date().plusDays(REMEMBERED + 1L), bonds.project()), Basis.NOT_PROMISED);
    Optional<Hold> off =
        joints.stream()
            .flatMap(joint -> joint.clampsOff().value().stream())
            .max(Comparator.naturalOrder())
            .map(until -> new Hold(until, Basis.JOINT));
    List<ClampTime> times = times(count, entry, joints, bonds.project());
    if (times.stream().anyMatch(ClampTime::isRefused)) {
      return Optional.of(unpromised);
    }
    return off.or(
        () ->
            times.stream()
                .flatMap(time -> time.lasts().value().stream())
                .max(Comparator.naturalOrder())
                .map(lasts -> new Hold(dayEnd.plusSeconds(lasts.seconds()), Basis.END_OF_DAY)));
  }

  /** Of its joints; without any, of the kind's adhesive at the month's mean. */
  private static List<ClampTime> times(
      PieceCount count, Entry entry, List<GluedJoint> joints, Project project) {
    Optional<Adhesive> own =
        count.kind().adhesive().map(name -> project.adhesives().get(Name.fold(name)));
    return joints.isEmpty()
        ? List.of(ClampTime.of(own, Warm.of(Optional.empty(), entry.date(), project)))
        : joints.stream()
            .map(GluedJoint::made)
            .map(made -> ClampTime.of(made.adhesive().or(() -> own), made.warm()))
            .toList();
  }

  private static Instant startOf(LocalDate day, Project project) {
    return day.atStartOfDay(project.zone()).toInstant();
  }
}
