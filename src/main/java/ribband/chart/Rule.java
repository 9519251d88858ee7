package ribband.chart;

import java.util.List;

/**
 * A hairline across the drawing.
 *
 * @param at its height, or its distance from the left where it stands upright
 */
public record Rule(int at, String label) {
  static List<Rule> at(Ticks ticks, Scale scale, Yardstick yardstick) {
    return ticks.values().stream()
        .map(value -> new Rule(scale.at(value), yardstick.tick().apply(value)))
        .toList();
  }
}
