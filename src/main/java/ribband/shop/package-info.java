/**
 * Shop arithmetic that knows no journal: how much to spread and mix, how long it stays soft and
 * cures at a temperature, boards and strips. Enters: quantities, and what a maker's data sheet
 * says. Leaves: exact quantities, times, or the reason why none can be told ({@link
 * ribband.shop.Figure}). Start at {@link ribband.shop.MixPlan} and {@link ribband.shop.StripPlan}.
 */
package ribband.shop;
