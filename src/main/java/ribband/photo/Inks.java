package ribband.photo;

import java.awt.color.ColorSpace;
import java.awt.color.ICC_Profile;
import java.awt.image.BufferedImage;
import java.awt.image.ColorConvertOp;
import java.awt.image.DataBuffer;
import java.awt.image.Raster;
import java.awt.image.WritableRaster;
import java.util.Optional;

/**
 * A JPEG made for printing, of four inks, as it looks on a screen: by its profile, else as ideal
 * inks would. The JDK decodes such a file, but makes no colours of it.
 */
final class Inks {
  private static final int BLACK = 3;

  private Inks() {}

  /**
   * @param stored 4 bands of 8 bits: CMYK, or YCCK as the file has it
   * @param icc passed over where it is broken or not for four inks
   * @return sRGB, of {@link BufferedImage#TYPE_INT_RGB}
   */
  static BufferedImage onPaper(Raster stored, JpegOutline.Samples samples, Optional<byte[]> icc) {
    int width = stored.getWidth();
    int height = stored.getHeight();
    BufferedImage image = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
    Optional<ColorConvertOp> press = icc.flatMap(Inks::press);
    WritableRaster row =
        Raster.createInterleavedRaster(DataBuffer.TYPE_BYTE, width, 1, BLACK + 1, null);
    int[] inks = new int[width * (BLACK + 1)];
    for (int y = 0; y < height; y++) {
      stored.getPixels(0, y, width, 1, inks);
      measure(inks, samples);
      if (press.isPresent()) {
        row.setPixels(0, 0, width, 1, inks);
        press.get().filter(row, line(image, y));
      } else {
        image.setRGB(0, y, width, 1, ideal(inks, width), 0, width);
      }
    }
    return image;
  }

  private static Optional<ColorConvertOp> press(byte[] icc) {
    try {
      ICC_Profile profile = ICC_Profile.getInstance(icc);
      if (profile.getColorSpaceType() != ColorSpace.TYPE_CMYK) {
        return Optional.empty();
      }
      ICC_Profile[] way = {profile, ICC_Profile.getInstance(ColorSpace.CS_sRGB)};
      ColorConvertOp press = new ColorConvertOp(way, null);
      // The profile's tables are first read here.
      press.filter(
          Raster.createInterleavedRaster(DataBuffer.TYPE_BYTE, 1, 1, BLACK + 1, null),
          Raster.createInterleavedRaster(DataBuffer.TYPE_BYTE, 1, 1, BLACK, null));
      return Optional.of(press);
    } catch (RuntimeException e) {
      return Optional.empty();
    }
  }

  private static WritableRaster line(BufferedImage image, int y) {
    return image.getRaster().createWritableChild(0, y, image.getWidth(), 1, 0, 0, null);
  }

  /** Stored samples to amounts of ink, 0 for none: writers store what an ink leaves white. */
  private static void measure(int[] samples, JpegOutline.Samples kind) {
    for (int at = 0; at < samples.length; at += BLACK + 1) {
      if (kind == JpegOutline.Samples.YCCK) {
        colours(samples, at);
      } else {
        for (int ink = 0; ink < BLACK; ink++) {
          samples[at + ink] = 255 - samples[at + ink];
        }
      }
      samples[at + BLACK] = 255 - samples[at + BLACK];
    }
  }

  /** ITU-T T.871, section 7, in 16-bit fixed point. */
  private static void colours(int[] samples, int at) {
    int luma = (samples[at] << 16) + (1 << 15);
    int blueness = samples[at + 1] - 128;
    int redness = samples[at + 2] - 128;
    samples[at] = level(luma + 91_881 * redness);
    samples[at + 1] = level(luma - 22_554 * blueness - 46_802 * redness);
    samples[at + 2] = level(luma + 116_130 * blueness);
  }

  private static int level(int fixed) {
    return Math.max(0, Math.min(255, fixed >> 16));
  }

  /** Each ink takes its share of the light that black lets through. */
  private static int[] ideal(int[] inks, int width) {
    int[] row = new int[width];
    for (int x = 0; x < width; x++) {
      int at = x * (BLACK + 1);
      int light = 255 - inks[at + BLACK];
      for (int ink = 0; ink < BLACK; ink++) {
        row[x] = row[x] << 8 | ((255 - inks[at + ink]) * light + 127) / 255;
      }
    }
    return row;
  }
}
