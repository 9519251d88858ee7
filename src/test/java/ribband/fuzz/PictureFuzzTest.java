package ribband.fuzz;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.code_intelligence.jazzer.junit.FuzzTest;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.io.TempDir;
import ribband.photo.PictureFacts;
import ribband.photo.PictureReader;
import ribband.photo.UnfitPicture;

/** A file of any bytes has the facts of a picture that fits in memory, or one clear reason not. */
class PictureFuzzTest {
  private static final PictureReader READER = new PictureReader();
  private static final long SMALL = 1_000_000;

  @TempDir static Path folder;

  @FuzzTest(maxDuration = "10s")
  void picture(byte[] bytes) throws IOException {
    Path file = Files.write(folder.resolve("picture"), bytes);
    try {
      PictureFacts facts = READER.facts(file);
      long pixels = (long) facts.width() * facts.height();
      assertTrue(pixels <= 100_000_000, facts.toString());
      if (pixels <= SMALL) {
        READER.tryOut(file, facts);
      }
    } catch (UnfitPicture unfit) {
      assertTrue(unfit.getMessage().contains("; "), unfit.getMessage());
      assertFalse(unfit.getMessage().chars().anyMatch(Character::isISOControl));
    }
  }
}
