package ribband.photo;

import java.awt.image.BufferedImage;
import java.awt.image.DataBufferInt;

/**
 * Turns stored rows and columns upright (EXIF 2.32, tag 0x0112) by moving whole pixels: turning
 * through a drawing transform would blur pictures whose sides differ by an odd number.
 */
final class Turning {
  private Turning() {}

  /**
   * @param stored of {@link BufferedImage#TYPE_INT_RGB}
   * @param orientation 1 to 8
   */
  static BufferedImage upright(BufferedImage stored, int orientation) {
    int w = stored.getWidth();
    int h = stored.getHeight();
    int last = w * h - 1;
    return switch (orientation) {
      case 1 -> stored;
      case 2 -> walk(stored, w, h, w - 1, -1, w);
      case 3 -> walk(stored, w, h, last, -1, -w);
      case 4 -> walk(stored, w, h, last - w + 1, 1, -w);
      case 5 -> walk(stored, h, w, 0, w, 1);
      case 6 -> walk(stored, h, w, last - w + 1, -w, 1);
      case 7 -> walk(stored, h, w, last, -w, -1);
      case 8 -> walk(stored, h, w, w - 1, w, -1);
      default -> throw new IllegalArgumentException("orientation " + orientation);
    };
  }

  /** Fills the upright picture from the stored pixels: where to begin, how far to step. */
  private static BufferedImage walk(
      BufferedImage stored, int width, int height, int start, int right, int down) {
    int[] from = ((DataBufferInt) stored.getRaster().getDataBuffer()).getData();
    BufferedImage upright = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
    int[] row = new int[width];
    for (int y = 0; y < height; y++) {
      int at = start + y * down;
      for (int x = 0; x < width; x++, at += right) {
        row[x] = from[at];
      }
      upright.getRaster().setDataElements(0, y, width, 1, row);
    }
    return upright;
  }
}
