package ribband.architecture;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What others wrote and the site carries is as they released it. */
class VendoredTest {
  private static final Path ASSETS = Path.of("site-template/assets");

  @Test
  void theSearchEngineIsAsItWasReleased() throws IOException, NoSuchAlgorithmException {
    List<String> sums = Files.readAllLines(ASSETS.resolve("minisearch.sha256"));
    assertEquals(2, sums.size());
    for (String line : sums) {
      String[] sum = line.split("  ", 2);
      byte[] file = Files.readAllBytes(ASSETS.resolve(sum[1]));
      assertEquals(
          sum[0],
          HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(file)),
          sum[1]);
    }
  }

  @Test
  void theListOfLibrariesNamesThatRelease() throws IOException {
    String list = Files.readString(Path.of("docs/decisions.md"), StandardCharsets.UTF_8);
    String sum = Files.readAllLines(ASSETS.resolve("minisearch.sha256")).get(0).split(" ")[0];
    assertTrue(list.contains(sum), sum);
    assertTrue(
        Files.readString(ASSETS.resolve("minisearch-licence.txt")).startsWith("Copyright 2022"));
  }
}
