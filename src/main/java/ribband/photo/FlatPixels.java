package ribband.photo;

import java.awt.image.BufferedImage;
import java.awt.image.IndexColorModel;
import java.awt.image.Raster;

/**
 * Any decoded picture as 8-bit RGB, its transparent parts laid on white. Samples are taken as they
 * are: Java 2D would read grey ones as linear light and show them too bright.
 */
final class FlatPixels {
  private FlatPixels() {}

  static BufferedImage of(BufferedImage image) {
    if (image.getType() == BufferedImage.TYPE_3BYTE_BGR) {
      return image;
    }
    int width = image.getWidth();
    BufferedImage flat = new BufferedImage(width, image.getHeight(), BufferedImage.TYPE_INT_RGB);
    int[] row = new int[width];
    for (int y = 0; y < image.getHeight(); y++) {
      if (image.getColorModel() instanceof IndexColorModel) {
        image.getRGB(0, y, width, 1, row, 0, width);
        layPaletteRow(row);
      } else {
        laySampleRow(image.getRaster(), y, row);
      }
      flat.setRGB(0, y, width, 1, row, 0, width);
    }
    return flat;
  }

  private static void layPaletteRow(int[] row) {
    for (int x = 0; x < row.length; x++) {
      int argb = row[x];
      row[x] = onWhite(argb >> 16 & 0xFF, argb >> 8 & 0xFF, argb & 0xFF, argb >>> 24);
    }
  }

  private static void laySampleRow(Raster raster, int y, int[] row) {
    int bands = raster.getNumBands();
    int most = (1 << raster.getSampleModel().getSampleSize(0)) - 1;
    int[] samples = raster.getPixels(0, y, row.length, 1, (int[]) null);
    boolean grey = bands < 3;
    for (int x = 0; x < row.length; x++) {
      int at = x * bands;
      int red = toByte(samples[at], most);
      int green = grey ? red : toByte(samples[at + 1], most);
      int blue = grey ? red : toByte(samples[at + 2], most);
      boolean clear = bands == 2 || bands == 4;
      row[x] = onWhite(red, green, blue, clear ? toByte(samples[at + bands - 1], most) : 255);
    }
  }

  private static int toByte(int sample, int most) {
    return most == 255 ? sample : (sample * 255 + most / 2) / most;
  }

  private static int onWhite(int red, int green, int blue, int alpha) {
    return 0xFF000000 | blend(red, alpha) << 16 | blend(green, alpha) << 8 | blend(blue, alpha);
  }

  private static int blend(int sample, int alpha) {
    return (sample * alpha + 255 * (255 - alpha) + 127) / 255;
  }
}
