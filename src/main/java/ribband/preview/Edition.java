package ribband.preview;

import java.nio.charset.StandardCharsets;
import java.util.List;
import ribband.memory.Hash;

/**
 * What a page in a browser is to show.
 *
 * @param site a short word for the site as it stands, the same as long as no file of it changes
 * @param troubles in the order told
 */
record Edition(String site, List<Trouble> troubles) {
  /** Stands for the site where there is none. */
  static final String NO_SITE = "none";

  private static final int MARK_LENGTH = 12;

  Edition {
    troubles = List.copyOf(troubles);
  }

  boolean isPublished() {
    return !site.equals(NO_SITE);
  }

  /** A short word for the troubles; empty where there are none. */
  String mark() {
    return troubles.isEmpty()
        ? ""
        : Hash.of(troubles.toString().getBytes(StandardCharsets.UTF_8)).substring(0, MARK_LENGTH);
  }
}
