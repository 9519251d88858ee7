/**
 * What the tool adds to a journal at the builder's word. Enters: a folder and a date. Leaves: new
 * files, each whole or not there; none is ever written over. Start at {@link
 * ribband.desk.NewJournal} and {@link ribband.desk.NewEntry}.
 */
package ribband.desk;
