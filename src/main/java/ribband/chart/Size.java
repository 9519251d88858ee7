package ribband.chart;

/** The widths a chart is drawn for; the style sheet shows one of them. */
public enum Size {
  /** The whole sheet. */
  WIDE(1160),
  /** A tablet, and paper. */
  MIDDLE(700),
  /** A phone. */
  NARROW(320);

  private final int width;

  Size(int width) {
    this.width = width;
  }

  int width() {
    return width;
  }
}
