package ribband.chart;

/**
 * The sheet a shape is drawn on.
 *
 * @param width of the whole drawing
 * @param left margin
 * @param right margin
 * @param plot height of the plotted area; labels above and below come on top of it
 */
record Frame(int width, int left, int right, int plot) {
  static final int WIDE = 800;
  static final int NARROW = 320;

  int end() {
    return width - right;
  }

  int span() {
    return width - left - right;
  }
}
