package ribband.postcard;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import ribband.album.Shot;
import ribband.photo.Darkroom;
import ribband.photo.PictureFacts;
import ribband.photo.PictureKind;
import ribband.photo.PrintSize;
import ribband.photo.UnfitPicture;
import ribband.problem.Place;

/** Which print a card takes, and when two cards look the same. */
class CardPictureTest {
  private static final Card PLAIN = new Card(Faces.usual(), Optional.empty());

  private static Shot shot(char digit, int width, int height) {
    PictureFacts facts =
        new PictureFacts(
            String.valueOf(digit).repeat(64),
            0,
            PictureKind.JPEG,
            1,
            width,
            height,
            1,
            Optional.empty());
    return new Shot(
        "a.jpg",
        facts,
        Optional.empty(),
        Optional.empty(),
        false,
        Shot.Where.LISTED,
        Place.of("a.md"));
  }

  private static Card of(Shot shot) {
    return new Card(Faces.usual(), Optional.of(shot));
  }

  private static byte[] print(int width, int height) throws IOException {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    ImageIO.write(new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB), "jpg", bytes);
    return bytes.toByteArray();
  }

  private static int widthOfPrint(int picture, Shape shape) throws UnfitPicture, IOException {
    List<PrintSize> asked = new ArrayList<>();
    Shot shot = shot('a', picture, picture);
    byte[] png =
        of(shot)
            .draw(
                shape,
                (of, size) -> {
                  assertEquals(shot, of);
                  asked.add(size);
                  return print(40, 40);
                });
    assertArrayEquals(
        Postcard.png(Faces.usual(), Optional.of(Darkroom.pixels(print(40, 40))), shape), png);
    assertEquals(1, asked.size());
    return asked.get(0).width();
  }

  @Test
  void thePrintIsTheSmallestOfHalfTheWidthOfTheCard() throws Exception {
    assertEquals(960, widthOfPrint(4000, Shape.SHARED));
    assertEquals(960, widthOfPrint(4000, Shape.FRAME));
    assertEquals(600, widthOfPrint(600, Shape.SHARED));
  }

  @Test
  void aNarrowerPictureStandsInItsWidestPrint() throws Exception {
    assertEquals(599, widthOfPrint(599, Shape.SHARED));
    assertEquals(959, widthOfPrint(959, Shape.FRAME));
    assertEquals(300, widthOfPrint(300, Shape.SHARED));
  }

  @Test
  void withoutAPictureNoPrintIsAskedFor() throws Exception {
    byte[] png =
        PLAIN.draw(
            Shape.SHARED,
            (shot, size) -> {
              throw new AssertionError("asked for " + size);
            });
    assertArrayEquals(Postcard.png(Faces.usual(), Optional.empty(), Shape.SHARED), png);
  }

  @Test
  void aPrintThatCannotBeHadIsToldToWhoAsked() {
    IOException gone = new IOException("gone");
    Card.Prints none =
        (shot, size) -> {
          throw gone;
        };
    assertEquals(
        gone,
        assertThrows(IOException.class, () -> of(shot('a', 400, 300)).draw(Shape.SHARED, none)));
  }

  @Test
  void whatIsShownMakesTheNameAndNothingElse() {
    String name = of(shot('a', 400, 300)).content(Shape.SHARED);
    assertTrue(name.matches("[0-9a-f]{16}"), name);
    assertEquals(name, of(shot('a', 400, 300)).content(Shape.SHARED));
    assertNotEquals(name, of(shot('a', 400, 300)).content(Shape.FRAME));
    assertNotEquals(name, of(shot('b', 400, 300)).content(Shape.SHARED));
    assertNotEquals(name, PLAIN.content(Shape.SHARED));
    assertNotEquals(
        PLAIN.content(Shape.SHARED),
        new Card(Faces.bare(), Optional.empty()).content(Shape.SHARED));
  }
}
