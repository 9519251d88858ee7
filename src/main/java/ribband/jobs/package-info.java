/**
 * The punch list: what can be done now, what waits for what, and the order of it all. Enters: a
 * journal, its pieces and joints. Leaves: jobs ready, held and waiting, and the longest chain of
 * nights. Start at {@link ribband.jobs.PunchList}.
 */
package ribband.jobs;
