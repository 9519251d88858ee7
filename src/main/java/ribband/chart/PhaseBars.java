package ribband.chart;

import java.util.ArrayList;
import java.util.List;

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
    return new Chart<>(
        caption,
        draw(phases, yardstick, Sheet.wide(phases, yardstick)),
        draw(phases, yardstick, Sheet.narrow(phases, yardstick)),
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

  /** Where names stand: beside the bars on a wide sheet, above them on a narrow one. */
  private record Sheet(Frame frame, int pitch, int nameDrop) {
    static Sheet wide(List<Phase> phases, Yardstick yardstick) {
      int names = phases.stream().mapToInt(phase -> Lettering.width(phase.name)).max().orElse(0);
      int left = Math.min(names, MOST_NAME) + 16;
      return new Sheet(new Frame(Frame.WIDE, left, figureRoom(phases, yardstick), 0), 38, 0);
    }

    static Sheet narrow(List<Phase> phases, Yardstick yardstick) {
      return new Sheet(new Frame(Frame.NARROW, 4, figureRoom(phases, yardstick), 0), 56, 18);
    }

    boolean isWide() {
      return nameDrop == 0;
    }

    private static int figureRoom(List<Phase> phases, Yardstick yardstick) {
      return 12
          + phases.stream()
              .mapToInt(phase -> Lettering.width(figures(phase, yardstick)))
              .max()
              .orElse(0);
    }
  }

  private static PhaseBars draw(List<Phase> phases, Yardstick yardstick, Sheet sheet) {
    Frame frame = sheet.frame;
    Ticks ticks = ticks(phases, yardstick);
    Scale scale = Scale.of(ticks, frame.left(), frame.end());
    int top = 4;
    int bottom = top + phases.size() * sheet.pitch + 8;
    List<Bar> bars = new ArrayList<>();
    for (int i = 0; i < phases.size(); i++) {
      int y = top + i * sheet.pitch + sheet.nameDrop + (sheet.pitch - sheet.nameDrop - BAR) / 2 + 4;
      bars.add(bar(phases.get(i), y, scale, yardstick, sheet));
    }
    List<Rule> rules = Rule.at(ticks, scale, yardstick);
    return new PhaseBars(
        frame.width(), bottom + Lettering.LINE + 4, scale.at(0), top, bottom, rules, bars);
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

  private static Bar bar(Phase phase, int y, Scale scale, Yardstick yardstick, Sheet sheet) {
    int zero = scale.at(0);
    int end = scale.at(phase.actual);
    List<Integer> plan = phase.plan.stream().map(scale::at).toList();
    int furthest = Math.max(Math.max(zero, end), plan.stream().findFirst().orElse(zero));
    Label name =
        sheet.isWide()
            ? new Label(
                sheet.frame.left() - 12,
                y + 13,
                Label.Anchor.END,
                Lettering.fit(phase.name, MOST_NAME))
            : new Label(
                sheet.frame.left(),
                y - 9,
                Label.Anchor.START,
                Lettering.fit(phase.name, sheet.frame.width() - 8));
    return new Bar(
        name,
        new Block(Math.min(zero, end), y, Math.abs(end - zero), BAR, phase.hatch),
        plan,
        new Label(furthest + 10, y + 13, Label.Anchor.START, figures(phase, yardstick)));
  }

  private static String figures(Phase phase, Yardstick yardstick) {
    String actual = yardstick.figure(phase.actual);
    return phase.plan.isEmpty() ? actual : actual + " of " + yardstick.figure(phase.plan.get(0));
  }
}
