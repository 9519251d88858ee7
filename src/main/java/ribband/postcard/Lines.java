package ribband.postcard;

import java.util.List;
import java.util.Objects;

/**
 * Words in lines, ready to be lettered.
 *
 * @param lines none where there are no words
 * @param size of an em, in units
 * @param leading from baseline to baseline, in ems: the letters of two lines never touch
 */
record Lines(List<String> lines, Hand hand, double size, double leading, Said said) {
  private static final double LEAST_LEADING = 1.24;
  private static final double BELOW = 0.24;
  private static final double BETWEEN = 0.03;

  /** From the edge of a cell to ink, in units. */
  private static final double MARGIN = 7;

  Lines {
    lines = List.copyOf(lines);
    Objects.requireNonNull(hand);
    Objects.requireNonNull(said);
  }

  static Lines of(List<String> lines, Hand hand, double size, Said said) {
    double above = 0;
    double below = BELOW;
    for (String line : lines) {
      Lettering lettering = Lettering.of(line, hand);
      above = Math.max(above, lettering.reachAbove());
      below = Math.max(below, lettering.reachBelow());
    }
    double leading = Math.max(LEAST_LEADING, above + below + BETWEEN);
    return new Lines(lines, hand, size, leading, said);
  }

  boolean isEmpty() {
    return lines.isEmpty();
  }

  /** Of all lines, in units. */
  double height() {
    return lines.size() * leading * size;
  }

  /** Of the widest line, in units. */
  double width() {
    return lines.stream().mapToDouble(hand::width).max().orElse(0) * size;
  }

  /** Of the last line, in units. */
  double lastWidth() {
    return lines.isEmpty() ? 0 : hand.width(lines.get(lines.size() - 1)) * size;
  }

  /**
   * From where the first line begins to where its ink does, in units: seen beside smaller words.
   */
  double leftBearing() {
    return lines.isEmpty() ? 0 : Lettering.of(lines.get(0), hand).leftBearing() * size;
  }

  /** Of the first line above its baseline, in units. */
  double reachAbove() {
    return lines.isEmpty() ? 0 : Lettering.of(lines.get(0), hand).reachAbove() * size;
  }

  /** Of the last line below its baseline, in units. */
  double reachBelow() {
    return lines.isEmpty()
        ? 0
        : Lettering.of(lines.get(lines.size() - 1), hand).reachBelow() * size;
  }

  /** From the top of the first line's ink to the foot of the last's, in units. */
  double inkHeight() {
    return reachAbove() + (lines.size() - 1) * leading * size + reachBelow();
  }

  /** Of the lowest cell that holds all ink, in units. */
  double cellHeight() {
    return inkHeight() + 2 * MARGIN;
  }

  /**
   * The first baseline in a cell at least as high as {@link #cellHeight}: capitals, which are 0.7
   * em high, stand in its middle, if all ink stays in it.
   */
  double middle(double top, double height) {
    double ems = 0.35 - (lines.size() - 1) * leading / 2;
    return Math.max(top + height / 2 + ems * size, top + MARGIN + reachAbove());
  }

  /** From the top to the first baseline, in units. */
  double firstBaseline() {
    return (leading - BELOW) * size;
  }
}
