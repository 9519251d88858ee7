package ribband.chart;

/**
 * The sheet a shape is drawn on.
 *
 * @param width of the whole drawing
 * @param left margin; the least, where it grows with the labels in it
 * @param right margin
 * @param plot height of the plotted area; labels above and below come on top of it
 */
record Frame(int width, int left, int right, int plot) {
  static final int WIDE = 800;
  static final int NARROW = 320;

  /** With a left margin that holds the labels of its rules. */
  Frame withRoomFor(Ticks ticks, Yardstick yardstick) {
    int widest =
        ticks.values().stream()
            .mapToInt(value -> Lettering.width(yardstick.tick().apply(value)))
            .max()
            .orElse(0);
    return new Frame(width, Math.max(left, widest + 16), right, plot);
  }

  int end() {
    return width - right;
  }

  int span() {
    return width - left - right;
  }
}
