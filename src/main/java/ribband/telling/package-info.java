/**
 * The build told outside the site. Enters: an album, its ledger and its stock. Leaves: the papers,
 * one page to print, with the prints and the receipts that it needs beside it. Start at {@link
 * ribband.telling.Papers}.
 */
package ribband.telling;
