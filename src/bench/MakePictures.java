import java.awt.image.BufferedImage;
import java.awt.image.DataBufferInt;
import java.io.ByteArrayOutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import javax.imageio.IIOImage;
import javax.imageio.ImageIO;
import javax.imageio.ImageWriteParam;
import javax.imageio.ImageWriter;
import javax.imageio.plugins.jpeg.JPEGImageWriteParam;
import javax.imageio.stream.MemoryCacheImageOutputStream;

/** Makes invented photographs of 12 megapixels as cameras store them: FOLDER COUNT [progressive]. */
class MakePictures {
  private static final int WIDTH = 4032;
  private static final int HEIGHT = 3024;
  private static final int[] ORIENTATIONS = {1, 6, 1, 8, 3};

  /** In levels, of cells 1008 px wide, of half that, and so on down to 2 px. */
  private static final float[] STRENGTHS = {220, 110, 55, 34, 30, 30, 30, 30, 30, 15};

  public static void main(String[] args) throws Exception {
    Path folder = Files.createDirectories(Path.of(args[0]));
    boolean progressive = args.length > 2;
    ImageIO.setUseCache(false);
    IntStream.range(0, Integer.parseInt(args[1]))
        .parallel()
        .forEach(i -> write(folder, i, progressive));
  }

  private static void write(Path folder, int i, boolean progressive) {
    String name = String.format(Locale.ROOT, "p%02d.jpg", i);
    try {
      byte[] jpeg = jpeg(scene(i), progressive);
      Files.write(folder.resolve(name), turned(jpeg, ORIENTATIONS[i % ORIENTATIONS.length]));
    } catch (java.io.IOException e) {
      throw new java.io.UncheckedIOException(e);
    }
  }

  /**
   * Noise of ten octaves of nearly one strength from the fifth, as natural pictures have it (D. J.
   * Field, Journal of the Optical Society of America A 4, 1987), the last one softened as by a lens;
   * a few hard edges; a sensor's grain by daylight.
   */
  private static BufferedImage scene(int seed) {
    SplittableRandom random = new SplittableRandom(seed);
    float[][] octaves = new float[STRENGTHS.length][];
    for (int o = 0; o < octaves.length; o++) {
      octaves[o] = new float[((4 << o) + 2) * ((4 << o) + 2)];
      for (int k = 0; k < octaves[o].length; k++) {
        octaves[o][k] = (float) (random.nextDouble() - 0.5);
      }
    }
    double tilt = random.nextDouble() * 2 - 1;
    BufferedImage image = new BufferedImage(WIDTH, HEIGHT, BufferedImage.TYPE_INT_RGB);
    int[] pixels = ((DataBufferInt) image.getRaster().getDataBuffer()).getData();
    for (int y = 0; y < HEIGHT; y++) {
      for (int x = 0; x < WIDTH; x++) {
        float value = 0;
        float tint = 0;
        for (int o = 0; o < octaves.length; o++) {
          float noise = at(octaves[o], 4 << o, x, y);
          value += noise * STRENGTHS[o];
          tint += o < 4 ? noise * 70 / (1 << o) : 0;
        }
        double plank = (y + tilt * x) / 190;
        double edge = plank - Math.floor(plank) < 0.06 ? -45 : 0;
        double grain = 8 * (random.nextDouble() + random.nextDouble() - 1);
        double luma = 118 + value + edge + grain;
        pixels[y * WIDTH + x] =
            level(luma + 25 + tint) << 16 | level(luma) << 8 | level(luma - 30 - tint);
      }
    }
    return image;
  }

  private static float at(float[] grid, int cells, int x, int y) {
    float u = (float) x * cells / WIDTH;
    float v = (float) y * cells / WIDTH;
    int i = (int) u;
    int j = (int) v;
    float a = u - i;
    float b = v - j;
    int row = cells + 2;
    float top = grid[j * row + i] * (1 - a) + grid[j * row + i + 1] * a;
    float bottom = grid[(j + 1) * row + i] * (1 - a) + grid[(j + 1) * row + i + 1] * a;
    return top * (1 - b) + bottom * b;
  }

  private static int level(double value) {
    return (int) Math.max(0, Math.min(255, Math.round(value)));
  }

  /** Quality 92; chroma is halved both ways, as the JDK's writer does. */
  private static byte[] jpeg(BufferedImage image, boolean progressive)
      throws java.io.IOException {
    ImageWriter writer = ImageIO.getImageWritersByFormatName("jpeg").next();
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try (MemoryCacheImageOutputStream out = new MemoryCacheImageOutputStream(bytes)) {
      writer.setOutput(out);
      JPEGImageWriteParam how = new JPEGImageWriteParam(Locale.ROOT);
      how.setCompressionMode(ImageWriteParam.MODE_EXPLICIT);
      how.setCompressionQuality(0.92f);
      how.setProgressiveMode(
          progressive ? ImageWriteParam.MODE_DEFAULT : ImageWriteParam.MODE_DISABLED);
      writer.write(null, new IIOImage(image, null, null), how);
    } finally {
      writer.dispose();
    }
    return bytes.toByteArray();
  }

  /** With an APP1 segment of EXIF that holds the orientation and nothing else. */
  private static byte[] turned(byte[] jpeg, int orientation) {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    out.write(jpeg, 0, 2 + 18);
    int[] exif = {
      0xFF, 0xE1, 0, 34, 'E', 'x', 'i', 'f', 0, 0, 'M', 'M', 0, 42, 0, 0, 0, 8, 0, 1, //
      0x01, 0x12, 0, 3, 0, 0, 0, 1, 0, orientation, 0, 0, 0, 0, 0, 0
    };
    for (int b : exif) {
      out.write(b);
    }
    out.write(jpeg, 2 + 18, jpeg.length - 2 - 18);
    return out.toByteArray();
  }
}
