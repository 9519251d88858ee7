package ribband.album;

import java.util.List;
import java.util.Optional;
import ribband.journal.Entry;
import ribband.prose.Surroundings;

/**
 * Where a text will be shown, if it will: known to whoever makes pages, needed while the text is
 * still parsed, as nobody could hold the parsed texts of a whole journal.
 */
public interface Showing {
  /** Nothing is shown; texts are only checked. */
  Showing NOWHERE =
      new Showing() {
        @Override
        public Optional<Surroundings> of(Entry entry, List<Shot> shots) {
          return Optional.empty();
        }

        @Override
        public Optional<Surroundings> about(String file) {
          return Optional.empty();
        }
      };

  /**
   * What the links and pictures of an entry's text stand for; a link leads to a whole page.
   *
   * @param shots the entry's pictures
   * @return empty where the entry has no page
   */
  Optional<Surroundings> of(Entry entry, List<Shot> shots);

  /**
   * The same for the words about the boat, which show no pictures.
   *
   * @param file where they are written
   */
  Optional<Surroundings> about(String file);
}
