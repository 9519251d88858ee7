package ribband.album;

import java.util.List;
import java.util.Optional;
import ribband.journal.Entry;
import ribband.prose.Manuscript;

/**
 * An entry as it can be shown.
 *
 * @param shots all its pictures in the order they are shown, each file once
 */
public record Leaf(Entry entry, Manuscript words, List<Shot> shots) {
  public Leaf {
    shots = List.copyOf(shots);
  }

  /** The picture that stands for the entry: the cover, else the first. */
  public Optional<Shot> cover() {
    return shots.stream().filter(Shot::cover).findFirst().or(() -> shots.stream().findFirst());
  }
}
