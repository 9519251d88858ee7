package ribband.postcard;

import java.util.ArrayList;
import java.util.List;

/**
 * A row of cells with words, each as wide as its words need: a short one is never cut for the sake
 * of a long one.
 *
 * @param cells from the left
 * @param widths of their words, in units
 * @param height in units
 */
record FootRow(List<Lines> cells, List<Double> widths, double height) {
  private static final Hand HAND = Hand.of(Weight.REGULAR, Ink.INK);
  private static final double LARGEST = 34;
  private static final double ALONE = 62;
  private static final double ONE_OF_TWO = 52;

  /** What does not fit into one line is broken at a space, of which an amount has none. */
  private static final int MOST_LINES = 2;

  FootRow {
    cells = List.copyOf(cells);
    widths = List.copyOf(widths);
  }

  /** Whether all words stand whole, each in one line. */
  static boolean holds(List<String> cells, double width) {
    return size(cells, width) >= Fit.SMALLEST;
  }

  static FootRow alone(List<String> cells, double width) {
    return of(cells, width, ALONE);
  }

  static FootRow oneOfTwo(List<String> cells, double width) {
    return of(cells, width, ONE_OF_TWO);
  }

  private static FootRow of(List<String> cells, double width, double least) {
    List<Double> widths = holds(cells, width) ? spread(cells, width) : shared(cells, width);
    List<Lines> fitted = new ArrayList<>();
    double height = least;
    for (int i = 0; i < cells.size(); i++) {
      Lines lines = fit(cells.get(i), widths.get(i));
      fitted.add(lines);
      height = Math.max(height, lines.cellHeight());
    }
    return new FootRow(fitted, widths, height);
  }

  private static Lines fit(String words, double width) {
    Lines one = new Fit(width, LARGEST, Fit.SMALLEST, 1).fit(words, HAND);
    return one.said() == Said.WHOLE
        ? one
        : new Fit(width, Fit.SMALLEST, Fit.SMALLEST, MOST_LINES).fit(words, HAND);
  }

  /** What all need at the size that they have in common, and as much of the rest to each. */
  private static List<Double> spread(List<String> cells, double width) {
    double size = Math.min(LARGEST, size(cells, width));
    double rest = room(cells, width) - needed(cells) * size;
    return cells.stream().map(cell -> HAND.width(cell) * size + rest / cells.size()).toList();
  }

  /** What the short ones need at the smallest size; the long ones share what is left. */
  private static List<Double> shared(List<String> cells, double width) {
    List<Double> needs = cells.stream().map(cell -> HAND.width(cell) * Fit.SMALLEST).toList();
    double left = room(cells, width);
    int waiting = cells.size();
    double most = left / waiting;
    for (double need : needs.stream().sorted().toList()) {
      most = left / waiting;
      left -= Math.min(need, most);
      waiting--;
    }
    double longest = most;
    return needs.stream().map(need -> Math.min(need, longest)).toList();
  }

  /** At which all fit, each in one line. */
  private static double size(List<String> cells, double width) {
    return room(cells, width) / needed(cells);
  }

  private static double room(List<String> cells, double width) {
    return width - 2 * SheetPlan.PADDING * cells.size();
  }

  /** In ems. */
  private static double needed(List<String> cells) {
    return cells.stream().mapToDouble(HAND::width).sum();
  }

  void draw(Draft draft, double x, double top) {
    double right = x + widths.stream().mapToDouble(width -> width + 2 * SheetPlan.PADDING).sum();
    draft.draw(Drawn.across(x, right, top, Pen.FINE));
    double left = x;
    for (int i = 0; i < cells.size(); i++) {
      Lines words = cells.get(i);
      draft.letter(words, left + SheetPlan.PADDING, words.middle(top, height));
      left += widths.get(i) + 2 * SheetPlan.PADDING;
      if (i < cells.size() - 1) {
        draft.draw(Drawn.down(left, top, top + height, Pen.RULE));
      }
    }
  }
}
