package ribband.browser;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Every page, style sheet and drawing by the Nu HTML checker. */
class MarkupTest {
  /** Properties of SVG 2 that the checker's list of properties lacks. */
  private static final List<String> UNKNOWN_TO_IT = List.of("vector-effect", "paint-order");

  @TempDir private Path folder;
  @TempDir private Path scratch;

  /** The checker takes seconds to begin, so it begins once for all sites. */
  @Test
  void everyPageIsValid() throws IOException, InterruptedException {
    Installed.nu();
    for (Site kind : Site.values()) {
      kind.publish(Files.createDirectory(folder.resolve(kind.name())));
    }

    assertEquals("", nu(folder));
  }

  @Test
  void faultsAreFound() throws IOException, InterruptedException {
    Installed.nu();
    Files.writeString(folder.resolve("x.html"), "<!DOCTYPE html><title>x</title><p><div></p>");
    Files.writeString(folder.resolve("x.css"), "a { colr: red; vector-effect: none }");
    Files.writeString(
        folder.resolve("x.svg"), "<svg xmlns='http://www.w3.org/2000/svg'><plank/></svg>");

    String found = nu(folder);

    assertTrue(found.contains("x.html"), found);
    assertTrue(found.contains("“colr”"), found);
    assertTrue(found.contains("x.svg"), found);
  }

  private String nu(Path site) throws IOException, InterruptedException {
    Path found = scratch.resolve("found.txt");
    Process java =
        new ProcessBuilder(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-jar",
                Installed.nu(),
                "--errors-only",
                "--skip-non-html",
                "--also-check-css",
                "--also-check-svg",
                "--filterpattern",
                ".*“(" + String.join("|", UNKNOWN_TO_IT) + ")”: Property “[a-z-]+” doesn't exist.*",
                site.toString())
            .redirectErrorStream(true)
            .redirectOutput(found.toFile())
            .start();
    int code = java.waitFor();
    String said = Files.readString(found, StandardCharsets.UTF_8).strip();
    assertEquals(said.isEmpty(), code == 0, "exit " + code + ": " + said);
    return said;
  }
}
