/**
 * Totals. Enters: a {@link ribband.journal.Journal} and a {@link ribband.ledger.Selection} of it.
 * Leaves: a {@link ribband.ledger.Ledger} - hours and money by month, year, week, entry and phase,
 * running totals, ranks, records - and the {@link ribband.ledger.Purchases}. All sums are of whole
 * seconds and whole minor units. {@link ribband.ledger.TallySheet} lays a ledger out as a {@link
 * ribband.ledger.Sheet}, the same for the terminal and the site. Start at {@link
 * ribband.ledger.Ledger}.
 */
package ribband.ledger;
