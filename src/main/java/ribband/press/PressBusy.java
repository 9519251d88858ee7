package ribband.press;

import java.nio.file.Path;
import java.util.OptionalLong;

/** Another run is publishing into the same place. */
public final class PressBusy extends Exception {
  private static final long serialVersionUID = 1L;

  private final String who;

  PressBusy(Path lock, OptionalLong process) {
    this(
        "another run is at work here"
            + (process.isPresent() ? " (process " + process.getAsLong() + ")" : ""),
        lock);
  }

  private PressBusy(String who, Path lock) {
    super(who + " and holds " + lock + "; let it end, then run again");
    this.who = who;
  }

  /** The same without the cure, for whoever waits: {@code another run is at work here}. */
  public String who() {
    return who;
  }
}
