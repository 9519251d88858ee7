package ribband.postcard;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

class PostcardTest {
  private static final int PAPER = 0xffeef1ef;
  private static final int EDGE = 12;
  private static final List<Color> CORNERS =
      List.of(Color.RED, Color.GREEN, Color.BLUE, Color.MAGENTA);

  @ParameterizedTest
  @CsvSource({"SHARED, 1200, 630", "FRAME, 1920, 1080"})
  void aCardHasTheSizeOfItsShape(Shape shape, int width, int height) throws IOException {
    BufferedImage card = card(Faces.usual(), Optional.empty(), shape);

    assertEquals(List.of(width, height), List.of(card.getWidth(), card.getHeight()));
  }

  @ParameterizedTest
  @EnumSource(Shape.class)
  void theEdgeIsPaper(Shape shape) throws IOException {
    for (Face face : List.of(Faces.usual(), Faces.bare())) {
      BufferedImage card = card(face, Optional.of(quartered(400, 300)), shape);
      for (int y = 0; y < card.getHeight(); y++) {
        for (int x = 0; x < card.getWidth(); x++) {
          boolean inside =
              x >= EDGE && y >= EDGE && x < card.getWidth() - EDGE && y < card.getHeight() - EDGE;
          assertTrue(inside || card.getRGB(x, y) == PAPER, x + ", " + y);
        }
      }
    }
  }

  /** All four corners are there, each beside the white edge of the print. */
  @ParameterizedTest
  @CsvSource({"400, 300", "300, 400", "500, 500", "900, 300", "100, 700", "40, 30", "3000, 900"})
  void thePictureIsWhole(int width, int height) throws IOException {
    BufferedImage card = card(Faces.usual(), Optional.of(quartered(width, height)), Shape.SHARED);
    Box print =
        SheetPlan.of(Faces.usual(), Optional.of(new Proportion(width, height)), Shape.SHARED)
            .print()
            .orElseThrow();
    int left = (int) Math.round(print.x());
    int top = (int) Math.round(print.y());
    int right = left + (int) Math.round(print.width()) - 1;
    int bottom = top + (int) Math.round(print.height()) - 1;

    assertEquals(
        CORNERS,
        List.of(
            new Color(card.getRGB(left, top)),
            new Color(card.getRGB(right, top)),
            new Color(card.getRGB(left, bottom)),
            new Color(card.getRGB(right, bottom))));
    for (int[] outside : new int[][] {{left - 2, top}, {right + 2, bottom}, {left, bottom + 2}}) {
      assertEquals(Color.WHITE, new Color(card.getRGB(outside[0], outside[1])));
    }
  }

  @Test
  void theWordsAreInked() throws IOException {
    BufferedImage card = card(Faces.usual(), Optional.empty(), Shape.SHARED);
    Sheet sheet = SheetPlan.of(Faces.usual(), Optional.empty(), Shape.SHARED);

    for (Words words : sheet.words()) {
      Box box = words.box();
      int ink = words.hand().ink().color().getRGB();
      boolean found = false;
      for (int y = (int) box.y(); y <= box.bottom(); y++) {
        for (int x = (int) box.x(); x <= box.right(); x++) {
          found |= card.getRGB(x, y) == ink;
        }
      }
      assertTrue(found, words::toString);
    }
  }

  @Test
  void oneAccentIsRedAndTheLinesAreInkedWhereThereIsNoPicture() throws IOException {
    BufferedImage card = card(Faces.bare(), Optional.empty(), Shape.SHARED);

    assertEquals(new Color(0xb3271e), new Color(card.getRGB(1100, 112)));
    assertEquals(new Color(0x14283b), new Color(card.getRGB(600, 26)));
  }

  @Test
  void theSameFaceAndPictureIsTheSameCardInEveryThread() {
    BufferedImage picture = quartered(640, 480);
    byte[] first = Postcard.png(Faces.usual(), Optional.of(picture), Shape.SHARED);

    IntStream.range(0, 6)
        .parallel()
        .mapToObj(i -> Postcard.png(Faces.usual(), Optional.of(picture), Shape.SHARED))
        .forEach(again -> assertArrayEquals(first, again));
  }

  @Test
  void aCardTellsWhoDrewItAndNothingElse() {
    byte[] png = Postcard.png(Faces.usual(), Optional.empty(), Shape.SHARED);

    assertEquals(List.of("IHDR", "tEXt", "IDAT", "IEND"), chunks(png));
    assertTrue(Postcard.isOurs(png));
  }

  @Test
  void aFileThatWeDidNotDrawIsNotOurs() throws IOException {
    ByteArrayOutputStream other = new ByteArrayOutputStream();
    ImageIO.write(quartered(8, 8), "png", other);
    byte[] ours = Postcard.png(Faces.bare(), Optional.empty(), Shape.SHARED);
    byte[] said = ours.clone();
    said[textAt(ours)] = 'r';

    assertFalse(Postcard.isOurs(other.toByteArray()));
    assertFalse(Postcard.isOurs(said));
    assertFalse(Postcard.isOurs(new byte[0]));
    assertFalse(Postcard.isOurs(Arrays.copyOfRange(ours, 8, ours.length)));
    assertTrue(Postcard.isOurs(Arrays.copyOf(ours, textAt(ours) + 7 + 4)));
    for (int length = 0; length < textAt(ours) + 7 + 4; length++) {
      assertFalse(Postcard.isOurs(Arrays.copyOf(ours, length)), "of " + length + " bytes");
    }
  }

  @Test
  void aChunkThatTellsANegativeOrTooLargeLengthEndsTheSearch() {
    byte[] ours = Postcard.png(Faces.bare(), Optional.empty(), Shape.SHARED);
    byte[] negative = ours.clone();
    negative[8] = (byte) 0x80;
    byte[] large = ours.clone();
    large[8] = 0x7f;

    assertFalse(Postcard.isOurs(negative));
    assertFalse(Postcard.isOurs(large));
  }

  private static int textAt(byte[] png) {
    return new String(png, StandardCharsets.ISO_8859_1).indexOf("Ribband");
  }

  /** The types of chunks, each run of pixels told once. */
  private static List<String> chunks(byte[] png) {
    ByteBuffer in = ByteBuffer.wrap(png, 8, png.length - 8);
    List<String> types = new ArrayList<>();
    while (in.hasRemaining()) {
      int length = in.getInt();
      byte[] type = new byte[4];
      in.get(type);
      in.position(in.position() + length + 4);
      String name = new String(type, StandardCharsets.ISO_8859_1);
      if (types.isEmpty() || !types.get(types.size() - 1).equals(name)) {
        types.add(name);
      }
    }
    return types;
  }

  /** A picture of four colours, one in each quarter. */
  private static BufferedImage quartered(int width, int height) {
    BufferedImage picture = new BufferedImage(width, height, BufferedImage.TYPE_3BYTE_BGR);
    Graphics2D g = picture.createGraphics();
    for (int i = 0; i < CORNERS.size(); i++) {
      g.setColor(CORNERS.get(i));
      g.fillRect(i % 2 * (width / 2), i / 2 * (height / 2), width, height);
    }
    g.dispose();
    return picture;
  }

  private static BufferedImage card(Face face, Optional<BufferedImage> picture, Shape shape)
      throws IOException {
    return ImageIO.read(new ByteArrayInputStream(Postcard.png(face, picture, shape)));
  }
}
