package ribband.pieces;

import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.IntStream;

/**
 * Pieces that were all told by number.
 *
 * @param done in order
 * @param total how many there are, numbered from 1
 */
public record Numbered(List<Integer> done, int total) {
  public Numbered {
    done = List.copyOf(done);
  }

  /** The others, in order. */
  public List<Integer> left() {
    Set<Integer> made = new TreeSet<>(done);
    return IntStream.rangeClosed(1, total).filter(n -> !made.contains(n)).boxed().toList();
  }
}
