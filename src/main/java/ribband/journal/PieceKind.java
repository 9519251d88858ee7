package ribband.journal;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import ribband.measure.Hours;
import ribband.measure.Quantity;

/**
 * Pieces that are counted, such as strakes.
 *
 * @param total how many the boat has, over both sides; 1 or more
 * @param sides empty, or the names of the sides they are numbered on
 * @param glueArea of one piece
 * @param clamps that one piece holds while it cures
 * @param hours planned for one piece
 */
public record PieceKind(
    String name,
    int total,
    Optional<String> phase,
    List<String> sides,
    Optional<Quantity> glueArea,
    Optional<String> adhesive,
    OptionalInt clamps,
    Optional<Hours> hours) {
  public PieceKind {
    sides = List.copyOf(sides);
  }
}
