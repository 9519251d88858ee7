import java.awt.image.BufferedImage;
import java.io.File;
import java.io.IOException;
import javax.imageio.ImageIO;

/**
 * Prints the structural similarity of a picture to the one of some others that is most like it:
 * REFERENCE OTHER... Those of another size are passed over.
 */
class Likeness {
  private static final int WINDOW = 8;
  private static final int STEP = 4;
  private static final double C1 = Math.pow(0.01 * 255, 2);
  private static final double C2 = Math.pow(0.03 * 255, 2);

  public static void main(String[] args) throws IOException {
    double[][] reference = luma(ImageIO.read(new File(args[0])));
    double best = 0;
    for (int i = 1; i < args.length; i++) {
      double[][] other = luma(ImageIO.read(new File(args[i])));
      if (other.length == reference.length && other[0].length == reference[0].length) {
        best = Math.max(best, ssim(reference, other));
      }
    }
    System.out.println(Math.round(best * 10_000) / 10_000.0);
  }

  /** Wang and others, IEEE Transactions on Image Processing 13 (2004), over flat windows. */
  private static double ssim(double[][] a, double[][] b) {
    double sum = 0;
    int windows = 0;
    for (int y = 0; y + WINDOW <= a.length; y += STEP) {
      for (int x = 0; x + WINDOW <= a[0].length; x += STEP) {
        sum += window(a, b, x, y);
        windows++;
      }
    }
    return sum / windows;
  }

  private static double window(double[][] a, double[][] b, int left, int top) {
    double n = WINDOW * WINDOW;
    double sumA = 0;
    double sumB = 0;
    double squaresA = 0;
    double squaresB = 0;
    double products = 0;
    for (int y = top; y < top + WINDOW; y++) {
      for (int x = left; x < left + WINDOW; x++) {
        sumA += a[y][x];
        sumB += b[y][x];
        squaresA += a[y][x] * a[y][x];
        squaresB += b[y][x] * b[y][x];
        products += a[y][x] * b[y][x];
      }
    }
    double meanA = sumA / n;
    double meanB = sumB / n;
    double spreadA = squaresA / n - meanA * meanA;
    double spreadB = squaresB / n - meanB * meanB;
    double together = products / n - meanA * meanB;
    return (2 * meanA * meanB + C1)
        * (2 * together + C2)
        / ((meanA * meanA + meanB * meanB + C1) * (spreadA + spreadB + C2));
  }

  private static double[][] luma(BufferedImage image) {
    double[][] luma = new double[image.getHeight()][image.getWidth()];
    for (int y = 0; y < luma.length; y++) {
      for (int x = 0; x < luma[y].length; x++) {
        int rgb = image.getRGB(x, y);
        luma[y][x] =
            0.299 * (rgb >> 16 & 255) + 0.587 * (rgb >> 8 & 255) + 0.114 * (rgb & 255);
      }
    }
    return luma;
  }
}
