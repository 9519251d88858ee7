/**
 * Numbers to scales and shapes; no markup, no currency, no journal. Enters: exact whole numbers
 * (seconds, or a currency's smallest units) with their dates and names, and a {@link
 * ribband.chart.Yardstick} that says them. Leaves: a {@link ribband.chart.Chart}: a drawing for
 * each {@link ribband.chart.Size} in whole coordinates, and the same figures as a table; the
 * templates in {@code site-template/charts} draw it. Start at {@link ribband.chart.MonthRows}.
 */
package ribband.chart;
