/**
 * Plan against actual, and when the work will be done. Enters: a journal with its {@link
 * ribband.ledger.Ledger} and the counts of its pieces, all as of one day; for a forecast also the
 * random source. Leaves: how each phase and the whole stand, the hours left, and the Sundays by
 * which they may be worked off. All of it is exact but what the draws bring. Start at {@link
 * ribband.plan.Standing}, go on with {@link ribband.plan.HoursLeft} and {@link
 * ribband.plan.Forecast}.
 */
package ribband.plan;
