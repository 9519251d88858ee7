package ribband.photo;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.awt.color.ColorSpace;
import java.awt.color.ICC_Profile;
import java.awt.image.BufferedImage;
import java.awt.image.IndexColorModel;
import java.awt.image.Raster;
import java.awt.image.WritableRaster;
import java.io.ByteArrayOutputStream;
import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import java.util.zip.DeflaterOutputStream;
import javax.imageio.IIOImage;
import javax.imageio.ImageWriteParam;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

class PrintLooksTest {
  @TempDir Path folder;

  @ParameterizedTest
  @EnumSource(ReferenceScaler.class)
  void printsAreWhatATextbookScalerMakes(ReferenceScaler scaler) throws Exception {
    BufferedImage scene = Scene.of(1700, 1275);
    Prints.of(folder, Scene.png(scene))
        .forEach(
            (width, print) -> {
              BufferedImage reference = scaler.scale(scene, width, width * 3 / 4);
              double alike = Likeness.ssim(reference, print);
              assertTrue(alike > 0.98, scaler + " at " + width + ": SSIM " + alike);
            });
  }

  @Test
  void printsAreWhatImageMagickMakes() throws Exception {
    BufferedImage scene = Scene.of(1700, 1275);
    Path original = Files.write(folder.resolve("scene.png"), Scene.png(scene));
    for (var print : Prints.of(folder, Scene.png(scene)).entrySet()) {
      int width = print.getKey();
      Path scaled = folder.resolve("scaled.png");
      convert(
          original.toString(),
          "-filter",
          "Lanczos",
          "-resize",
          width + "x" + width * 3 / 4 + "!",
          scaled.toString());
      double alike = Likeness.ssim(Scene.decode(Files.readAllBytes(scaled)), print.getValue());
      assertTrue(alike > 0.98, "at " + width + ": SSIM " + alike);
    }
  }

  @Test
  void transparentPartsAreWhite() throws Exception {
    BufferedImage image = new BufferedImage(64, 32, BufferedImage.TYPE_INT_ARGB);
    for (int y = 0; y < 32; y++) {
      for (int x = 0; x < 64; x++) {
        image.setRGB(x, y, x < 32 ? 0x00FF0000 : 0x80000000);
      }
    }
    BufferedImage print = Prints.of(folder, Scene.png(image)).get(64);
    assertLevel(255, print.getRGB(8, 16));
    assertLevel(127, print.getRGB(56, 16));
  }

  @Test
  void transparentPaletteEntriesAreWhite() throws Exception {
    byte[] levels = {0, 100};
    IndexColorModel palette = new IndexColorModel(8, 2, levels, levels, levels, 0);
    BufferedImage image = new BufferedImage(64, 32, BufferedImage.TYPE_BYTE_INDEXED, palette);
    image.getRaster().setSamples(32, 0, 32, 32, 0, new int[32 * 32]);
    for (int y = 0; y < 32; y++) {
      for (int x = 32; x < 64; x++) {
        image.getRaster().setSample(x, y, 0, 1);
      }
    }
    BufferedImage print = Prints.of(folder, Scene.png(image)).get(64);
    assertLevel(255, print.getRGB(8, 16));
    assertLevel(100, print.getRGB(56, 16));
  }

  @Test
  void greyStaysAsBrightAsItIs() throws Exception {
    BufferedImage bytes = new BufferedImage(64, 32, BufferedImage.TYPE_BYTE_GRAY);
    fill(bytes.getRaster(), 60);
    BufferedImage shorts = new BufferedImage(64, 32, BufferedImage.TYPE_USHORT_GRAY);
    fill(shorts.getRaster(), 60 * 257);
    for (byte[] original : List.of(Scene.png(bytes), Scene.png(shorts), Scene.jpeg(bytes))) {
      assertLevel(60, Prints.of(folder, original).get(64).getRGB(32, 16));
    }
  }

  /** Colour type 4, grey with alpha, which the JDK reads as linear light. */
  @ParameterizedTest
  @ValueSource(ints = {8, 16})
  void greyWithAlphaStaysAsBrightAsItIs(int depth) throws Exception {
    ByteArrayOutputStream pixels = new ByteArrayOutputStream();
    try (DeflaterOutputStream deflater = new DeflaterOutputStream(pixels)) {
      for (int y = 0; y < 32; y++) {
        deflater.write(0);
        for (int x = 0; x < 64; x++) {
          byte[] grey = new byte[depth / 8];
          Arrays.fill(grey, (byte) 60);
          deflater.write(grey);
          Arrays.fill(grey, (byte) (x < 32 ? 255 : 0));
          deflater.write(grey);
        }
      }
    }
    byte[] header = {0, 0, 0, 64, 0, 0, 0, 32, (byte) depth, 4, 0, 0, 0};
    ByteArrayOutputStream png = new ByteArrayOutputStream();
    png.write(Scene.png(Scene.of(8, 8)), 0, 8);
    png.writeBytes(Exif.chunk("IHDR", header));
    png.writeBytes(Exif.chunk("IDAT", pixels.toByteArray()));
    png.writeBytes(Exif.chunk("IEND", new byte[0]));
    BufferedImage print = Prints.of(folder, png.toByteArray()).get(64);
    assertLevel(60, print.getRGB(8, 16));
    assertLevel(255, print.getRGB(56, 16));
  }

