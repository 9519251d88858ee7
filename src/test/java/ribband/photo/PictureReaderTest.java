package ribband.photo;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.RandomAccessFile;
import java.lang.management.ManagementFactory;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.time.LocalDateTime;
import java.util.Arrays;
import java.util.HexFormat;
import java.util.Locale;
import java.util.Optional;
import java.util.zip.CRC32;
import java.util.zip.DeflaterOutputStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class PictureReaderTest {
  private static final String CUT = "is cut short; copy it again from the camera";
  private static final String DAMAGED = "is damaged; copy it again from the camera";
  private static final String NO_PICTURE = "holds no picture; copy it again from the camera";
  private static final String EMPTY = "is empty; copy it again from the camera";
  private static final String TEXT = "is text and no picture; name a JPEG or PNG";
  private static final String UNKNOWN = "is no picture known here; export it as JPEG or PNG";

  private final PictureReader reader = new PictureReader();
  @TempDir Path folder;

  @Test
  void factsTellDigestKindSizeAndTime() throws Exception {
    byte[] bytes = Exif.inJpeg(Scene.jpeg(Scene.of(60, 40)), Exif.orientation(6));
    String digest = HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(bytes));
    CRC32 crc = new CRC32();
    crc.update(bytes);
    assertEquals(
        new PictureFacts(
            digest,
            crc.getValue(),
            PictureKind.JPEG,
            6,
            40,
            60,
            1,
            Optional.of(LocalDateTime.of(2026, 3, 14, 20, 25, 41))),
        reader.facts(file("a.jpg", bytes)));
  }

  @Test
  void exifOfAPngIsReadToo() throws Exception {
    byte[] bytes = Exif.inPng(Scene.png(Scene.of(60, 40)), Exif.orientation(8));
    PictureFacts facts = reader.facts(file("a.png", bytes));
    assertEquals(8, facts.orientation());
    assertEquals(40, facts.width());
    assertEquals(Optional.of(LocalDateTime.of(2026, 3, 14, 20, 25, 41)), facts.taken());
  }

  @Test
  void contentDecidesNotTheName() throws Exception {
    BufferedImage scene = Scene.of(60, 40);
    assertEquals(PictureKind.PNG, reader.facts(file("a.jpg", Scene.png(scene))).kind());
    assertEquals(PictureKind.JPEG, reader.facts(file("b.png", Scene.jpeg(scene))).kind());
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "0000:00:00 00:00:00",
        "2026:02:30 10:00:00",
        "2026:03:14 24:00:00",
        "    :  :     :  :  ",
        "last night",
        "2026:03:14"
      })
  void badDateIsNoDate(String taken) throws Exception {
    byte[] bytes = Exif.inJpeg(Scene.jpeg(Scene.of(60, 40)), Exif.tiff(1, taken));
    assertEquals(Optional.empty(), reader.facts(file("a.jpg", bytes)).taken());
  }

  @ParameterizedTest
  @ValueSource(ints = {0, 9, 255})
  void wrongOrientationIsUpright(int orientation) throws Exception {
    byte[] bytes = Exif.inJpeg(Scene.jpeg(Scene.of(60, 40)), Exif.orientation(orientation));
    assertEquals(1, reader.facts(file("a.jpg", bytes)).orientation());
  }

  @Test
  void brokenExifIsNoExif() throws Exception {
    byte[] tiff = Exif.orientation(6);
    for (int length = 0; length < tiff.length; length += 7) {
      byte[] bytes = Exif.inJpeg(Scene.jpeg(Scene.of(60, 40)), Arrays.copyOf(tiff, length));
      assertEquals(PictureKind.JPEG, reader.facts(file("a.jpg", bytes)).kind());
    }
  }

  @Test
  void emptyFileIsRefused() {
    assertEquals(EMPTY, refusal(new byte[0]));
  }

  @Test
  void folderIsRefused() {
    UnfitPicture unfit = assertThrows(UnfitPicture.class, () -> reader.facts(folder));
    assertEquals("is a folder; name the pictures in it", unfit.getMessage());
  }

  @Test
  @Timeout(20)
  void pipeIsRefusedUnopened() throws Exception {
    Path pipe = folder.resolve("pipe.jpg");
    boolean made = false;
    try {
      made = new ProcessBuilder("mkfifo", pipe.toString()).start().waitFor() == 0;
    } catch (IOException e) {
      // No such program: told below.
    }
    assumeTrue(made, "no mkfifo here");
    UnfitPicture unfit = assertThrows(UnfitPicture.class, () -> reader.facts(pipe));
    assertEquals("is no regular file; copy the picture itself here", unfit.getMessage());
  }

  @Test
  void missingFileIsTheCallersCase() {
    assertThrows(NoSuchFileException.class, () -> reader.facts(folder.resolve("none.jpg")));
  }

  @Test
  void fileOver200MegabytesIsRefusedUnread() throws Exception {
    Path file = folder.resolve("big.jpg");
    try (RandomAccessFile sparse = new RandomAccessFile(file.toFile(), "rw")) {
      sparse.setLength(200_000_001);
    }
    UnfitPicture unfit = assertThrows(UnfitPicture.class, () -> reader.facts(file));
    assertEquals("is larger than 200 MB; save it smaller", unfit.getMessage());
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          0000001866747970 68656963 00000000 6d696631 | is a HEIC picture; export it as JPEG
          0000001866747970 6d696631 00000000 6d696631 | is a HEIC picture; export it as JPEG
          0000001866747970 61766966 00000000 6d696631 | is an AVIF picture; export it as JPEG
          0000001866747970 63727820 00000001 63727820 | is a camera RAW picture; export it as JPEG
          0000001866747970 69736f6d 00000200 69736f6d | is a video; export one frame of it as JPEG
          0000001466747970 71742020 00000000 71742020 | is a video; export one frame of it as JPEG
          49492a0010000000 4352020000000000 00000000  | is a camera RAW picture; export it as JPEG
          4d4d002a00000008 0000000000000000 00000000  | is a TIFF or camera RAW picture; export it as JPEG
          424d460000000000 0000360000002800 00000200  | is a BMP picture; export it as PNG
          255044462d312e34 0a25e2e3cfd30a31 2030206f  | is a PDF; export its page as JPEG or PNG
          00010203040506ff fffefdfcfbfaf9f8 f7f6f5f4  | is no picture known here; export it as JPEG or PNG
          """)
  void otherFormatsAreNamedWhateverTheFileIsCalled(String hex, String message) {
    assertEquals(message, refusal(HexFormat.of().parseHex(hex.replace(" ", ""))));
  }

  @Test
  void textIsNamed() {
    assertEquals(TEXT, refusal("Clamped the garboard.\n".getBytes(StandardCharsets.UTF_8)));
    assertEquals(TEXT, refusal("é".repeat(600).getBytes(StandardCharsets.UTF_8)));
    assertEquals(TEXT, refusal(("a" + "é".repeat(600)).getBytes(StandardCharsets.UTF_8)));
    assertEquals(UNKNOWN, refusal(new byte[] {'a', (byte) 0xFF, 'b', 0}));
  }

  @ParameterizedTest
  @CsvSource({"1", "50", "99"})
  void cutFileIsRefused(int percent) {
    BufferedImage scene = Scene.of(300, 200);
    for (byte[] whole :
        new byte[][] {Scene.jpeg(scene), Scene.progressiveJpeg(scene), Scene.png(scene)}) {
      assertEquals(CUT, refusal(Arrays.copyOf(whole, whole.length * percent / 100)));
      assertEquals(CUT, refusal(Arrays.copyOf(whole, whole.length - 1)));
    }
  }

  @Test
  void cutJpegWithAnEndSetBehindItIsRefused() {
    BufferedImage scene = Scene.of(300, 200);
    for (byte[] whole : new byte[][] {Scene.jpeg(scene), Scene.progressiveJpeg(scene)}) {
      for (int percent : new int[] {20, 50, 80, 99}) {
        byte[] cut = Arrays.copyOf(whole, whole.length * percent / 100);
        assertEquals(DAMAGED, refusal(Exif.join(cut, new byte[] {(byte) 0xFF, (byte) 0xD9})));
      }
    }
  }

  @Test
  void cutPixelsInWholePngChunksAreRefused() {
    byte[] png = Scene.png(Scene.of(300, 200));
    int header = 8 + 25;
    int length = ByteBuffer.wrap(png).getInt(header);
    for (int percent : new int[] {1, 50, 99}) {
      byte[] half = Arrays.copyOfRange(png, header + 8, header + 8 + length * percent / 100);
      ByteArrayOutputStream out = new ByteArrayOutputStream();
      out.write(png, 0, header);
      out.writeBytes(Exif.chunk("IDAT", half));
      out.writeBytes(Exif.chunk("IEND", new byte[0]));
      assertEquals(DAMAGED, refusal(out.toByteArray()), percent + " %");
    }
  }

  @Test
  void headerOnlyIsRefused() {
    byte[] png = Scene.png(Scene.of(30, 20));
    byte[] noData = Exif.join(Arrays.copyOf(png, 8 + 25), Exif.chunk("IEND", new byte[0]));
    assertEquals(NO_PICTURE, refusal(noData));
    assertEquals(
        NO_PICTURE,
        refusal(HexFormat.of().parseHex("ffd8ffe000104a46494600010100000100010000ffd9")));
    assertEquals(CUT, refusal(HexFormat.of().parseHex("ffd8ff")));
  }

  @Test
  void flippedByteInAPngIsAlwaysFound() {
    byte[] png = Scene.png(Scene.of(60, 40));
    for (int at = 8; at < png.length; at += 97) {
      byte[] flipped = png.clone();
      flipped[at] ^= 0x10;
      String message = refusal(flipped);
      assertTrue(message.equals(DAMAGED) || message.equals(CUT), at + ": " + message);
    }
  }

  @Test
  void paddingBeforeTheEndOfAJpegIsHarmlessAndOtherBytesAreNot() throws Exception {
    byte[] whole = Scene.jpeg(Scene.of(60, 40));
    byte[] body = Arrays.copyOf(whole, whole.length - 2);
    byte[] end = {(byte) 0xFF, (byte) 0xD9};
    Path padded = file("a.jpg", Exif.join(Exif.join(body, new byte[9]), end));
    reader.tryOut(padded, reader.facts(padded));
    byte[] astray = {0x12, 0x34, 0x56, 0x12, 0x34, 0x56, 0x12, 0x34, 0x56};
    assertEquals(DAMAGED, refusal(Exif.join(Exif.join(body, astray), end)));
  }

  @ParameterizedTest
  @ValueSource(strings = {"tr", "ar-EG", "de", "ja", "th-TH-u-nu-thai"})
  void verdictIsTheSameInEveryLocale(String tag) throws Exception {
    Locale before = Locale.getDefault();
    try {
      Locale.setDefault(Locale.forLanguageTag(tag));
      cutFileIsRefused(50);
      cutJpegWithAnEndSetBehindItIsRefused();
      paddingBeforeTheEndOfAJpegIsHarmlessAndOtherBytesAreNot();
    } finally {
      Locale.setDefault(before);
    }
  }

  @Test
  void pixelBombIsRefusedFromItsHeader() {
    assertEquals(
        "is 40000 x 40000 px, and more than 100 megapixels or 30000 px on a side are not read;"
            + " save it smaller",
        refusal(pngOfSize(40_000, 40_000)));
    assertEquals(
        "is 30001 x 1 px, and more than 100 megapixels or 30000 px on a side are not read; save it"
            + " smaller",
        refusal(pngOfSize(30_001, 1)));
    assertEquals(DAMAGED, refusal(pngOfSize(0, 5)));
    assertEquals(DAMAGED, refusal(pngOfSize(-1, 5)));
    byte[] jpeg = Scene.jpeg(Scene.of(60, 40));
    ByteBuffer.wrap(jpeg).putShort(frame(jpeg) + 5, (short) 60_000);
    assertTrue(refusal(jpeg).startsWith("is 60 x 60000 px"), refusal(jpeg));
  }

  @Test
  void textBombInAPngIsNeverUnfolded() throws Exception {
    ByteArrayOutputStream text = new ByteArrayOutputStream();
    text.writeBytes("Comment\0\0".getBytes(StandardCharsets.US_ASCII));
    try (DeflaterOutputStream deflater = new DeflaterOutputStream(text)) {
      for (int i = 0; i < 200; i++) {
        deflater.write(new byte[1_000_000]);
      }
    }
    byte[] png = Exif.withChunk(Scene.png(Scene.of(60, 40)), "zTXt", text.toByteArray());
    Path file = file("a.png", png);
    long before = allocated();
    reader.tryOut(file, reader.facts(file));
    long taken = allocated() - before;
    assertTrue(taken < 20_000_000, taken + " bytes for a picture of 60 x 40 px");
  }

  @Test
  void unusualJpegIsRefused() {
    byte[] lossless = Scene.jpeg(Scene.of(60, 40));
    lossless[frame(lossless) + 1] = (byte) 0xC3;
    byte[] twelveBits = Scene.jpeg(Scene.of(60, 40));
    twelveBits[frame(twelveBits) + 4] = 12;
    for (byte[] jpeg : new byte[][] {lossless, twelveBits}) {
      assertEquals("is an unusual kind of JPEG; export it as a plain JPEG", refusal(jpeg));
    }
  }

  @Test
  void fileThatChangedAfterItsFactsIsRefused() throws Exception {
    Path file = file("a.jpg", Scene.jpeg(Scene.of(60, 40)));
    PictureFacts facts = reader.facts(file);
    Files.write(file, Scene.jpeg(Scene.of(60, 41)));
    UnfitPicture unfit = assertThrows(UnfitPicture.class, () -> reader.tryOut(file, facts));
    assertEquals("changed while it was read; run again when it is whole", unfit.getMessage());
  }

  private String refusal(byte[] bytes) {
    Path file = file("picture.jpg", bytes);
    return assertThrows(UnfitPicture.class, () -> reader.tryOut(file, reader.facts(file)))
        .getMessage();
  }

  private Path file(String name, byte[] bytes) {
    try {
      return Files.write(folder.resolve(name), bytes);
    } catch (IOException e) {
      throw new AssertionError(e);
    }
  }

  private static byte[] pngOfSize(int width, int height) {
    byte[] png = Scene.png(Scene.of(30, 20));
    byte[] header = Arrays.copyOfRange(png, 16, 29);
    ByteBuffer.wrap(header).putInt(width).putInt(height);
    byte[] start = Exif.join(Arrays.copyOf(png, 8), Exif.chunk("IHDR", header));
    return Exif.join(start, Arrays.copyOfRange(png, 33, png.length));
  }

  /** Where the marker of the baseline frame stands. */
  private static int frame(byte[] jpeg) {
    for (int i = 2; ; i += 2 + ByteBuffer.wrap(jpeg).getShort(i + 2)) {
      if (jpeg[i + 1] == (byte) 0xC0) {
        return i;
      }
    }
  }

  private static long allocated() {
    com.sun.management.ThreadMXBean threads =
        (com.sun.management.ThreadMXBean) ManagementFactory.getThreadMXBean();
    return threads.getThreadAllocatedBytes(Thread.currentThread().getId());
  }
}
