package ribband.postcard;

/**
 * What a card is for, which is how large it is. Both are laid out in units of 1/1200 of the width,
 * so that what is legible on one is so on the other.
 */
public enum Shape {
  /** Beside a link. */
  SHARED(1200, 630),
  /** A frame of a video. */
  FRAME(1920, 1080);

  private static final int UNITS = 1200;

  private final int width;
  private final int height;

  Shape(int width, int height) {
    this.width = width;
    this.height = height;
  }

  /** In pixels. */
  public int width() {
    return width;
  }

  /** In pixels. */
  public int height() {
    return height;
  }

  /** Pixels of a unit. */
  double scale() {
    return (double) width / UNITS;
  }

  /** The whole card, in units. */
  Box sheet() {
    return new Box(0, 0, UNITS, height / scale());
  }
}
