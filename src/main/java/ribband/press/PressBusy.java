package ribband.press;

import java.nio.file.Path;
import java.util.OptionalLong;

/** Another run is publishing into the same place. */
public final class PressBusy extends Exception {
  private static final long serialVersionUID = 1L;

  PressBusy(Path lock, OptionalLong process) {
    super(
        "another run is at work here"
            + (process.isPresent() ? " (process " + process.getAsLong() + ")" : "")
            + " and holds "
            + lock
            + "; let it end, then run again");
  }
}