  /** The kinds that the JDK cannot write, made and measured by ImageMagick. */
  @ParameterizedTest
  @ValueSource(
      strings = {
        "PNG24:",
        "PNG48:",
        "PNG64:",
        "PNG8:",
        "-colorspace Gray PNG00:",
        "-depth 2 PNG8:",
        "-interlace PNG PNG24:",
        "-quality 95 JPEG:",
        "-interlace JPEG -quality 95 JPEG:",
        "-sampling-factor 1x1 -quality 95 JPEG:",
        "-colorspace Gray -quality 95 JPEG:",
        "-colorspace CMYK -quality 95 JPEG:",
        "-colorspace CMYK -interlace JPEG -quality 95 JPEG:",
        "GIF:",
        "-interlace GIF -transparent-color white GIF:",
        "-size 200x150 xc:red xc:blue -loop 0 GIF:",
        "-quality 95 WEBP:",
        "-define webp:lossless=true WEBP:",
        "-alpha set -channel A -evaluate multiply 0.6 +channel -quality 95 WEBP:",
        "-alpha set -channel A -evaluate multiply 0.6 +channel -define webp:lossless=true WEBP:",
        "-size 200x150 xc:red xc:blue -quality 95 WEBP:"
      })
  void coloursAreWhatImageMagickSees(String options) throws Exception {
    Path scene = Files.write(folder.resolve("scene.png"), Scene.png(Scene.of(200, 150)));
    Path original = folder.resolve("original");
    List<String> arguments = new ArrayList<>(List.of(scene.toString()));
    arguments.addAll(List.of((options + original).split(" ")));
    convert(arguments.toArray(String[]::new));
    assertSeenAlike(original, "-background", "white", "-alpha", "remove", "-colorspace", "sRGB");
  }

  /** Inks as they are, not as luma and chroma, which ImageMagick does not write. */
  @Test
  void plainInksAreWhatImageMagickSees() throws Exception {
    BufferedImage scene = Scene.of(200, 150);
    WritableRaster inks = Raster.createInterleavedRaster(0, 200, 150, 4, null);
    for (int i = 0; i < 200 * 150; i++) {
      int rgb = scene.getRGB(i % 200, i / 200);
      int black = 200 + i % 50;
      inks.setPixel(
          i % 200, i / 200, new int[] {rgb >> 16 & 255, rgb >> 8 & 255, rgb & 255, black});
    }
    byte[] jpeg = Scene.jpeg(new IIOImage(inks, null, null), ImageWriteParam.MODE_DISABLED);
    assertSeenAlike(Files.write(folder.resolve("original"), jpeg), "-colorspace", "sRGB");
  }

  @Test
  void scansAddUpToWhatTheJdkReads() throws Exception {
    byte[] jpeg = Scene.progressiveJpeg(Scene.of(701, 480));
    Path original = Files.write(folder.resolve("original"), jpeg);
    PictureFacts facts = new PictureReader().facts(original);
    BufferedImage pixels = Decoder.decode(Original.read(original, facts), facts).pixels();
    assertEquals(BufferedImage.TYPE_INT_RGB, pixels.getType(), "read by ImageIO");
    assertEquals(0, Likeness.meanDifference(Scene.decode(jpeg), pixels));
  }

  @ParameterizedTest
  @ValueSource(ints = {ImageWriteParam.MODE_DISABLED, ImageWriteParam.MODE_DEFAULT})
  void wideColoursAreWhatImageMagickSees(int progressive) throws Exception {
    IIOImage scene = new IIOImage(Scene.of(200, 150), null, null);
    byte[] jpeg = Profile.inJpeg(Scene.jpeg(scene, progressive), Profile.wide());
    Path srgb =
        Files.write(
            folder.resolve("srgb.icc"), ICC_Profile.getInstance(ColorSpace.CS_sRGB).getData());
    Path original = Files.write(folder.resolve("original"), jpeg);
    assertSeenAlike(original, "-profile", srgb.toString());
    assertTrue(
        Likeness.meanDifference(print(jpeg), print(Scene.jpeg(Scene.of(200, 150)))) > 2,
        "the profile changes nothing");
  }

