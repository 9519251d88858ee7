package ribband.spoken;

import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * What one line says; each list in the order said.
 *
 * @param worked at most 24 hours in all; a phase may stand more than once
 * @param phase the id of the first phase named, with hours or without
 * @param loose all that was not understood
 */
public record Spoken(
    List<Worked> worked,
    Optional<String> phase,
    List<Spent> spent,
    List<Piece> pieces,
    List<Loose> loose) {
  public Spoken {
    worked = List.copyOf(worked);
    Objects.requireNonNull(phase);
    spent = List.copyOf(spent);
    pieces = List.copyOf(pieces);
    loose = List.copyOf(loose);
  }
}
