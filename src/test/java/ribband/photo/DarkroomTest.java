package ribband.photo;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import com.drew.imaging.ImageMetadataReader;
import com.drew.metadata.Directory;
import java.awt.color.ColorSpace;
import java.awt.color.ICC_Profile;
import java.awt.image.BufferedImage;
import java.awt.image.IndexColorModel;
import java.awt.image.WritableRaster;
import java.io.ByteArrayOutputStream;
import java.io.File;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermission;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import java.util.zip.DeflaterOutputStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

class DarkroomTest {
  private final PictureReader reader = new PictureReader();
  private final Darkroom darkroom = new Darkroom();
  @TempDir Path folder;

  @ParameterizedTest
  @ValueSource(ints = {1, 2, 3, 4, 5, 6, 7, 8})
  void turnedPictureIsPrintedAsTheSameOneUnturned(int orientation) throws Exception {
    BufferedImage upright = Scene.of(701, 480);
    BufferedImage turned = Scene.stored(upright, orientation);
    TreeMap<Integer, BufferedImage> expected = prints(Scene.png(upright));
    byte[] tiff = Exif.orientation(orientation);
    assertAlike(expected, prints(Exif.inPng(Scene.png(turned), tiff)), 0.998, 0.3);
    assertAlike(expected, prints(Exif.inJpeg(Scene.jpeg(turned), tiff)), 0.97, 1.8);
  }

  @ParameterizedTest
  @ValueSource(ints = {1, 2, 3, 4, 5, 6, 7, 8})
  void turningMovesPixelsAndChangesNone(int orientation) {
    BufferedImage upright = Scene.of(31, 20);
    BufferedImage turned = Scene.stored(upright, orientation);
    assertEquals(
        0, Likeness.meanDifference(upright, Turning.upright(turned, orientation)), "levels");
  }

  @ParameterizedTest
  @EnumSource(ReferenceScaler.class)
  void printsAreWhatATextbookScalerMakes(ReferenceScaler scaler) throws Exception {
    BufferedImage scene = Scene.of(1700, 1275);
    prints(Scene.png(scene))
        .forEach(
            (width, print) -> {
              BufferedImage reference = scaler.scale(scene, width, width * 3 / 4);
              double alike = Likeness.ssim(reference, print);
              assertTrue(alike > 0.98, scaler + " at " + width + ": SSIM " + alike);
            });
  }

