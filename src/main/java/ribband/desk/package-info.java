/**
 * What the tool adds to a journal at the builder's word. Enters: a folder and a date. Leaves: new
 * files; none is ever written over. Start at {@link ribband.desk.NewJournal}.
 */
package ribband.desk;
