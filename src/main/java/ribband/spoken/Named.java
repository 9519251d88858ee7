package ribband.spoken;

import java.util.Optional;
import ribband.journal.Phase;
import ribband.journal.PieceKind;

/**
 * What a name stands for in a project; it may be a phase and a kind of pieces at once.
 *
 * @param side folded, where a kind has a side of that name
 * @param form how many a name of pieces speaks of
 */
record Named(Optional<Phase> phase, Optional<PieceKind> kind, Form form, Optional<String> side) {
  static final Named NOTHING =
      new Named(Optional.empty(), Optional.empty(), Form.ONE, Optional.empty());

  /** Whether the name is that of one piece or of several. */
  enum Form {
    ONE,
    SEVERAL
  }

  Named withPhase(Phase phase) {
    return new Named(Optional.of(phase), kind, form, side);
  }

  Named withKind(PieceKind kind, Form form) {
    return new Named(phase, Optional.of(kind), form, side);
  }

  Named withSide(String side) {
    return new Named(phase, kind, form, Optional.of(side));
  }

  boolean isNothing() {
    return equals(NOTHING);
  }
}
