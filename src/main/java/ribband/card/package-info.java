/**
 * A phone's or a camera card's folder of pictures. Enters: the folder, which stays as it is, a
 * {@link ribband.card.Window} of time and the journal's files. Leaves: the pictures taken in that
 * time, in order and under the names they are to bear in the entry's own folder; and each other
 * file with the reason why it was left out. Start at {@link ribband.card.Card}.
 */
package ribband.card;
