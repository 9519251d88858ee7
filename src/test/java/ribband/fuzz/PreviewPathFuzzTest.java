package ribband.fuzz;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.code_intelligence.jazzer.junit.FuzzTest;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import org.junit.jupiter.api.io.TempDir;
import ribband.preview.ServedFolder;

/** Whatever path a browser asks for, what it is sent is a file of the site. */
class PreviewPathFuzzTest {
  private static final String PUBLISHED = "Published.";

  @TempDir static Path root;

  @FuzzTest(maxDuration = "6s")
  void previewPath(byte[] bytes) throws IOException {
    Path site = Files.createDirectories(root.resolve("boat/site/entries")).getParent();
    Files.writeString(site.resolve("index.html"), PUBLISHED);
    Files.writeString(site.resolve("entries/bär.html"), PUBLISHED);
    Files.writeString(site.resolve(".hidden"), "Kept back.");
    Files.writeString(root.resolve("boat/project.yaml"), "Kept back.");
    if (Files.notExists(site.resolve("up"))) {
      Files.createSymbolicLink(site.resolve("up"), root.resolve("boat"));
    }
    String path = "/" + new String(bytes, StandardCharsets.UTF_8);

    Optional<String> named = ServedFolder.decoded(path);
    Optional<byte[]> sent = named.flatMap(new ServedFolder(site)::read);

    named.ifPresent(name -> assertFalse(("/" + name + "/").contains("/../"), path));
    sent.ifPresent(
        content -> assertTrue(new String(content, StandardCharsets.UTF_8).equals(PUBLISHED), path));
  }
}
