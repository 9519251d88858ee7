/**
 * Counted work: pieces done and left, how many a session makes, how long one takes, and what that
 * says of the rest. Enters: a journal. Leaves: counts by kind. Start at {@link
 * ribband.pieces.PieceCount}.
 */
package ribband.pieces;
