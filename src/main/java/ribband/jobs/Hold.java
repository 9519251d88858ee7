package ribband.jobs;

import java.time.Instant;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import ribband.joints.Bonds;
import ribband.joints.GluedJoint;
import ribband.journal.Entry;

/**
 * A joint in clamps that holds a job up, though all that it waits for is done: it was glued in the
 * night that did it.
 *
 * @param joint its name
 * @param until when its clamps are off; empty where no time is promised
 */
public record Hold(String joint, Optional<Instant> until) {
  private static final Comparator<Hold> LONGEST =
      Comparator.comparing(hold -> hold.until().orElse(Instant.MAX));

  /** The joint that is longest in clamps of those glued in some entries; empty where none is. */
  static Optional<Hold> of(List<Entry> entries, Bonds bonds) {
    return bonds.live().stream()
        .filter(bond -> entries.stream().anyMatch(e -> e.address().equals(bond.made().entry())))
        .filter(GluedJoint.class::isInstance)
        .map(GluedJoint.class::cast)
        .filter(joint -> isHeld(joint, bonds.now()))
        .map(joint -> new Hold(joint.made().name(), joint.clampsOff().value()))
        .max(LONGEST);
  }

  /** Too cold a joint is held for as long as it is live: nobody knows when it will be hard. */
  private static boolean isHeld(GluedJoint joint, Instant now) {
    return joint.clampsOff().value().map(now::isBefore).orElse(joint.made().isCold());
  }
}
