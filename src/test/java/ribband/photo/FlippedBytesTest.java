package ribband.photo;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.SplittableRandom;
import java.util.concurrent.atomic.AtomicBoolean;
import javax.imageio.ImageIO;
import javax.imageio.ImageReader;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class FlippedBytesTest {
  @TempDir Path folder;

  /**
   * What a decoder puts in place of lost pixels is rows of one colour; the scene has none. A flip
   * that only changes some pixels' colour is beyond finding: a JPEG has no checksum.
   */
  @ParameterizedTest
  @ValueSource(booleans = {false, true})
  void flippedBytesNeverGiveAHalfGreyPrint(boolean progressive) throws Exception {
    BufferedImage scene = Scene.of(300, 200);
    byte[] whole = progressive ? Scene.progressiveJpeg(scene) : Scene.jpeg(scene);
    assertEquals(
        0, greyRows(Prints.of(folder, whole).get(300)), "rows of one colour in the scene itself");
    SplittableRandom places = new SplittableRandom(20260314);
    int refused = 0;
    for (int i = 0; i < 200; i++) {
      byte[] flipped = whole.clone();
      int at = places.nextInt(2, flipped.length);
      flipped[at] ^= (byte) places.nextInt(1, 256);
      try {
        BufferedImage print = Prints.of(folder, flipped).firstEntry().getValue();
        assertTrue(greyRows(print) <= 16, "byte " + at);
      } catch (UnfitPicture unfit) {
        refused++;
      }
    }
    assertTrue(refused > 40, refused + " of 200 refused");
  }

  /** The pixels are not rendered scan by scan, and yet each scan is looked at. */
  @Test
  void progressiveJpegIsRefusedWhereverTheJdkWarnsOfAnyScan() throws Exception {
    byte[] whole = Scene.progressiveJpeg(Scene.of(120, 80));
    SplittableRandom places = new SplittableRandom(20260315);
    int warned = 0;
    for (int i = 0; i < 400; i++) {
      byte[] flipped = whole.clone();
      int at = places.nextInt(whole.length / 8, flipped.length);
      flipped[at] ^= (byte) places.nextInt(1, 256);
      if (jdkWarns(flipped)) {
        assertThrows(UnfitPicture.class, () -> Prints.of(folder, flipped), "byte " + at);
        warned++;
      }
    }
    assertTrue(warned > 40, warned + " of 400");
  }

  private static boolean jdkWarns(byte[] jpeg) {
    ImageReader reader = ImageIO.getImageReadersByFormatName("jpeg").next();
    AtomicBoolean warned = new AtomicBoolean();
    reader.addIIOReadWarningListener((source, warning) -> warned.set(true));
    reader.setInput(new BytesInput(jpeg), true, true);
    try {
      reader.read(0);
      return warned.get();
    } catch (IOException e) {
      return true;
    } finally {
      reader.dispose();
    }
  }

  @Test
  void theMeasureSeesAHalfGreyPicture() {
    byte[] whole = Scene.jpeg(Scene.of(300, 200));
    BufferedImage half = Scene.decode(Arrays.copyOf(whole, whole.length / 2));
    assertTrue(greyRows(half) > 60, greyRows(half) + " rows");
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
}
