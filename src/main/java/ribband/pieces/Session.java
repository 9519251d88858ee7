package ribband.pieces;

import ribband.journal.Entry;
import ribband.measure.Hours;

/**
 * An entry that made some pieces of a kind.
 *
 * @param pieces 1 or more, those it took back not counted
 * @param hours that went into them; none where none are written
 */
public record Session(Entry entry, int pieces, Hours hours) {}