  @Test
  void printsAreWhatImageMagickMakes() throws Exception {
    String convert = onPath("convert");
    assumeTrue(convert != null, "ImageMagick's convert is not installed");
    BufferedImage scene = Scene.of(1700, 1275);
    Path original = Files.write(folder.resolve("scene.png"), Scene.png(scene));
    for (var print : prints(Scene.png(scene)).entrySet()) {
      int width = print.getKey();
      Path scaled = folder.resolve("scaled.png");
      run(
          convert,
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
  void printsCarryNoMetadataAtAll() throws Exception {
    byte[] tiff = Exif.orientation(6);
    BufferedImage scene = Scene.of(1100, 760);
    byte[] jpeg = withProfile(Exif.inJpeg(Scene.jpeg(scene), tiff));
    byte[] png =
        Exif.withChunk(
            Exif.inPng(Scene.png(scene), tiff),
            "tEXt",
            ("Author\0" + Exif.OWNER).getBytes(StandardCharsets.ISO_8859_1));
    for (byte[] original : List.of(jpeg, png)) {
      assertTrue(text(original).contains(Exif.OWNER), "the plant itself is missing");
      for (Path print : files(original)) {
        byte[] bytes = Files.readAllBytes(print);
        Set<String> blocks = new TreeSet<>();
        for (Directory block : ImageMetadataReader.readMetadata(print.toFile()).getDirectories()) {
          blocks.add(block.getName());
        }
        assertEquals(Set.of("File", "File Type", "Huffman", "JFIF", "JPEG"), blocks);
        assertEquals("ffd8 ffe0 ffdb ffdb ffc0 ffc4 ffc4 ffc4 ffc4 ffda ffd9", marks(bytes));
        for (String planted :
            List.of(Exif.OWNER, Exif.SERIAL, Exif.COMMENT, "Exif", "2026:03:14", "ICC_PROFILE")) {
          assertFalse(text(bytes).contains(planted), print + " holds " + planted);
        }
      }
    }
  }

  @Test
  void nothingIsPrintedWiderThanItIs() throws Exception {
    assertEquals(Set.of(300), prints(Scene.jpeg(Scene.of(300, 200))).keySet());
    assertEquals(Set.of(480, 700), prints(Scene.jpeg(Scene.of(700, 500))).keySet());
    byte[] tall = Exif.inJpeg(Scene.jpeg(Scene.of(700, 300)), Exif.orientation(6));
    TreeMap<Integer, BufferedImage> upright = prints(tall);
    assertEquals(Set.of(300), upright.keySet());
    assertEquals(700, upright.get(300).getHeight());
  }

  @ParameterizedTest
  @CsvSource({"1,1", "5000,1", "1,3000", "3000,7", "7,3000", "481,2"})
  void thinPicturesArePrintedToo(int width, int height) throws Exception {
    byte[] bytes = Scene.png(Scene.of(width, height));
    PictureFacts facts = reader.facts(Files.write(folder.resolve("original"), bytes));
    TreeMap<Integer, BufferedImage> prints = prints(bytes);
    for (PrintSize size : PrintSize.of(facts)) {
      assertEquals(size.height(), prints.get(size.width()).getHeight());
    }
  }

  @Test
  void sameBytesGiveTheSamePrints() throws Exception {
    byte[] original = Exif.inJpeg(Scene.jpeg(Scene.of(1100, 760)), Exif.orientation(5));
    List<Path> first = files(original);
    List<Path> second = files(original);
    assertEquals(2, first.size());
    for (int i = 0; i < first.size(); i++) {
      assertEquals(first.get(i).getFileName(), second.get(i).getFileName());
      assertArrayEquals(Files.readAllBytes(first.get(i)), Files.readAllBytes(second.get(i)));
    }
  }

  @Test
  void printsAreNamedByContentAndRecipe() throws Exception {
    byte[] original = Scene.jpeg(Scene.of(700, 500));
    PictureFacts facts = reader.facts(Files.write(folder.resolve("original"), original));
    String stem = Darkroom.stem(facts);
    assertTrue(stem.matches("[0-9a-f]{20}"), stem);
    assertEquals(
        List.of(stem + "-480.jpg", stem + "-700.jpg"),
        files(original).stream().map(file -> file.getFileName().toString()).toList());
  }

  @Test
  void printsMayBeReadByWhomeverOtherFilesMay() throws Exception {
    assumeTrue(
        folder.getFileSystem().supportedFileAttributeViews().contains("posix"),
        "no POSIX permissions here");
    Set<PosixFilePermission> usual =
        Files.getPosixFilePermissions(Files.createFile(folder.resolve("usual")));
    for (Path print : files(Scene.jpeg(Scene.of(300, 200)))) {
      assertEquals(usual, Files.getPosixFilePermissions(print));
    }
  }

  @Test
  void damagedPictureLeavesNothingBehind() throws Exception {
    byte[] whole = Scene.jpeg(Scene.of(1100, 760));
    byte[] cut = Arrays.copyOf(whole, whole.length / 2);
    cut[cut.length - 2] = (byte) 0xFF;
    cut[cut.length - 1] = (byte) 0xD9;
    Path original = Files.write(folder.resolve("cut.jpg"), cut);
    Path prints = Files.createDirectory(folder.resolve("prints"));
    PictureFacts facts = reader.facts(original);
    UnfitPicture unfit =
        assertThrows(UnfitPicture.class, () -> darkroom.print(original, facts, prints));
    assertEquals("is damaged; copy it again from the camera", unfit.getMessage());
    assertEquals(0, prints.toFile().list().length);
  }

  /**
   * What a decoder puts in place of lost pixels is rows of one colour; the scene has none. A flip
   * that only changes some pixels' colour is beyond finding: a JPEG has no checksum.
   */
  @ParameterizedTest
  @ValueSource(booleans = {false, true})
  void flippedBytesNeverGiveAHalfGreyPrint(boolean progressive) throws Exception {
    BufferedImage scene = Scene.of(300, 200);
    byte[] whole = progressive ? Scene.progressiveJpeg(scene) : Scene.jpeg(scene);
    assertEquals(0, greyRows(prints(whole).get(300)), "rows of one colour in the scene itself");
    SplittableRandom places = new SplittableRandom(20260314);
    int refused = 0;
    for (int i = 0; i < 200; i++) {
      byte[] flipped = whole.clone();
      int at = places.nextInt(2, flipped.length);
      flipped[at] ^= (byte) places.nextInt(1, 256);
      try {
        int width = reader.facts(Files.write(folder.resolve("f.jpg"), flipped)).width();
        BufferedImage print = prints(flipped).get(PrintSize.of(factsOf(flipped)).get(0).width());
        assertTrue(greyRows(print) <= 16, "byte " + at + " at width " + width);
      } catch (UnfitPicture unfit) {
        refused++;
      }
    }
    assertTrue(refused > 40, refused + " of 200 refused");
  }

  @Test
  void transparentPartsAreWhite() throws Exception {
    BufferedImage image = new BufferedImage(64, 32, BufferedImage.TYPE_INT_ARGB);
    for (int y = 0; y < 32; y++) {
      for (int x = 0; x < 64; x++) {
        image.setRGB(x, y, x < 32 ? 0x00FF0000 : 0x80000000);
      }
    }
    BufferedImage print = prints(Scene.png(image)).get(64);
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
    BufferedImage print = prints(Scene.png(image)).get(64);
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
      assertLevel(60, prints(original).get(64).getRGB(32, 16));
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
    BufferedImage print = prints(png.toByteArray()).get(64);
    assertLevel(60, print.getRGB(8, 16));
    assertLevel(255, print.getRGB(56, 16));
  }

  /** The greys and 16-bit kinds that the JDK cannot write, made and measured by ImageMagick. */
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
        "-colorspace Gray -quality 95 JPEG:"
      })
  void coloursAreWhatImageMagickSees(String options) throws Exception {
    String convert = onPath("convert");
    assumeTrue(convert != null, "ImageMagick's convert is not installed");
    Path scene = Files.write(folder.resolve("scene.png"), Scene.png(Scene.of(200, 150)));
    Path original = folder.resolve("original");
    Path flat = folder.resolve("flat.png");
    List<String> command = new ArrayList<>(List.of(convert, scene.toString()));
    command.addAll(List.of((options + original).split(" ")));
    run(command.toArray(String[]::new));
    run(
        convert,
        original.toString(),
        "-background",
        "white",
        "-alpha",
        "remove",
        "-colorspace",
        "sRGB",
        "PNG24:" + flat);
    BufferedImage print = prints(Files.readAllBytes(original)).get(200);
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
    assertLevel(51, prints(Scene.jpeg(image)).get(64).getRGB(32, 16));
    assertLevel(124, prints(withProfile(Scene.jpeg(image))).get(64).getRGB(32, 16));
  }

  private static byte[] withProfile(byte[] jpeg) {
    ByteArrayOutputStream profile = new ByteArrayOutputStream();
    profile.writeBytes("ICC_PROFILE\0".getBytes(StandardCharsets.US_ASCII));
    profile.write(1);
    profile.write(1);
    profile.writeBytes(ICC_Profile.getInstance(ColorSpace.CS_LINEAR_RGB).getData());
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    int start = 2 + 18;
    boolean opensWithJfif = jpeg[3] == (byte) 0xE0;
    out.write(jpeg, 0, opensWithJfif ? start : 2);
    Exif.segment(out, 0xE2, profile.toByteArray());
    int rest = opensWithJfif ? start : 2;
    out.write(jpeg, rest, jpeg.length - rest);
    return out.toByteArray();
  }

  private PictureFacts factsOf(byte[] original) throws Exception {
    return reader.facts(Files.write(folder.resolve("original"), original));
  }

  /** The prints by their widths. */
  private TreeMap<Integer, BufferedImage> prints(byte[] original) throws Exception {
    TreeMap<Integer, BufferedImage> prints = new TreeMap<>();
    for (Path file : files(original)) {
      String name = file.getFileName().toString();
      int width = Integer.parseInt(name.substring(name.indexOf('-') + 1, name.indexOf('.')));
      prints.put(width, Scene.decode(Files.readAllBytes(file)));
      assertEquals(width, prints.get(width).getWidth());
    }
    return prints;
  }

  private List<Path> files(byte[] original) throws Exception {
    Path file = Files.write(folder.resolve("original"), original);
    Path prints = Files.createTempDirectory(folder, "prints");
    PictureFacts facts = reader.facts(file);
    List<PrintSize> sizes = darkroom.print(file, facts, prints);
    List<Path> files =
        sizes.stream().map(size -> prints.resolve(Darkroom.fileName(facts, size))).toList();
    try (Stream<Path> all = Files.list(prints)) {
      assertEquals(Set.copyOf(files), Set.copyOf(all.toList()));
    }
    return files;
  }

  private static void assertAlike(
      TreeMap<Integer, BufferedImage> expected,
      TreeMap<Integer, BufferedImage> actual,
      double ssim,
      double levels) {
    assertEquals(expected.keySet(), actual.keySet());
    expected.forEach(
        (width, print) -> {
          double alike = Likeness.ssim(print, actual.get(width));
          double off = Likeness.meanDifference(print, actual.get(width));
          assertTrue(
              alike > ssim && off < levels,
              "at " + width + ": SSIM " + alike + ", levels off " + off);
        });
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

  /** Rows at the bottom that are all of one luma. */
  private static int greyRows(BufferedImage image) {
    int rows = 0;
    for (int y = image.getHeight() - 1; y >= 0; y--) {
      double least = 255;
      double most = 0;
      for (int x = 0; x < image.getWidth(); x++) {
        double luma = Likeness.luma(image.getRGB(x, y));
        least = Math.min(least, luma);
        most = Math.max(most, luma);
      }
      if (most - least > 6) {
        return rows;
      }
      rows++;
    }
    return rows;
  }

  private static double mean(BufferedImage image, int shift) {
    double sum = 0;
    for (int i = 0; i < image.getWidth() * image.getHeight(); i++) {
      sum += image.getRGB(i % image.getWidth(), i / image.getWidth()) >> shift & 255;
    }
    return sum / (image.getWidth() * image.getHeight());
  }

  private static String text(byte[] bytes) {
    return new String(bytes, StandardCharsets.ISO_8859_1);
  }

  /** The markers of a baseline JPEG, in hex. */
  private static String marks(byte[] jpeg) {
    StringBuilder marks = new StringBuilder("ffd8");
    int at = 2;
    while (jpeg[at + 1] != (byte) 0xDA) {
      marks.append(" ff").append(Integer.toHexString(jpeg[at + 1] & 255));
      at += 2 + ((jpeg[at + 2] & 255) << 8 | jpeg[at + 3] & 255);
    }
    marks.append(" ffda");
    for (; at < jpeg.length - 1; at++) {
      if (jpeg[at] == (byte) 0xFF && jpeg[at + 1] != 0 && jpeg[at + 1] != (byte) 0xDA) {
        marks.append(" ff").append(Integer.toHexString(jpeg[at + 1] & 255));
      }
    }
    return marks.toString();
  }

  private static String onPath(String program) {
    return Stream.of(System.getenv().getOrDefault("PATH", "").split(File.pathSeparator))
        .map(place -> new File(place, program))
        .filter(File::canExecute)
        .map(File::toString)
        .findFirst()
        .orElse(null);
  }

  private static void run(String... command) throws IOException, InterruptedException {
    Process process =
        new ProcessBuilder(command)
            .redirectErrorStream(true)
            .redirectOutput(ProcessBuilder.Redirect.DISCARD)
            .start();
    assertTrue(process.waitFor(60, TimeUnit.SECONDS), "took over a minute");
    assertEquals(0, process.exitValue(), String.join(" ", command));
  }
}
