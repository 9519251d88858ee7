/**
 * The card that is shared of a month or a year. Enters: its words, ready to stand, and a picture.
 * Leaves: a PNG in the look of the site. Start at {@link ribband.postcard.Postcard}: {@code
 * SheetPlan} sets every word and line at its place, {@code Painter} draws them.
 */
package ribband.postcard;
