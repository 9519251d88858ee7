package ribband.chart;

/** Sets the name of a level at its line's end, out of the way of the figure at the curve's end. */
final class LineEnds {
  private static final int OVER = 21;
  private static final int UNDER = 19;

  private LineEnds() {}

  /**
   * The name.
   *
   * @param y height of the level
   * @param total what stands at the curve's end
   * @param end height of the curve's end
   */
  static Label name(String text, int x, int y, Label total, int end) {
    int base = y < end ? Math.min(y + 5, total.y() - OVER) : Math.max(y + 5, total.y() + UNDER);
    return new Label(x, base, Label.Anchor.START, text);
  }
}
