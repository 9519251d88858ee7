/**
 * The journal as values. Enters: a folder of text. Leaves: a {@link ribband.journal.Journal} - the
 * project and its entries, checked and typed - and every problem found on the way. Text becomes
 * located trees, trees become records, records are checked against each other. Start at {@link
 * ribband.journal.JournalReader}.
 */
package ribband.journal;
