/**
 * Numbers to scales and shapes; no markup, no currency, no journal. Enters: exact whole numbers
 * (seconds, or a currency's smallest units) with their dates, names and hatches, and a {@link
 * ribband.chart.Yardstick} that says them. Leaves: a {@link ribband.chart.Chart}: one wide and one
 * narrow drawing in whole coordinates, and the same figures as a table; the templates in {@code
 * site-template/charts} draw it. Start at {@link ribband.chart.StackedMonths}.
 */
package ribband.chart;
