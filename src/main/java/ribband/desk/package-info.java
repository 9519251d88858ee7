/**
 * What the tool adds to a journal at the builder's word. Enters: a folder and a date; for a night
 * also the journal, what was said and where pictures lie; for the past its sessions. Leaves: new
 * files, each whole or not there; none is ever written over. Start at {@link
 * ribband.desk.NewJournal}, {@link ribband.desk.Tonight} and {@link ribband.desk.Bringing}.
 */
package ribband.desk;
