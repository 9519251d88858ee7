package ribband.photo;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import com.drew.imaging.ImageMetadataReader;
import com.drew.metadata.Directory;
import java.awt.image.BufferedImage;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermission;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class DarkroomTest {
  private final PictureReader reader = new PictureReader();
  private final Darkroom darkroom = new Darkroom();
  @TempDir Path folder;

  @Test
  void printsCarryNoMetadataAtAll() throws Exception {
    byte[] tiff = Exif.orientation(6);
    BufferedImage scene = Scene.of(1100, 760);
    byte[] jpeg = Profile.inJpeg(Exif.inJpeg(Scene.jpeg(scene), tiff), Profile.linear());
    byte[] png =
        Exif.withChunk(
            Exif.inPng(Scene.png(scene), tiff),
            "tEXt",
            ("Author\0" + Exif.OWNER).getBytes(StandardCharsets.ISO_8859_1));
    for (byte[] original : List.of(jpeg, png)) {
      assertTrue(text(original).contains(Exif.OWNER), "the plant itself is missing");
      for (Path print : Prints.files(folder, original)) {
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
    assertEquals(Set.of(300), Prints.of(folder, Scene.jpeg(Scene.of(300, 200))).keySet());
    assertEquals(Set.of(480, 700), Prints.of(folder, Scene.jpeg(Scene.of(700, 500))).keySet());
    byte[] tall = Exif.inJpeg(Scene.jpeg(Scene.of(700, 300)), Exif.orientation(6));
    TreeMap<Integer, BufferedImage> upright = Prints.of(folder, tall);
    assertEquals(Set.of(300), upright.keySet());
    assertEquals(700, upright.get(300).getHeight());
  }

  @ParameterizedTest
  @CsvSource({"1,1", "5000,1", "1,3000", "3000,7", "7,3000", "481,2"})
  void thinPicturesArePrintedToo(int width, int height) throws Exception {
    byte[] bytes = Scene.png(Scene.of(width, height));
    PictureFacts facts = reader.facts(Files.write(folder.resolve("original"), bytes));
    TreeMap<Integer, BufferedImage> prints = Prints.of(folder, bytes);
    for (PrintSize size : PrintSize.of(facts)) {
      assertEquals(size.height(), prints.get(size.width()).getHeight());
    }
  }

  @Test
  void oneInMemoryIsToTheByteTheOneInTheFolder() throws Exception {
    byte[] original = Exif.inJpeg(Scene.jpeg(Scene.of(760, 1100)), Exif.orientation(5));
    Path file = Files.write(folder.resolve("original.jpg"), original);
    PictureFacts facts = reader.facts(file);
    List<Path> prints = Prints.files(folder, original);
    List<PrintSize> sizes = PrintSize.of(facts);
    assertEquals(List.of(480, 960, 1100), sizes.stream().map(PrintSize::width).toList());
    for (int i = 0; i < sizes.size(); i++) {
      byte[] one = darkroom.print(file, facts, sizes.get(i));
      assertArrayEquals(Files.readAllBytes(prints.get(i)), one);
      BufferedImage pixels = Darkroom.pixels(one);
      assertEquals(sizes.get(i), new PrintSize(pixels.getWidth(), pixels.getHeight()));
    }
  }

  @Test
  void sameBytesGiveTheSamePrints() throws Exception {
    byte[] original = Exif.inJpeg(Scene.jpeg(Scene.of(1100, 760)), Exif.orientation(5));
    List<Path> first = Prints.files(folder, original);
    List<Path> second = Prints.files(folder, original);
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
        Prints.files(folder, original).stream()
            .map(file -> file.getFileName().toString())
            .toList());
  }

  @Test
  void printsMayBeReadByWhomeverOtherFilesMay() throws Exception {
    assumeTrue(
        folder.getFileSystem().supportedFileAttributeViews().contains("posix"),
        "no POSIX permissions here");
    Set<PosixFilePermission> usual =
        Files.getPosixFilePermissions(Files.createFile(folder.resolve("usual")));
    for (Path print : Prints.files(folder, Scene.jpeg(Scene.of(300, 200)))) {
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
}
