package ribband.chart;

/**
 * How much room lettering takes. The page's font is not known here: widths are a high guess that
 * keeps labels apart.
 */
final class Lettering {
  /** From base line to base line. */
  static final int LINE = 18;

  private static final int FULL = 14;
  private static final int USUAL = 8;

  private Lettering() {}

  static int width(String text) {
    return text.codePoints().map(Lettering::width).sum();
  }

  private static int width(int codePoint) {
    if (codePoint >= 0x1100 && codePoint < 0x2000 || codePoint >= 0x2E80) {
      return FULL;
    }
    if ("ijl.,:;'|!".indexOf(codePoint) >= 0) {
      return 4;
    }
    if (" ftr()-".indexOf(codePoint) >= 0) {
      return 6;
    }
    if ("mwMW@%&½¼¾".indexOf(codePoint) >= 0) {
      return 13;
    }
    return Character.isUpperCase(codePoint) ? 10 : USUAL;
  }

  /** The text, cut with an ellipsis where it is wider than the room. */
  static String fit(String text, int room) {
    if (width(text) <= room) {
      return text;
    }
    StringBuilder kept = new StringBuilder();
    int[] points = text.codePoints().toArray();
    int used = FULL;
    for (int point : points) {
      used += width(point);
      if (used > room) {
        break;
      }
      kept.appendCodePoint(point);
    }
    return kept.toString().strip() + "…";
  }
}
