package ribband.chart;

import java.util.List;

/**
 * What each phase took, beside its plan: a bar with the plan as a station line across it.
 *
 * @param zero distance of the zero line from the left
 * @param top where the rules begin
 * @param bottom where the rules end and their labels stand below
 * @param rules upright, least first
 * @param planName names the first station line; none where nothing is planned
 */
public record PhaseBars(
    int width,
    int height,
    int zero,
    int top,
    int bottom,
    List<Rule> rules,
    List<Bar> bars,
    List<Label> planName) {
  public PhaseBars {
    rules = List.copyOf(rules);
    bars = List.copyOf(bars);
    planName = List.copyOf(planName);
  }

  /** Whether more is to come. */
  public enum State {
    OPEN,
    DONE
  }

  /**
   * One phase's figures.
   *
   * @param actual below zero where more came back than went in
   * @param plan none or one, zero or more
   */
  public record Phase(String name, Weight weight, State state, long actual, List<Long> plan) {
    public Phase {
      plan = List.copyOf(plan);
      if (plan.size() > 1) {
        throw new IllegalArgumentException("plans " + plan);
      }
    }
  }

  /**
   * One phase's bar.
   *
   * @param x its left edge
   * @param length 0 or more
   * @param plan where the station line stands; none or one
   * @param figures what it took, and how that stands to the plan
   */
  public record Bar(
      Label name,
      int x,
      int y,
      int length,
      int thickness,
      Weight weight,
      List<Integer> plan,
      Label figures) {
    public Bar {
      plan = List.copyOf(plan);
      if (length < 0) {
        throw new IllegalArgumentException("bar of " + length);
      }
    }
  }

  /** The chart of some phases, at least one, in their order. */
  public static Chart<PhaseBars> chart(Caption caption, List<Phase> phases, Yardstick yardstick) {
    PhaseBarsSheet sheet = new PhaseBarsSheet(phases, yardstick);
    return Chart.of(caption, sheet::draw, sheet.table());
  }
}
