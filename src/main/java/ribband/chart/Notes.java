package ribband.chart;

import java.util.List;
import java.util.Optional;

/**
 * Sets short notes beside the line they tell of, each at the end of a thin upright leader: as near
 * as there is room, so that no text runs into another, into a leader or into the line.
 */
final class Notes {
  private static final int NEAREST = 16;
  private static final int STEP = 10;
  private static final int FARTHEST = 300;
  private static final int OVERHANG = 2;

  /** From the ring on the line to where the leader begins. */
  private static final int RING = 4;

  /** Where a text stands, seen from its thing. */
  enum Side {
    ABOVE_LEFT,
    ABOVE_RIGHT,
    BELOW_LEFT,
    BELOW_RIGHT,
    /** In the middle, or as far aside as the sheet asks. */
    ABOVE;

    private boolean isAbove() {
      return this != BELOW_LEFT && this != BELOW_RIGHT;
    }

    /** The text over or under a thing at x, on a sheet of some width. */
    private Label label(int x, int base, int width, String text) {
      return switch (this) {
        case ABOVE_LEFT, BELOW_LEFT -> new Label(x + OVERHANG, base, Label.Anchor.END, text);
        case ABOVE_RIGHT, BELOW_RIGHT -> new Label(x - OVERHANG, base, Label.Anchor.START, text);
        case ABOVE -> {
          int room = Lettering.width(text);
          int start = Math.max(0, Math.min(x - room / 2, width - room));
          yield new Label(start, base, Label.Anchor.START, text);
        }
      };
    }
  }

  /** A thing on the drawing, and what is told of it. */
  record Note(int x, int y, String text) {}

  private final Clearance clearance;
  private final List<Side> sides;

  /**
   * @param sides the best first
   */
  Notes(Clearance clearance, List<Side> sides) {
    this.clearance = clearance;
    this.sides = List.copyOf(sides);
  }

  /** One callout for each note, in their order; the first note chooses first. */
  List<Callout> lay(List<Note> notes) {
    notes.forEach(note -> clearance.take(new Box(note.x, note.y, note.x, note.y).grown(RING)));
    return notes.stream().map(note -> place(note).orElseGet(() -> untold(note))).toList();
  }

  private static Callout untold(Note note) {
    return new Callout(note.x, note.y, note.y, new Label(note.x, note.y, Label.Anchor.START, ""));
  }

  private Optional<Callout> place(Note note) {
    for (int away = NEAREST; away <= FARTHEST; away += STEP) {
      for (Side side : sides) {
        Optional<Callout> callout = place(note, side, away);
        if (callout.isPresent()) {
          return callout;
        }
      }
    }
    return Optional.empty();
  }

  private Optional<Callout> place(Note note, Side side, int away) {
    int base = side.isAbove() ? note.y - away : note.y + away + Lettering.RISE;
    Label label = side.label(note.x, base, clearance.width(), note.text);
    int head = side.isAbove() ? base + Lettering.DROP : base - Lettering.RISE - 1;
    Box leader = leader(note, head);
    if (!clearance.isFree(label.box()) || !clearance.isClear(leader)) {
      return Optional.empty();
    }
    clearance.take(label.box());
    clearance.take(leader);
    return Optional.of(new Callout(note.x, note.y, head, label));
  }

  /** From just outside the ring, which is taken, to the text. */
  private static Box leader(Note note, int head) {
    int clear = RING + 4;
    return head < note.y
        ? new Box(note.x, Math.min(head, note.y - clear), note.x, note.y - clear)
        : new Box(note.x, note.y + clear, note.x, Math.max(head, note.y + clear));
  }
}
