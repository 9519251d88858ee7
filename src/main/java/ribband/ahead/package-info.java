/**
 * All that lies ahead of a build, put together for the page and the terminal. Enters: a journal,
 * its ledger and stock, a day. Leaves: {@link ribband.ahead.Ahead}, and rows and words of it.
 */
package ribband.ahead;
