package ribband.chart;

import java.util.stream.Stream;

/**
 * How much room lettering takes. The page's font is not known here: widths are a high guess that
 * keeps labels apart.
 */
final class Lettering {
  /** From base line to base line. */
  static final int LINE = 18;

  /** Above the base line. */
  static final int RISE = 12;

  /** Below the base line. */
  static final int DROP = 4;

  static final int LARGE_RISE = 16;

  private static final int FULL = 14;
  private static final int USUAL = 8;

  private Lettering() {}

  static int width(String text) {
    return text.codePoints().map(Lettering::width).sum();
  }

  /** In the size and weight of totals. */
  static int largeWidth(String text) {
    return width(text) * 3 / 2;
  }

  static int widest(Stream<String> texts) {
    return texts.mapToInt(Lettering::width).max().orElse(0);
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
