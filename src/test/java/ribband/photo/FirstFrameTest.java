package ribband.photo;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDateTime;
import java.util.Arrays;
import java.util.Optional;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** GIF and WebP. The samples are the scene of 60 x 40 px, written by ImageMagick 6.9.11. */
@Timeout(120)
class FirstFrameTest {
  private static final String CUT = "is cut short; copy it again from the camera";
  private static final String DAMAGED = "is damaged; copy it again from the camera";
  private static final String NO_PICTURE = "holds no picture; copy it again from the camera";

  private final PictureReader reader = new PictureReader();
  @TempDir Path folder;

  @ParameterizedTest
  @ValueSource(
      strings = {"animated.gif", "animated.webp", "lossy.webp", "lossless.webp", "clear.webp"})
  void firstFrameIsShown(String name) throws Exception {
    BufferedImage scene = Scene.of(60, 40);
    BufferedImage print = Prints.of(folder, sample(name)).get(60);
    BufferedImage half = Prints.of(folder, Scene.png(half(scene))).get(60);
    double apart = Likeness.meanDifference(name.startsWith("clear") ? half : scene, print);
    assertTrue(apart < 12, apart + " levels");
  }

  @ParameterizedTest
  @CsvSource({"animated.gif,3", "animated.webp,3", "lossy.webp,1", "clear.webp,1"})
  void framesAreCounted(String name, int frames) throws Exception {
    assertEquals(frames, reader.facts(file(sample(name))).frames());
  }

  @ParameterizedTest
  @ValueSource(strings = {"lossy.webp", "lossless.webp", "clear.webp", "animated.webp"})
  void exifOfAWebpIsRead(String name) throws Exception {
    for (String opening : new String[] {"", "Exif\0\0"}) {
      byte[] tiff =
          Exif.join(
              opening.getBytes(StandardCharsets.US_ASCII), Exif.tiff(6, "2026:03:14 20:25:41"));
      PictureFacts facts = reader.facts(file(withChunk(sample(name), "EXIF", tiff)));
      assertEquals(PictureKind.WEBP, facts.kind());
      assertEquals(6, facts.orientation());
      assertEquals(40, facts.width());
      assertEquals(60, facts.height());
      assertEquals(Optional.of(LocalDateTime.of(2026, 3, 14, 20, 25, 41)), facts.taken());
    }
  }

  @Test
  void profileOfAWebpIsConvertedToSrgb() throws Exception {
    byte[] plain = sample("lossless.webp");
    BufferedImage bright = Prints.of(folder, withChunk(plain, "ICCP", Profile.linear())).get(60);
    assertTrue(Likeness.meanDifference(bright, Prints.of(folder, plain).get(60)) > 30);
    byte[] broken = Arrays.copyOf(Profile.linear(), 200);
    BufferedImage same = Prints.of(folder, withChunk(plain, "ICCP", broken)).get(60);
    assertEquals(0, Likeness.meanDifference(same, Prints.of(folder, plain).get(60)));
  }

  @ParameterizedTest
  @ValueSource(strings = {"animated.gif", "animated.webp", "lossy.webp", "lossless.webp"})
  void cutFileIsRefusedWhereverItIsCut(String name) throws Exception {
    byte[] whole = sample(name);
    for (int length = 16; length < whole.length - 1; length += 1 + whole.length / 150) {
      assertEquals(CUT, refusal(Arrays.copyOf(whole, length)), length + " bytes");
    }
  }

  @Test
  void gifWhoseDataEndEarlyIsRefused() throws Exception {
    byte[] gif = sample("animated.gif");
    int block = firstDataBlock(gif);
    byte[] early = Arrays.copyOf(gif, block + 1 + (gif[block] & 255) + 2);
    early[early.length - 2] = 0;
    early[early.length - 1] = 0x3B;
    assertEquals(DAMAGED, refusal(early));
  }

