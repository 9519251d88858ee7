/**
 * Totals. Enters: a {@link ribband.journal.Journal} and a {@link ribband.ledger.Selection} of it.
 * Leaves: a {@link ribband.ledger.Ledger} - hours and money by month, year, week, entry and phase,
 * running totals, ranks, records - and the {@link ribband.ledger.Purchases}. All sums are of whole
 * seconds and whole minor units. Start at {@link ribband.ledger.Ledger}.
 */
package ribband.ledger;
