package ribband.chart;

/**
 * A label above the plot with an upright leader down to the thing it names.
 *
 * @param x of the leader
 * @param foot height at which the leader ends
 * @param label its text; stands at the leader's head
 */
public record Callout(int x, int foot, Label label) {}
