/**
 * Counted work: pieces done and left. Enters: a journal. Leaves: counts by kind. Start at {@link
 * ribband.pieces.PieceCount}.
 */
package ribband.pieces;
