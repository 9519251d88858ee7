package ribband.photo;

import java.awt.image.BufferedImage;
import java.awt.image.DataBufferInt;

/**
 * Gives back to a picture what the mean of areas takes from its fine detail: each pixel moves away
 * from its four neighbours by a sixteenth, which levels the response up to half the finest detail.
 * The outermost pixels stay as they are.
 */
final class Crispness {
  private Crispness() {}

  /**
   * @param soft of {@link BufferedImage#TYPE_INT_RGB}
   */
  static BufferedImage of(BufferedImage soft) {
    int width = soft.getWidth();
    int height = soft.getHeight();
    BufferedImage crisp = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
    int[] from = pixels(soft);
    int[] to = pixels(crisp);
    System.arraycopy(from, 0, to, 0, from.length);
    for (int y = 1; y < height - 1; y++) {
      int end = (y + 1) * width - 1;
      for (int i = y * width + 1; i < end; i++) {
        int here = from[i];
        int left = from[i - 1];
        int right = from[i + 1];
        int above = from[i - width];
        int below = from[i + width];
        // Red and blue go together, far enough apart for their sums.
        int apart = 0xFF00FF;
        int around = (left & apart) + (right & apart) + (above & apart) + (below & apart);
        int pair = 20 * (here & apart) - around;
        int green =
            20 * (here >> 8 & 0xFF)
                - (left >> 8 & 0xFF)
                - (right >> 8 & 0xFF)
                - (above >> 8 & 0xFF)
                - (below >> 8 & 0xFF);
        int blue = (short) pair;
        int red = pair - blue >> 16;
        to[i] = level(red) << 16 | level(green) << 8 | level(blue);
      }
    }
    return crisp;
  }

  private static int level(int sixteenths) {
    return Math.max(0, Math.min(255, sixteenths + 8 >> 4));
  }

  private static int[] pixels(BufferedImage image) {
    return ((DataBufferInt) image.getRaster().getDataBuffer()).getData();
  }
}