  private void assertSeenAlike(Path original, String... flattening) throws Exception {
    Path flat = folder.resolve("flat.png");
    List<String> arguments = new ArrayList<>(List.of(original + "[0]"));
    arguments.addAll(List.of(flattening));
    arguments.add("PNG24:" + flat);
    convert(arguments.toArray(String[]::new));
    BufferedImage print = Prints.of(folder, Files.readAllBytes(original)).get(200);
    BufferedImage seen = Scene.decode(Files.readAllBytes(flat));
    for (int shift = 0; shift <= 16; shift += 8) {
      assertEquals(mean(seen, shift), mean(print, shift), 2, "bits from " + shift);
    }
    double alike = Likeness.ssim(seen, print);
    assertTrue(alike > 0.95, "SSIM " + alike);
  }

  /** The curve is that of IEC 61966-2-1: linear 0.2 is 0.4845 in sRGB. */
  @Test
  void embeddedProfileIsConvertedToSrgb() throws Exception {
    BufferedImage image = new BufferedImage(64, 32, BufferedImage.TYPE_INT_RGB);
    for (int i = 0; i < 64 * 32; i++) {
      image.setRGB(i % 64, i / 64, 0x333333);
    }
    byte[] jpeg = Scene.jpeg(image);
    byte[] png = Scene.png(image);
    assertLevel(51, print(jpeg).getRGB(32, 16));
    assertLevel(51, print(png).getRGB(32, 16));
    assertLevel(124, print(Profile.inJpeg(jpeg, Profile.linear())).getRGB(32, 16));
    assertLevel(124, print(Profile.inPng(png, Profile.linear())).getRGB(32, 16));
  }

  @Test
  void brokenProfileIsPassedOver() throws Exception {
    byte[] broken = Profile.linear();
    Arrays.fill(broken, 36, broken.length, (byte) 7);
    byte[] damaged = Profile.linear();
    Arrays.fill(damaged, 200, damaged.length, (byte) 7);
    byte[] grey = ICC_Profile.getInstance(ColorSpace.CS_GRAY).getData();
    byte[] jpeg = Scene.jpeg(Scene.of(64, 32));
    byte[] png = Scene.png(Scene.of(64, 32));
    for (byte[] profile : List.of(broken, damaged, new byte[0], new byte[5_000_000], grey)) {
      if (profile.length < 60_000) {
        assertEquals(0, Likeness.meanDifference(print(jpeg), print(Profile.inJpeg(jpeg, profile))));
      }
      assertEquals(0, Likeness.meanDifference(print(png), print(Profile.inPng(png, profile))));
    }
  }

  private BufferedImage print(byte[] original) throws Exception {
    return Prints.of(folder, original).firstEntry().getValue();
  }

  private static void assertLevel(int expected, int rgb) {
    for (int shift = 0; shift <= 16; shift += 8) {
      assertEquals(expected, rgb >> shift & 255, 2, Integer.toHexString(rgb));
    }
  }

  private static void fill(WritableRaster raster, int level) {
    for (int i = 0; i < raster.getWidth() * raster.getHeight(); i++) {
      raster.setSample(i % raster.getWidth(), i / raster.getWidth(), 0, level);
    }
  }

  private static double mean(BufferedImage image, int shift) {
    double sum = 0;
    for (int i = 0; i < image.getWidth() * image.getHeight(); i++) {
      sum += image.getRGB(i % image.getWidth(), i / image.getWidth()) >> shift & 255;
    }
    return sum / (image.getWidth() * image.getHeight());
  }

  /**
   * Runs ImageMagick; skips the test where there is none, and where {@code
   * RIBBAND_COLOUR_TESTS=required} is set fails instead.
   */
  private static void convert(String... arguments) throws IOException, InterruptedException {
    String convert =
        Stream.of(System.getenv().getOrDefault("PATH", "").split(File.pathSeparator))
            .map(place -> new File(place, "convert"))
            .filter(File::canExecute)
            .map(File::toString)
            .findFirst()
            .orElse(null);
    boolean required = "required".equals(System.getenv("RIBBAND_COLOUR_TESTS"));
    assumeTrue(convert != null || required, "ImageMagick's convert is not installed");
    assertTrue(convert != null, "ImageMagick's convert is not installed, and here it is required");
    List<String> command = new ArrayList<>(List.of(convert));
    command.addAll(List.of(arguments));
    Process process =
        new ProcessBuilder(command)
            .redirectErrorStream(true)
            .redirectOutput(ProcessBuilder.Redirect.DISCARD)
            .start();
    assertTrue(process.waitFor(60, TimeUnit.SECONDS), "took over a minute");
    assertEquals(0, process.exitValue(), String.join(" ", command));
  }
}
