package ribband.stock;

import java.time.LocalDate;
import java.util.Optional;
import ribband.journal.Entry;
import ribband.measure.Money;
import ribband.measure.Quantity;

/**
 * One thing that changed what is on the shelf.
 *
 * @param date empty for what was there when the journal began
 * @param entry the one that says so
 * @param amount how much came, or was to go
 * @param worth of what came or went: by how much the worth of the shelf, to the cent, changed, so
 *     that the moves add up to the cent
 * @param shortfall how much of the amount was not there to go
 * @param onHand what is there then; empty while nothing has told yet what is on the shelf
 * @param worthAfter what that is worth, to the cent
 */
public record Move(
    Kind kind,
    Optional<LocalDate> date,
    Optional<Entry> entry,
    Quantity amount,
    Money worth,
    Quantity shortfall,
    Optional<Quantity> onHand,
    Optional<Money> worthAfter) {

  /** What moved it. */
  public enum Kind {
    OPENING("opening", "there at the start", true),
    BOUGHT("bought", "bought", true),
    FOUND("found", "found by a count", true),
    USED("used", "used", false),
    ESTIMATED("estimated", "used, by estimate", false),
    MISSING("unrecorded", "used unrecorded", false),
    RETURNED("returned", "taken back", false);

    private final String word;
    private final String words;
    private final boolean comes;

    Kind(String word, String words, boolean comes) {
      this.word = word;
      this.words = words;
      this.comes = comes;
    }

    /** For data files. */
    public String word() {
      return word;
    }

    public String words() {
      return words;
    }

    /** Whether it adds to the shelf. */
    public boolean comes() {
      return comes;
    }

    /** Whether it was used up, written down or not. */
    public boolean isUse() {
      return this == USED || this == ESTIMATED || this == MISSING;
    }
  }

  /** How much of the amount did come or go. */
  public Quantity moved() {
    return amount.minus(shortfall);
  }
}
