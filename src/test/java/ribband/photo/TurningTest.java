package ribband.photo;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.image.BufferedImage;
import java.nio.file.Path;
import java.util.TreeMap;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class TurningTest {
  @TempDir Path folder;

  @ParameterizedTest
  @ValueSource(ints = {1, 2, 3, 4, 5, 6, 7, 8})
  void turnedPictureIsPrintedAsTheSameOneUnturned(int orientation) throws Exception {
    BufferedImage upright = Scene.of(701, 480);
    BufferedImage turned = Scene.stored(upright, orientation);
    TreeMap<Integer, BufferedImage> expected = Prints.of(folder, Scene.png(upright));
    byte[] tiff = Exif.orientation(orientation);
    assertAlike(expected, Prints.of(folder, Exif.inPng(Scene.png(turned), tiff)), 0.998, 0.3);
    assertAlike(expected, Prints.of(folder, Exif.inJpeg(Scene.jpeg(turned), tiff)), 0.97, 1.8);
  }

  @ParameterizedTest
  @ValueSource(ints = {1, 2, 3, 4, 5, 6, 7, 8})
  void turningMovesPixelsAndChangesNone(int orientation) {
    BufferedImage upright = Scene.of(31, 20);
    BufferedImage turned = Scene.stored(upright, orientation);
    assertEquals(
        0, Likeness.meanDifference(upright, Turning.upright(turned, orientation)), "levels");
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
}
