package ribband.chart;

import java.util.List;

/**
 * A hairline across the drawing.
 *
 * @param at its height, or its distance from the left where it stands upright
 * @param label what it stands for; empty where there is no room for it
 */
public record Rule(int at, String label) {
  private static final int OVER = 4;

  static List<Rule> at(Ticks ticks, Scale scale, Yardstick yardstick) {
    return ticks.values().stream()
        .map(value -> new Rule(scale.at(value), label(value, ticks, yardstick)))
        .toList();
  }

  /** The furthest one names the unit. */
  private static String label(long value, Ticks ticks, Yardstick yardstick) {
    boolean isFurthest = value == (ticks.to() > 0 ? ticks.to() : ticks.from());
    return (isFurthest ? yardstick.furthest() : yardstick.tick()).apply(value);
  }

  /** Its lettering, on it at the left edge. */
  Label lettering() {
    return new Label(0, at - OVER, Label.Anchor.START, label);
  }

  /** Upright ones; labels that would run into each other are left out, never that of zero. */
  static List<Rule> spaced(Ticks ticks, Scale scale, Yardstick yardstick) {
    List<Rule> all = at(ticks, scale, yardstick);
    int widest = Lettering.widest(all.stream().map(Rule::label));
    int apart = Math.max(1, Math.abs(scale.at(ticks.step()) - scale.at(0)));
    int every = (widest + 6) / apart + 1;
    return ticks.values().stream()
        .map(
            value ->
                value / ticks.step() % every == 0
                    ? new Rule(scale.at(value), label(value, ticks, yardstick))
                    : new Rule(scale.at(value), ""))
        .toList();
  }
}
