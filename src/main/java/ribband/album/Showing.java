package ribband.album;

import java.util.List;
import java.util.Optional;
import ribband.journal.Entry;
import ribband.prose.Surroundings;

/**
 * Where a text will be shown, if it will: known to whoever makes pages, needed while the text is
 * still parsed, as nobody could hold the parsed texts of a whole journal.
 */
@FunctionalInterface
public interface Showing {
  /** Nothing is shown; texts are only checked. */
  Showing NOWHERE = (entry, shots) -> Optional.empty();

  /**
   * What the links and pictures of an entry's text stand for.
   *
   * @param shots the entry's pictures
   * @return empty where the entry has no page
   */
  Optional<Surroundings> of(Entry entry, List<Shot> shots);
}
