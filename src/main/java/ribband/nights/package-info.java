/**
 * What one night can bring: hours, clamps, cure and the resin on hand, which of them binds, and
 * what more clamps or a longer evening would change. Enters: a journal, its pieces, joints and
 * stock. Leaves: pieces a night and nights left, or the reasons why they are unknown. Start at
 * {@link ribband.nights.Nights}.
 */
package ribband.nights;
