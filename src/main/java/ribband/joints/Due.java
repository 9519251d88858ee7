package ribband.joints;

import java.time.Instant;

/** A moment at which a joint or a coat calls for the builder. */
public record Due(Kind kind, Instant at, Bond of) {
  /** What for. */
  public enum Kind {
    CLOSE("close the joint"),
    LAST_LOOK("last look"),
    CLAMPS_OFF("clamps off"),
    RECOAT_FROM("may be coated again"),
    RECOAT_TO("last chance to coat without sanding"),
    FULL_CURE("full cure");

    private final String said;

    Kind(String said) {
      this.said = said;
    }

    public String said() {
      return said;
    }
  }

  public boolean isAhead(Instant now) {
    return !at.isBefore(now);
  }
}
