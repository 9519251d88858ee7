package ribband.chart;

import java.util.ArrayList;
import java.util.List;
import ribband.chart.PhaseBars.Bar;
import ribband.chart.PhaseBars.Phase;
import ribband.chart.PhaseBars.State;

/** Draws one chart of phases for one width. */
record PhaseBarsSheet(List<Phase> phases, Yardstick yardstick) {
  private static final int TOP = 4;
  private static final int THICKNESS = 16;
  private static final int MOST_NAME = 240;

  /** How far a station line stands out of its bar, above and below. */
  static final int STATION = 5;

  Table table() {
    List<Table.Row> rows =
        phases.stream()
            .map(
                phase ->
                    Table.Row.of(
                        phase.name(),
                        List.of(
                            yardstick.figure(phase.actual()),
                            phase.plan().isEmpty() ? "–" : yardstick.figure(phase.plan().get(0)))))
            .toList();
    long actual = phases.stream().map(Phase::actual).reduce(0L, Math::addExact);
    List<Long> plans = phases.stream().flatMap(phase -> phase.plan().stream()).toList();
    String plan =
        plans.isEmpty() ? "–" : yardstick.figure(plans.stream().reduce(0L, Math::addExact));
    return new Table(
        "Phase",
        List.of(yardstick.what(), "Planned"),
        rows,
        List.of(Table.Row.of("All", List.of(yardstick.figure(actual), plan))));
  }

  private static final int GAP = 12;

  private int pitch(Size size) {
    return size == Size.NARROW ? 50 + second() : 34;
  }

  /** From the top of its strip to the bar; on a phone the lettering stands in it. */
  private int drop(Size size) {
    return size == Size.NARROW ? 26 + second() : 10;
  }

  /**
   * On a phone, what a second line takes: where one has no room for a name and its figures, all
   * have two.
   */
  private int second() {
    boolean fits =
        phases.stream()
            .allMatch(
                phase ->
                    Lettering.width(phase.name()) + GAP + Lettering.width(figures(phase))
                        <= Size.NARROW.width());
    return fits ? 0 : Lettering.LINE;
  }

  PhaseBars draw(Size size) {
    Ticks ticks = ticks();
    Frame frame = frame(size, ticks);
    Scale scale = Scale.of(ticks, frame.left(), frame.end());
    boolean isPlanned = phases.stream().anyMatch(phase -> !phase.plan().isEmpty());
    int top = TOP + (isPlanned ? Lettering.LINE : 0);
    int bottom = top + phases.size() * pitch(size) + 6;
    List<Bar> bars = new ArrayList<>();
    for (Phase phase : phases) {
      bars.add(bar(phase, top + bars.size() * pitch(size) + drop(size), size, scale, frame));
    }
    return new PhaseBars(
        frame.width(),
        bottom + Lettering.LINE + 4,
        scale.at(0),
        top,
        bottom,
        Rule.spaced(ticks, scale, yardstick),
        bars,
        bars.stream()
            .filter(bar -> !bar.plan().isEmpty())
            .limit(1)
            .map(bar -> planName(bar, size, top, frame))
            .toList());
  }

  private Ticks ticks() {
    long most = 0;
    long least = 0;
    for (Phase phase : phases) {
      most = Math.max(most, Math.max(phase.actual(), phase.plan().stream().findFirst().orElse(0L)));
      least = Math.min(least, phase.actual());
    }
    return yardstick.ticks(least, most);
  }

  private Frame frame(Size size, Ticks ticks) {
    if (size == Size.NARROW) {
      Scale any = Scale.of(ticks, 0, 1);
      int half = Lettering.widest(Rule.at(ticks, any, yardstick).stream().map(Rule::label)) / 2;
      return new Frame(size.width(), half, half);
    }
    int name = Math.min(MOST_NAME, Lettering.widest(phases.stream().map(Phase::name)));
    int figures = Lettering.widest(phases.stream().map(this::figures));
    return new Frame(size.width(), name + 20, figures + 14);
  }

  private Bar bar(Phase phase, int y, Size size, Scale scale, Frame frame) {
    int zero = scale.at(0);
    int end = scale.at(phase.actual());
    List<Integer> plan = phase.plan().stream().map(scale::at).toList();
    String figures = figures(phase);
    Label name;
    Label amount;
    if (size == Size.NARROW) {
      String fitting = Lettering.fit(phase.name(), frame.width());
      name = new Label(0, y - 9 - second(), Label.Anchor.START, fitting);
      amount =
          second() == 0
              ? new Label(frame.width(), y - 9, Label.Anchor.END, figures)
              : new Label(0, y - 9, Label.Anchor.START, figures);
    } else {
      int furthest = Math.max(Math.max(zero, end), plan.stream().findFirst().orElse(zero));
      name = new Label(0, y + 13, Label.Anchor.START, Lettering.fit(phase.name(), MOST_NAME));
      amount = new Label(furthest + 10, y + 13, Label.Anchor.START, figures);
    }
    return new Bar(
        name,
        Math.min(zero, end),
        y,
        Math.abs(end - zero),
        THICKNESS,
        phase.weight(),
        plan,
        amount);
  }

  /** Over the topmost strip, where no lettering of a bar stands. */
  private static Label planName(Bar bar, Size size, int top, Frame frame) {
    String text = "plan";
    int half = Lettering.width(text) / 2;
    int x = Math.max(half, Math.min(bar.plan().get(0), frame.width() - half));
    int y = size == Size.NARROW ? top - 2 : bar.y() - STATION - 4;
    return new Label(x, y, Label.Anchor.MIDDLE, text);
  }

  /** {@code 47:05, 9:05 over}. */
  private String figures(Phase phase) {
    String actual = yardstick.figure(phase.actual());
    if (phase.plan().isEmpty()) {
      return actual;
    }
    long plan = phase.plan().get(0);
    if (phase.actual() == 0 && phase.state() != State.DONE) {
      return yardstick.figure(plan) + " planned";
    }
    String gap = yardstick.figure(Math.abs(phase.actual() - plan));
    // What is less than is ever said is no difference.
    if (gap.equals(yardstick.figure(0))) {
      return actual + ", as planned";
    }
    if (phase.actual() > plan) {
      return actual + ", " + gap + " over";
    }
    return actual + ", " + gap + (phase.state() == State.DONE ? " under" : " left");
  }
}
