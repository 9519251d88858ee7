package ribband.chart;

/**
 * A label above the plot with a leader down to the thing it names.
 *
 * @param x of the leader's upright part
 * @param foot height at which the leader ends
 * @param footX where it ends; right of x where the leader turns aside
 * @param label its text; stands at the leader's head
 */
public record Callout(int x, int foot, int footX, Label label) {}
