package ribband.chart;

import java.util.List;

/**
 * The sheet a shape is drawn on.
 *
 * @param width of the whole drawing
 * @param left margin
 * @param right margin
 */
record Frame(int width, int left, int right) {
  /** With a left margin that holds the labels of its waterlines, which stand at its edge. */
  static Frame withRoomFor(List<Rule> rules, Size size, int right) {
    int widest = rules.stream().mapToInt(rule -> Lettering.width(rule.label())).max().orElse(0);
    return new Frame(size.width(), widest + 14, right);
  }

  /** The same sheet with its right margin wider by so much. */
  Frame shorter(int by) {
    return new Frame(width, left, right + by);
  }

  int end() {
    return width - right;
  }

  int span() {
    return width - left - right;
  }
}
