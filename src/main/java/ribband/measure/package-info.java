/**
 * Hours, money, quantities with units, dates: exact values. Enters: text as the builder writes it.
 * Leaves: values that add up exactly, and the same values said to a person ({@link
 * ribband.measure.Saying}). Nothing here knows a journal. Start at {@link ribband.measure.Hours}
 * and {@link ribband.measure.Money}.
 */
package ribband.measure;
