package ribband.journal;

import java.util.List;
import java.util.Optional;
import ribband.problem.Place;

/**
 * Pieces finished in a night.
 *
 * @param kind the kind's name as project.yaml spells it
 * @param side where the kind has sides and one was named
 * @param count how many; below zero takes scrapped ones back
 * @param numbers which ones, where they were named, a scrapped one below zero; else empty
 * @param place of the count, or of the list of numbers
 */
public record PieceWork(
    String kind, Optional<String> side, int count, List<Integer> numbers, Place place) {
  public PieceWork {
    numbers = List.copyOf(numbers);
  }
}
