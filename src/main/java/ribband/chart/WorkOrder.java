package ribband.chart;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * The order of work: a line for each step, what comes first above, and an arc from each step to
 * those that must follow it.
 *
 * @param marks in their order
 * @param arcs in the order of the steps they end at
 */
public record WorkOrder(int width, int height, List<Mark> marks, List<Arc> arcs) {
  private static final int LINE = 26;
  private static final int MARGIN = 8;
  private static final int GAP = 14;

  /** How far the arc to the next line reaches out; each line further adds the half of it. */
  private static final int REACH = 16;

  /** The lines a drawing holds; longer orders are told by their list alone. */
  public static final int MOST = 60;

  public WorkOrder {
    marks = List.copyOf(marks);
    arcs = List.copyOf(arcs);
  }

  /** How far a step is, or that it is none of the jobs. */
  public enum Sign {
    READY("ready", "ready"),
    HELD("held", "in clamps"),
    WAITING("waiting", "waits"),
    /** Pieces or a phase that jobs wait for. */
    GOAL("goal", "");

    private final String word;
    private final String said;

    Sign(String word, String said) {
      this.word = word;
      this.said = said;
    }

    /** What stands behind the job; empty for none. */
    public String said() {
      return said;
    }

    /** As the style sheet has it. */
    public String word() {
      return word;
    }
  }

  /**
   * Something to be done.
   *
   * @param name short, for the table
   * @param words for the drawing
   * @param after which of the steps come before it, all of smaller number
   * @param told what it waits for, for the table
   */
  public record Step(String name, String words, Sign sign, List<Integer> after, String told) {
    public Step {
      after = List.copyOf(after);
    }
  }

  /** A step's sign and its words. */
  public record Mark(int x, int y, Sign sign, Label label) {}

  /**
   * From one sign down to another.
   *
   * @param reach the x that draws it to the left, as the handles of a curve do
   */
  public record Arc(int x, int fromY, int toY, int reach) {}

  /**
   * The chart of an order.
   *
   * @param steps one at least, each behind those it comes after
   */
  public static Chart<WorkOrder> chart(Caption caption, List<Step> steps) {
    List<Step> drawn = steps.subList(0, Math.min(MOST, steps.size()));
    return Chart.of(caption, size -> draw(drawn, size.width()), table(steps));
  }

  private static Table table(List<Step> steps) {
    return new Table(
        "Work",
        List.of("What", "Waits for"),
        steps.stream()
            .map(step -> Table.Row.of(step.name, List.of(step.words, step.told)))
            .toList(),
        List.of());
  }

  private static WorkOrder draw(List<Step> steps, int width) {
    int most = width / 4;
    int widest = 0;
    for (int i = 0; i < steps.size(); i++) {
      for (int before : steps.get(i).after) {
        widest = Math.max(widest, Math.min(most, bulge(i - before)));
      }
    }
    int x = MARGIN + widest;
    int words = x + GAP;
    List<Mark> marks = new ArrayList<>();
    List<Arc> arcs = new ArrayList<>();
    for (int i = 0; i < steps.size(); i++) {
      Step step = steps.get(i);
      int y = LINE / 2 + i * LINE;
      // A phone has no room for words behind the jobs.
      int said = width == Size.NARROW.width() ? 0 : Lettering.width("  " + step.sign.said());
      String text = Lettering.fit(step.words, width - words - said);
      marks.add(new Mark(x, y, step.sign, new Label(words, y + 5, Label.Anchor.START, text)));
      for (int before : step.after) {
        // A curve reaches three quarters as far as its handles do.
        int reach = x - Math.min(most, bulge(i - before)) * 4 / 3;
        arcs.add(new Arc(x, LINE / 2 + before * LINE, y, reach));
      }
    }
    return new WorkOrder(width, steps.size() * LINE, marks, arcs);
  }

  private static int bulge(int lines) {
    return REACH + (lines - 1) * REACH / 2;
  }

  /** The steps that have to do with others, renumbered; the rest stand alone in the list. */
  public static List<Step> joined(List<Step> steps) {
    Set<Integer> awaited = new HashSet<>();
    steps.forEach(step -> awaited.addAll(step.after));
    List<Integer> kept = new ArrayList<>();
    Map<Integer, Integer> numbers = new HashMap<>();
    for (int i = 0; i < steps.size(); i++) {
      if (awaited.contains(i) || !steps.get(i).after.isEmpty()) {
        numbers.put(i, kept.size());
        kept.add(i);
      }
    }
    return kept.stream()
        .map(steps::get)
        .map(
            step ->
                new Step(
                    step.name,
                    step.words,
                    step.sign,
                    step.after.stream().map(numbers::get).toList(),
                    step.told))
        .toList();
  }
}
