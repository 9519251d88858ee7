package ribband.journal;

import ribband.journal.Node.Text;
import ribband.measure.Quantity;
import ribband.problem.Place;

/**
 * An amount of a material as an entry writes it, with its places, for checks across entries.
 *
 * @param place where the amount stands
 */
record Mention(Text material, Quantity amount, Place place, How how) {
  /** What an entry says of the amount. */
  enum How {
    USED,
    LEFT,
    BOUGHT
  }
}
