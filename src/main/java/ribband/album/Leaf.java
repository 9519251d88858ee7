package ribband.album;

import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import ribband.journal.Entry;

/**
 * An entry as it can be shown.
 *
 * @param opening the first words of its text, plain; may be empty
 * @param html its text, made safe; empty where it is not to be shown
 * @param shots all its pictures in the order they are shown, each file once
 */
public record Leaf(Entry entry, String opening, Supplier<String> html, List<Shot> shots) {
  public Leaf {
    shots = List.copyOf(shots);
  }

  /** The picture that stands for the entry: the cover, else the first. */
  public Optional<Shot> cover() {
    return shots.stream().filter(Shot::cover).findFirst().or(() -> shots.stream().findFirst());
  }
}
