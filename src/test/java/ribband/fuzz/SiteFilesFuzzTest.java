package ribband.fuzz;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.code_intelligence.jazzer.junit.FuzzTest;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.io.TempDir;
import ribband.journal.JournalFolder;
import ribband.press.Press;
import ribband.press.PressBusy;
import ribband.press.PressRefused;

/** Whatever a site's list of files says, a publish touches nothing outside, and nothing foreign. */
class SiteFilesFuzzTest {
  private static final String FOREIGN = "Not of our making.\n";

  @TempDir static Path root;

  @FuzzTest(maxDuration = "8s")
  void siteFiles(byte[] bytes) throws IOException, PressBusy {
    Path journal = Files.createDirectories(root.resolve("journal"));
    Path site = Files.createDirectories(root.resolve("out/site"));
    Path list = site.resolve(JournalFolder.SITE_FILES);
    Path beside = Files.writeString(root.resolve("out/beside.txt"), FOREIGN);
    Path inside = Files.writeString(site.resolve("notes.txt"), FOREIGN);
    Files.write(list, bytes);
    try (Press press = Press.open(site, journal)) {
      press.put("index.html", "<p>On.".getBytes(StandardCharsets.UTF_8));
      press.finish();
      assertEquals("<p>On.", Files.readString(site.resolve("index.html")));
      assertTrue(Files.readString(list).endsWith("  index.html\n"), Files.readString(list));
    } catch (PressRefused refused) {
      assertArrayEquals(bytes, Files.readAllBytes(list), refused.getMessage());
    }
    assertEquals(FOREIGN, Files.readString(beside));
    assertEquals(FOREIGN, Files.readString(inside));
  }
}
