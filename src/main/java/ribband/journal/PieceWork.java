package ribband.journal;

import java.util.List;
import java.util.Optional;

/**
 * Pieces finished in a night.
 *
 * @param kind the kind's name as project.yaml spells it
 * @param side where the kind has sides and one was named
 * @param count how many; below zero takes scrapped ones back
 * @param numbers which ones, where they were named; else empty
 */
public record PieceWork(String kind, Optional<String> side, int count, List<Integer> numbers) {
  public PieceWork {
    numbers = List.copyOf(numbers);
  }
}
