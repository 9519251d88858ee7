package ribband.chart;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * The order of work: a line for each step, what comes first above, and a lead from each step to
 * those that must follow it. The further a step stands to the right, the more must come before it.
 *
 * @param marks in their order
 * @param leads in the order of the steps they end at
 */
public record WorkOrder(int width, int height, List<Mark> marks, List<Lead> leads) {
  private static final int LINE = 26;
  private static final int MARGIN = 10;
  private static final int STEP = 24;
  private static final int GAP = 14;

  /** The lines a drawing holds; longer orders are told by their list alone. */
  public static final int MOST = 60;

  public WorkOrder {
    marks = List.copyOf(marks);
    leads = List.copyOf(leads);
  }

  /** How far a step is, or that it is none of the jobs. */
  public enum Sign {
    READY("ready"),
    HELD("held"),
    WAITING("waiting"),
    /** Pieces or a phase that jobs wait for. */
    GOAL("goal");

    private final String word;

    Sign(String word) {
      this.word = word;
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

  /** A step's sign and words, with the rule between them. */
  public record Mark(int x, int y, Sign sign, Label label) {}

  /** From one sign down and to another one. */
  public record Lead(int x, int fromY, int toX, int toY) {
    /** How far the corner is rounded off. */
    public int bend() {
      return Math.min(8, Math.min(toX - x, toY - fromY));
    }
  }

  /**
   * The chart of an order.
   *
   * @param steps one at least, each behind those it comes after
   */
  public static Chart<WorkOrder> chart(Caption caption, List<Step> steps) {
    List<Step> drawn = steps.subList(0, Math.min(MOST, steps.size()));
    return new Chart<>(caption, draw(drawn, Frame.WIDE), draw(drawn, Frame.NARROW), table(steps));
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
    List<Integer> depths = depths(steps);
    int deepest = depths.stream().mapToInt(d -> d).max().orElse(0);
    int most = width * 2 / 5;
    // An order deeper than the sheet is pressed together; a lead still goes to the right.
    int span = Math.min(deepest * STEP, most);
    List<Integer> across =
        depths.stream().map(depth -> MARGIN + (deepest == 0 ? 0 : depth * span / deepest)).toList();
    int words = MARGIN + span + GAP;
    List<Mark> marks = new ArrayList<>();
    List<Lead> leads = new ArrayList<>();
    for (int i = 0; i < steps.size(); i++) {
      Step step = steps.get(i);
      int y = LINE / 2 + i * LINE;
      String text = Lettering.fit(step.words, width - words);
      marks.add(
          new Mark(across.get(i), y, step.sign, new Label(words, y + 5, Label.Anchor.START, text)));
      for (int before : step.after) {
        leads.add(new Lead(across.get(before), LINE / 2 + before * LINE, across.get(i), y));
      }
    }
    return new WorkOrder(width, steps.size() * LINE, marks, leads);
  }

  private static List<Integer> depths(List<Step> steps) {
    List<Integer> depths = new ArrayList<>();
    for (Step step : steps) {
      depths.add(step.after.stream().mapToInt(depths::get).max().orElse(-1) + 1);
    }
    return depths;
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
