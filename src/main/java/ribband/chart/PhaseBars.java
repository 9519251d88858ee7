package ribband.chart;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/**
 * What each phase took, beside its plan: a hatched bar with the plan as a station mark on it.
 *
 * @param zero distance of the zero line from the left
 * @param top where the rules begin
 * @param bottom where the rules end and their labels stand below
 * @param rules upright, least first
 */
public record PhaseBars(
    int width, int height, int zero, int top, int bottom, List<Rule> rules, List<Bar> bars) {
  private static final int TOP = 4;
  private static final int BAR = 18;
  private static final int MOST_NAME = 240;

  public PhaseBars {
    rules = List.copyOf(rules);
    bars = List.copyOf(bars);
  }

  /**
   * One phase's figures.
   *
   * @param actual below zero where more came back than went in
   * @param plan none or one, zero or more
   */
  public record Phase(String name, int hatch, long actual, List<Long> plan) {
    public Phase {
      Hatch.checked(hatch);
      plan = List.copyOf(plan);
      if (plan.size() > 1) {
        throw new IllegalArgumentException("plans " + plan);
      }
    }
  }

  /**
   * One phase's bar.
   *
   * @param block may be of no width
   * @param plan where the station mark stands; none or one
   * @param figures what it took, and of how much
   */
  public record Bar(Label name, Block block, List<Integer> plan, Label figures) {
    public Bar {
      plan = List.copyOf(plan);
    }
  }

  /** The chart of some phases, at least one, in their order. */
  public static Chart<PhaseBars> chart(Caption caption, List<Phase> phases, Yardstick yardstick) {
    Ticks ticks = ticks(phases, yardstick);
    return new Chart<>(
        caption,
        wide(phases, ticks, yardstick),
        narrow(phases, ticks, yardstick),
        table(phases, yardstick));
  }

  private static Table table(List<Phase> phases, Yardstick yardstick) {
    List<Table.Row> rows =
        phases.stream()
            .map(
                phase ->
                    Table.Row.of(
                        phase.name,
                        List.of(
                            yardstick.figure(phase.actual),
                            phase.plan.isEmpty() ? "–" : yardstick.figure(phase.plan.get(0)))))
            .toList();
    long actual = phases.stream().map(Phase::actual).reduce(0L, Math::addExact);
    List<Long> plans = phases.stream().flatMap(phase -> phase.plan.stream()).toList();
    String plan =
        plans.isEmpty() ? "–" : yardstick.figure(plans.stream().reduce(0L, Math::addExact));
    return new Table(
        "Phase",
        List.of(yardstick.what(), "Planned"),
        rows,
        List.of(Table.Row.of("All", List.of(yardstick.figure(actual), plan))));
  }

  /** Where the lettering of a bar stands. */
  private enum Lettered {
    /** The name before it, the figures after it. */
    BESIDE,
    /** Both on a line above it. */
    ABOVE;

    int pitch() {
      return switch (this) {
        case BESIDE -> 38;
        case ABOVE -> 54;
      };
    }

    /** From the top of its strip to the bar. */
    int drop() {
      return switch (this) {
        case BESIDE -> 14;
        case ABOVE -> 30;
      };
    }
  }

  private static PhaseBars wide(List<Phase> phases, Ticks ticks, Yardstick yardstick) {
    int name = widest(phases.stream().map(Phase::name));
    int figures = widest(phases.stream().map(phase -> figures(phase, yardstick)));
    Frame frame = new Frame(Frame.WIDE, Math.min(name, MOST_NAME) + 16, figures + 12, 0);
    return draw(phases, ticks, yardstick, frame, Lettered.BESIDE);
  }

  private static PhaseBars narrow(List<Phase> phases, Ticks ticks, Yardstick yardstick) {
    int half = widest(ticks.values().stream().map(yardstick.tick()::apply)) / 2;
    return draw(phases, ticks, yardstick, new Frame(Frame.NARROW, half, half, 0), Lettered.ABOVE);
  }

  private static int widest(Stream<String> texts) {
    return texts.mapToInt(Lettering::width).max().orElse(0);
  }

  private static PhaseBars draw(
      List<Phase> phases, Ticks ticks, Yardstick yardstick, Frame frame, Lettered lettered) {
    Scale scale = Scale.of(ticks, frame.left(), frame.end());
    int bottom = TOP + phases.size() * lettered.pitch() + 8;
    List<Bar> bars = new ArrayList<>();
    for (Phase phase : phases) {
      int y = TOP + bars.size() * lettered.pitch() + lettered.drop();
      bars.add(bar(phase, y, scale, yardstick, frame, lettered));
    }
    return new PhaseBars(
        frame.width(),
        bottom + Lettering.LINE + 4,
        scale.at(0),
        TOP,
        bottom,
        Rule.spaced(ticks, scale, yardstick),
        bars);
  }

  private static Ticks ticks(List<Phase> phases, Yardstick yardstick) {
    long most = 0;
    long least = 0;
    for (Phase phase : phases) {
      most = Math.max(most, Math.max(phase.actual, phase.plan.stream().findFirst().orElse(0L)));
      least = Math.min(least, phase.actual);
    }
    return yardstick.ticks(least, most);
  }

  private static Bar bar(
      Phase phase, int y, Scale scale, Yardstick yardstick, Frame frame, Lettered lettered) {
    int zero = scale.at(0);
    int end = scale.at(phase.actual);
    List<Integer> plan = phase.plan.stream().map(scale::at).toList();
    int furthest = Math.max(Math.max(zero, end), plan.stream().findFirst().orElse(zero));
    String figures = figures(phase, yardstick);
    Label name =
        switch (lettered) {
          case BESIDE ->
              new Label(
                  frame.left() - 12,
                  y + 13,
                  Label.Anchor.END,
                  Lettering.fit(phase.name, MOST_NAME));
          case ABOVE ->
              new Label(
                  0,
                  y - 12,
                  Label.Anchor.START,
                  Lettering.fit(phase.name, frame.width() - Lettering.width(figures) - 12));
        };
    Label amount =
        switch (lettered) {
          case BESIDE -> new Label(furthest + 10, y + 13, Label.Anchor.START, figures);
          case ABOVE -> new Label(frame.width(), y - 12, Label.Anchor.END, figures);
        };
    Block block = new Block(Math.min(zero, end), y, Math.abs(end - zero), BAR, phase.hatch);
    return new Bar(name, block, plan, amount);
  }

  private static String figures(Phase phase, Yardstick yardstick) {
    String actual = yardstick.figure(phase.actual);
    return phase.plan.isEmpty() ? actual : actual + " of " + yardstick.figure(phase.plan.get(0));
  }
}
