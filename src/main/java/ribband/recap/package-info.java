/**
 * A month or a year told. Enters: a journal and its ledger; an album for pictures. Leaves: a {@link
 * ribband.recap.Recap}, figures said as a builder would say them; sentences; the picture that
 * stands for it. Start at {@link ribband.recap.Recaps}.
 */
package ribband.recap;
