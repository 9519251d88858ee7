package ribband.album;

import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import ribband.journal.Entry;
import ribband.measure.Saying;

/**
 * An entry as it can be shown.
 *
 * @param opening the first words of its text, plain; may be empty
 * @param words the first words of all its text, plain, for search; may be empty
 * @param html its text, made safe; empty where it is not to be shown
 * @param shots all its pictures in the order they are shown, each file once
 */
public record Leaf(
    Entry entry, String opening, String words, Supplier<String> html, List<Shot> shots) {
  public Leaf {
    shots = List.copyOf(shots);
  }

  /** The picture that stands for the entry: the cover, else the first. */
  public Optional<Shot> cover() {
    return shots.stream().filter(Shot::cover).findFirst().or(() -> shots.stream().findFirst());
  }

  /** What a picture is to those who cannot see it: never its file's name, that tells nothing. */
  public String alt(Shot shot) {
    return shot.alt()
        .or(shot::caption)
        .orElseGet(() -> "Photograph" + which(shot) + " of " + when());
  }

  private String which(Shot shot) {
    return shots.size() == 1 ? "" : " " + (shots.indexOf(shot) + 1) + " of " + shots.size();
  }

  private String when() {
    return Saying.day(entry.date()) + ", " + entry.title();
  }
}
