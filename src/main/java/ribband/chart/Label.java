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
}
