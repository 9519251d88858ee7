package ribband.photo;

import java.awt.image.BufferedImage;

/** Two textbook scalers in doubles, separable, for comparison only. */
enum ReferenceScaler {
  /** Each new pixel is the mean of the area it covers. */
  AREA {
    @Override
    double support() {
      return 0.5;
    }

    @Override
    double weight(double distance, double scale) {
      double half = 0.5 / scale;
      double overlap = Math.min(distance + half, 0.5) - Math.max(distance - half, -0.5);
      return Math.max(0, overlap);
    }
  },
  /** Lanczos window of three lobes: C. E. Duchon, J. Applied Meteorology 18 (1979). */
  LANCZOS3 {
    @Override
    double support() {
      return 3;
    }

    @Override
    double weight(double distance, double scale) {
      double x = Math.PI * distance;
      if (Math.abs(distance) >= 3) {
        return 0;
      }
      return x == 0 ? 1 : 3 * Math.sin(x) * Math.sin(x / 3) / (x * x);
    }
  };

  /** Half the kernel's width, in pixels of the new picture. */
  abstract double support();

  /**
   * @param distance from the new pixel's middle to the old one's, in pixels of the new picture
   * @param scale old pixels per new pixel
   */
  abstract double weight(double distance, double scale);

  BufferedImage scale(BufferedImage image, int width, int height) {
    BufferedImage scaled = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
    for (int shift = 0; shift <= 16; shift += 8) {
      double[][] plane = new double[image.getHeight()][image.getWidth()];
      for (int y = 0; y < image.getHeight(); y++) {
        for (int x = 0; x < image.getWidth(); x++) {
          plane[y][x] = image.getRGB(x, y) >> shift & 255;
        }
      }
      double[][] small = columns(transpose(columns(transpose(plane), height)), width);
      for (int y = 0; y < height; y++) {
        for (int x = 0; x < width; x++) {
          int level = (int) Math.max(0, Math.min(255, Math.round(small[y][x])));
          scaled.setRGB(x, y, scaled.getRGB(x, y) | level << shift);
        }
      }
    }
    return scaled;
  }

  /** Each row made as long as wanted. */
  private double[][] columns(double[][] rows, int length) {
    double scale = (double) rows[0].length / length;
    double[][] out = new double[rows.length][length];
    for (int x = 0; x < length; x++) {
      double middle = (x + 0.5) * scale;
      int from = (int) Math.max(0, Math.floor(middle - support() * scale - 1));
      int to = (int) Math.min(rows[0].length, Math.ceil(middle + support() * scale + 1));
      double[] weights = new double[to - from];
      double sum = 0;
      for (int i = from; i < to; i++) {
        weights[i - from] = weight((i + 0.5 - middle) / scale, scale);
        sum += weights[i - from];
      }
      for (int y = 0; y < rows.length; y++) {
        double value = 0;
        for (int i = from; i < to; i++) {
          value += rows[y][i] * weights[i - from];
        }
        out[y][x] = value / sum;
      }
    }
    return out;
  }

  private static double[][] transpose(double[][] plane) {
    double[][] turned = new double[plane[0].length][plane.length];
    for (int y = 0; y < plane.length; y++) {
      for (int x = 0; x < plane[0].length; x++) {
        turned[x][y] = plane[y][x];
      }
    }
    return turned;
  }
}
