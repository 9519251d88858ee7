/**
 * A spreadsheet of past sessions. Enters: the bytes of a file of separated values, and what the
 * builder said of its columns. Leaves: sessions, or what is wrong in which cell. Start at {@link
 * ribband.past.PastReader}.
 */
package ribband.past;
