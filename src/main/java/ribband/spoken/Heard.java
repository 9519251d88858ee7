package ribband.spoken;

import java.util.List;
import java.util.Optional;
import ribband.journal.Phase;

/** What a part says, where every word of it is understood; or why it is not. */
sealed interface Heard {
  /** Hours, a phase, or both; one of them is there. */
  record Work(Optional<Phase> phase, Optional<TimePhrase> time) implements Heard {
    boolean isPhaseAlone() {
      return time.isEmpty();
    }

    boolean isHoursAlone() {
      return phase.isEmpty();
    }
  }

  record Cost(Spent spent) implements Heard {}

  record Count(List<Piece> pieces) implements Heard {
    public Count {
      pieces = List.copyOf(pieces);
    }
  }

  /** It begins to say something, and cannot be taken. */
  record Unclear(String why) implements Heard {}
}
