/**
 * A month told. Enters: a ledger. Leaves: sentences, as a builder would say them. Start at {@link
 * ribband.recap.MonthSentence}.
 */
package ribband.recap;
