package ribband.photo;

import java.awt.image.BufferedImage;

/** How alike two pictures of one size are. */
final class Likeness {
  private static final int WINDOW = 8;
  private static final int STEP = 4;
  private static final double C1 = 0.01 * 255 * 0.01 * 255;
  private static final double C2 = 0.03 * 255 * 0.03 * 255;

  private Likeness() {}

  /**
   * Mean structural similarity of the luma, 1 for equal pictures: Wang, Bovik, Sheikh, Simoncelli,
   * "Image quality assessment: from error visibility to structural similarity", IEEE Transactions
   * on Image Processing 13 (2004), equation 13, here over flat 8 x 8 windows.
   */
  static double ssim(BufferedImage a, BufferedImage b) {
    checkSizes(a, b);
    double sum = 0;
    int windows = 0;
    for (int y = 0; y + WINDOW <= a.getHeight(); y += STEP) {
      for (int x = 0; x + WINDOW <= a.getWidth(); x += STEP) {
        sum += window(a, b, x, y);
        windows++;
      }
    }
    return sum / windows;
  }

  /** Mean absolute difference of the samples, in levels of 255. */
  static double meanDifference(BufferedImage a, BufferedImage b) {
    checkSizes(a, b);
    long sum = 0;
    for (int y = 0; y < a.getHeight(); y++) {
      for (int x = 0; x < a.getWidth(); x++) {
        int p = a.getRGB(x, y);
        int q = b.getRGB(x, y);
        for (int shift = 0; shift <= 16; shift += 8) {
          sum += Math.abs((p >> shift & 255) - (q >> shift & 255));
        }
      }
    }
    return sum / (3.0 * a.getWidth() * a.getHeight());
  }

  static double luma(int rgb) {
    return 0.299 * (rgb >> 16 & 255) + 0.587 * (rgb >> 8 & 255) + 0.114 * (rgb & 255);
  }

  private static double window(BufferedImage a, BufferedImage b, int left, int top) {
    double sa = 0;
    double sb = 0;
    double saa = 0;
    double sbb = 0;
    double sab = 0;
    for (int y = top; y < top + WINDOW; y++) {
      for (int x = left; x < left + WINDOW; x++) {
        double p = luma(a.getRGB(x, y));
        double q = luma(b.getRGB(x, y));
        sa += p;
        sb += q;
        saa += p * p;
        sbb += q * q;
        sab += p * q;
      }
    }
    double n = WINDOW * WINDOW;
    double ma = sa / n;
    double mb = sb / n;
    double va = (saa - n * ma * ma) / (n - 1);
    double vb = (sbb - n * mb * mb) / (n - 1);
    double cov = (sab - n * ma * mb) / (n - 1);
    return (2 * ma * mb + C1) * (2 * cov + C2) / ((ma * ma + mb * mb + C1) * (va + vb + C2));
  }

  private static void checkSizes(BufferedImage a, BufferedImage b) {
    if (a.getWidth() != b.getWidth() || a.getHeight() != b.getHeight()) {
      throw new AssertionError(
          a.getWidth()
              + " x "
              + a.getHeight()
              + " against "
              + b.getWidth()
              + " x "
              + b.getHeight());
    }
  }
}
