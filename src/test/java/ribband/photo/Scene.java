package ribband.photo;

import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.SplittableRandom;
import javax.imageio.IIOImage;
import javax.imageio.ImageIO;
import javax.imageio.ImageWriteParam;
import javax.imageio.ImageWriter;
import javax.imageio.stream.MemoryCacheImageOutputStream;

/** Invented pictures for the tests, the same ones each time, and their coded bytes. */
final class Scene {
  private Scene() {}

  /** Slopes, edges, fine lines and a little grain; each corner has its own colour. */
  static BufferedImage of(int width, int height) {
    BufferedImage image = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
    SplittableRandom grain = new SplittableRandom(7);
    for (int y = 0; y < height; y++) {
      for (int x = 0; x < width; x++) {
        double u = (double) x / width;
        double v = (double) y / height;
        double plank = Math.sin(40 * v + 9 * Math.sin(3 * u)) > 0.8 ? -60 : 0;
        double wood = 12 * Math.sin(160 * u + 30 * v);
        int noise = grain.nextInt(3) - 1;
        int red = level(60 + 150 * u + plank + wood + noise);
        int green = level(70 + 120 * v + plank + wood + noise);
        int blue = level(180 - 90 * u * v + plank + noise);
        image.setRGB(x, y, red << 16 | green << 8 | blue);
      }
    }
    int side = Math.max(1, Math.min(width, height) / 6);
    fill(image, 0, 0, side, 0xD02020);
    fill(image, width - side, 0, side, 0x20A020);
    fill(image, 0, height - side, side, 0x2030D0);
    fill(image, width - side, height - side, side, 0xE0C020);
    return image;
  }

  static byte[] png(BufferedImage image) {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    try {
      if (!ImageIO.write(image, "png", out)) {
        throw new IllegalArgumentException("no writer for " + image);
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return out.toByteArray();
  }

  static byte[] jpeg(BufferedImage image) {
    return jpeg(new IIOImage(image, null, null), ImageWriteParam.MODE_DISABLED);
  }

  static byte[] progressiveJpeg(BufferedImage image) {
    return jpeg(new IIOImage(image, null, null), ImageWriteParam.MODE_DEFAULT);
  }

  static byte[] jpeg(IIOImage image, int progressive) {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    ImageWriter writer = ImageIO.getImageWritersByFormatName("jpeg").next();
    try (MemoryCacheImageOutputStream stream = new MemoryCacheImageOutputStream(out)) {
      writer.setOutput(stream);
      ImageWriteParam how = writer.getDefaultWriteParam();
      how.setCompressionMode(ImageWriteParam.MODE_EXPLICIT);
      how.setCompressionQuality(0.92f);
      how.setProgressiveMode(progressive);
      writer.write(null, image, how);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    } finally {
      writer.dispose();
    }
    return out.toByteArray();
  }

  static BufferedImage decode(byte[] bytes) {
    try {
      return ImageIO.read(new ByteArrayInputStream(bytes));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /**
   * The rows and columns a camera would store for this upright picture: EXIF 2.32, tag 0x0112, says
   * for each value on which side of the scene row 0 and column 0 lie.
   */
  static BufferedImage stored(BufferedImage upright, int orientation) {
    int w = upright.getWidth();
    int h = upright.getHeight();
    int columns = orientation >= 5 ? h : w;
    int rows = orientation >= 5 ? w : h;
    BufferedImage stored = new BufferedImage(columns, rows, BufferedImage.TYPE_INT_RGB);
    for (int r = 0; r < rows; r++) {
      for (int c = 0; c < columns; c++) {
        int rgb =
            switch (orientation) {
              case 1 -> upright.getRGB(c, r); // row 0 top, column 0 left
              case 2 -> upright.getRGB(w - 1 - c, r); // top, right
              case 3 -> upright.getRGB(w - 1 - c, h - 1 - r); // bottom, right
              case 4 -> upright.getRGB(c, h - 1 - r); // bottom, left
              case 5 -> upright.getRGB(r, c); // left, top
              case 6 -> upright.getRGB(w - 1 - r, c); // right, top
              case 7 -> upright.getRGB(w - 1 - r, h - 1 - c); // right, bottom
              case 8 -> upright.getRGB(r, h - 1 - c); // left, bottom
              default -> throw new IllegalArgumentException("orientation " + orientation);
            };
        stored.setRGB(c, r, rgb);
      }
    }
    return stored;
  }

  private static void fill(BufferedImage image, int left, int top, int side, int rgb) {
    for (int y = top; y < top + side; y++) {
      for (int x = left; x < left + side; x++) {
        image.setRGB(x, y, rgb);
      }
    }
  }

  private static int level(double value) {
    return (int) Math.max(0, Math.min(255, Math.round(value)));
  }
}