  @Test
  void fileWithoutAFrameIsRefused() throws Exception {
    byte[] gif = {'G', 'I', 'F', '8', '9', 'a', 9, 0, 9, 0, 0, 0, 0, 0x3B};
    assertEquals(NO_PICTURE, refusal(gif));
    assertEquals(NO_PICTURE, refusal(withChunk(riff(), "XMP ", new byte[4])));
  }

  @Test
  void pixelBombIsRefusedFromItsHeader() throws Exception {
    byte[] gif = sample("animated.gif");
    ByteBuffer.wrap(gif)
        .order(ByteOrder.LITTLE_ENDIAN)
        .putShort(firstDataBlock(gif) - 6, (short) 60_000);
    assertTrue(refusal(gif).startsWith("is 60000 x 40 px, and more than"), refusal(gif));
    byte[] lossless = {0x2F, (byte) 0xFF, (byte) 0xFF, (byte) 0xFF, 0x0F, 0};
    String refusal = refusal(withChunk(riff(), "VP8L", lossless));
    assertTrue(refusal.startsWith("is 16384 x 16384 px, and more than 100 megapixels"), refusal);
  }

  /** A lossy WebP has no checksum: what matters is that a flip ends in a picture or a sentence. */
  @ParameterizedTest
  @ValueSource(strings = {"animated.gif", "lossy.webp", "lossless.webp", "clear.webp"})
  void flippedBytesEndInAPictureOrASentence(String name) throws Exception {
    byte[] whole = sample(name);
    SplittableRandom places = new SplittableRandom(20260314);
    int refused = 0;
    for (int i = 0; i < 300; i++) {
      byte[] flipped = whole.clone();
      flipped[places.nextInt(4, flipped.length)] ^= (byte) places.nextInt(1, 256);
      try {
        Path file = file(flipped);
        reader.tryOut(file, reader.facts(file));
      } catch (UnfitPicture unfit) {
        refused++;
      }
    }
    assertTrue(refused > 0, "none of 300 refused");
  }

  private String refusal(byte[] bytes) {
    return assertThrows(
            UnfitPicture.class,
            () -> {
              Path file = file(bytes);
              reader.tryOut(file, reader.facts(file));
            })
        .getMessage();
  }

  private Path file(byte[] bytes) throws IOException {
    return Files.write(folder.resolve("picture"), bytes);
  }

  private static byte[] sample(String name) throws IOException {
    try (InputStream in = FirstFrameTest.class.getResourceAsStream(name)) {
      return in.readAllBytes();
    }
  }

  /** Where the first frame's first block of data begins: after its descriptor of 10 bytes. */
  private static int firstDataBlock(byte[] gif) {
    int at = 13 + (3 << ((gif[10] & 7) + 1));
    while (gif[at] == 0x21) {
      for (at += 2; gif[at] != 0; at += 1 + (gif[at] & 255)) {}
      at++;
    }
    assertEquals(0, gif[at + 9], "a palette of its own");
    return at + 11;
  }

  private static byte[] riff() {
    return "RIFF\4\0\0\0WEBP".getBytes(StandardCharsets.US_ASCII);
  }

  private static byte[] withChunk(byte[] webp, String name, byte[] data) {
    int padded = data.length + (data.length & 1);
    ByteBuffer out =
        ByteBuffer.allocate(webp.length + 8 + padded).order(ByteOrder.LITTLE_ENDIAN).put(webp);
    out.put(name.getBytes(StandardCharsets.US_ASCII)).putInt(data.length).put(data);
    return out.putInt(4, webp.length + padded).array();
  }

  private static BufferedImage half(BufferedImage scene) {
    BufferedImage clear = new BufferedImage(60, 40, BufferedImage.TYPE_INT_ARGB);
    for (int i = 0; i < 60 * 40; i++) {
      clear.setRGB(i % 60, i / 60, 0x7F000000 | scene.getRGB(i % 60, i / 60) & 0xFFFFFF);
    }
    return clear;
  }
}
