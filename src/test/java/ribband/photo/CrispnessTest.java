package ribband.photo;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.awt.image.BufferedImage;
import org.junit.jupiter.api.Test;

class CrispnessTest {
  @Test
  void evenPartsStayAsTheyAre() {
    assertEquals(0x204060, crisp(0x204060, 0x204060, 0x204060));
    assertEquals(0xFFFFFF, crisp(0xFFFFFF, 0xFFFFFF, 0xFFFFFF));
    assertEquals(0, crisp(0, 0, 0));
  }

  @Test
  void eachColourMovesAwayFromItsNeighboursByASixteenthOfEach() {
    // 100 + (4 * 100 - 2 * 84 - 2 * 100) / 16 is 102; likewise 98 for 116.
    assertEquals(0x666266, crisp(0x547454, 0x646464, 0x547454));
  }

  @Test
  void levelsEndAtBlackAndWhite() {
    assertEquals(0xFF00FF, crisp(0x00FF00, 0xFF00FF, 0x00FF00));
    assertEquals(0x00FF00, crisp(0xFF00FF, 0x00FF00, 0xFF00FF));
  }

  @Test
  void outermostPixelsStay() {
    BufferedImage scene = Scene.of(30, 20);
    BufferedImage crisp = Crispness.of(scene);
    assertArrayEquals(row(scene, 0), row(crisp, 0));
    assertArrayEquals(row(scene, 19), row(crisp, 19));
    assertEquals(1, Crispness.of(Scene.of(1, 1)).getWidth());
  }

  /** The middle of three pixels that stand between rows like the middle one. */
  private static int crisp(int left, int here, int right) {
    BufferedImage image = new BufferedImage(3, 3, BufferedImage.TYPE_INT_RGB);
    for (int y = 0; y < 3; y++) {
      image.setRGB(0, y, left);
      image.setRGB(1, y, here);
      image.setRGB(2, y, right);
    }
    return Crispness.of(image).getRGB(1, 1) & 0xFFFFFF;
  }

  private static int[] row(BufferedImage image, int y) {
    return image.getRGB(0, y, image.getWidth(), 1, null, 0, image.getWidth());
  }
}
