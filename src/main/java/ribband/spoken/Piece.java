package ribband.spoken;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import ribband.journal.PieceKind;

/**
 * Pieces of one kind that were said to be done.
 *
 * @param side as the project spells it; empty where none was said
 * @param numbers which ones, in the order said; empty unless they were named; below zero where that
 *     one is taken back
 * @param count how many; below zero where they are taken back
 */
public record Piece(PieceKind kind, Optional<String> side, List<Integer> numbers, int count) {
  public Piece {
    Objects.requireNonNull(kind);
    Objects.requireNonNull(side);
    numbers = List.copyOf(numbers);
  }
}
