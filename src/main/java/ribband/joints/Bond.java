package ribband.joints;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import ribband.shop.Figure;

/** A joint or a coat with the times that follow from when and how warm it was made. */
public sealed interface Bond permits GluedJoint, LaidCoat {
  Made made();

  /** {@code joint} or {@code coat}, as data files have it. */
  String kind();

  /** When the adhesive was spread, or the joint closed; empty where neither is written. */
  Optional<Instant> begun();

  Figure<Instant> fullCure();

  State state(Instant now);

  /** Whether there is anything left to wait for. */
  boolean isLive(Instant now);

  /** What it calls for, in no order; what is unknown is left out. */
  List<Due> dues();
}
