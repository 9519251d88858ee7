package ribband.chart;

/**
 * Lettering at a place.
 *
 * @param y its base line
 */
public record Label(int x, int y, Anchor anchor, String text) {
  /** Which end of the text stands at x, by the words of SVG's {@code text-anchor}. */
  public enum Anchor {
    START,
    MIDDLE,
    END;

    /** As SVG writes it. */
    public String word() {
      return switch (this) {
        case START -> "start";
        case MIDDLE -> "middle";
        case END -> "end";
      };
    }
  }

  /** What it takes up in the common size. */
  Box box() {
    return box(Lettering.width(text), Lettering.RISE);
  }

  /** What it takes up in the size of totals. */
  Box largeBox() {
    return box(Lettering.largeWidth(text), Lettering.LARGE_RISE);
  }

  private Box box(int width, int rise) {
    int left =
        switch (anchor) {
          case START -> x;
          case MIDDLE -> x - width / 2;
          case END -> x - width;
        };
    return new Box(left, y - rise, left + width, y + Lettering.DROP);
  }
}
