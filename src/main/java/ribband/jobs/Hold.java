package ribband.jobs;

import java.time.Instant;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.BinaryOperator;
import ribband.joints.Bond;
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

  /** The joint that is longest in clamps of those each entry glued, by the entry's address. */
  static Map<String, Hold> byEntry(Bonds bonds) {
    Map<String, Hold> holds = new HashMap<>();
    for (Bond bond : bonds.live()) {
      if (bond instanceof GluedJoint joint && isHeld(joint, bonds.now())) {
        Hold hold = new Hold(joint.made().name(), joint.clampsOff().value());
        holds.merge(joint.made().entry(), hold, BinaryOperator.maxBy(LONGEST));
      }
    }
    return holds;
  }

  /** Whichever lasts longest of those of some entries. */
  static Optional<Hold> of(List<Entry> entries, Map<String, Hold> byEntry) {
    return entries.stream()
        .flatMap(entry -> Optional.ofNullable(byEntry.get(entry.address())).stream())
        .max(LONGEST);
  }

  /** Too cold a joint is held for as long as it is live: nobody knows when it will be hard. */
  private static boolean isHeld(GluedJoint joint, Instant now) {
    return joint.clampsOff().value().map(now::isBefore).orElse(joint.made().isCold());
  }
}
