package ribband.stock;

import java.time.LocalDate;
import java.util.Map;
import java.util.Optional;
import ribband.journal.Entry;
import ribband.journal.Outlay;
import ribband.measure.Ordered;
import ribband.measure.Quantity;

/**
 * How far a purchase went, first in first out: what it did until it was empty.
 *
 * @param from what came: the shelf at the start, a purchase, a find
 * @param date since when it is there; empty for the start
 * @param outlay of a purchase
 * @param left of it now
 * @param nights on which it was drawn from
 * @param area glued or coated with it, as far as entries say so
 * @param pieces by kind
 * @param emptied the day it was used up
 */
public record Kit(
    Move.Kind from,
    Optional<LocalDate> date,
    Optional<Entry> entry,
    Optional<Outlay> outlay,
    Quantity amount,
    Quantity left,
    int nights,
    int joints,
    int coats,
    Quantity area,
    Map<String, Integer> pieces,
    Optional<LocalDate> emptied) {
  public Kit {
    pieces = Ordered.copy(pieces);
  }

  /** Whether anything was ever taken from it. */
  public boolean isOpened() {
    return nights > 0 || left.isMoreThan(amount) || amount.isMoreThan(left);
  }
}
