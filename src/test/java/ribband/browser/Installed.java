package ribband.browser;

import static org.junit.jupiter.api.Assertions.fail;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * What the browser tests need and the build does not bring. Where it is not installed they are
 * skipped with the reason; where {@code RIBBAND_BROWSER_TESTS=required} is set they fail instead.
 */
final class Installed {
  static final Path CHECKS = Path.of(".ci").toAbsolutePath();

  private Installed() {}

  /** Chromium, as Debian and others install it. */
  static String chromium() {
    List<String> names = List.of("chromium", "chromium-browser", "google-chrome");
    return onPath(names).orElseGet(() -> missing("Chromium is not installed"));
  }

  static String node() {
    needs("puppeteer-core");
    needs("axe-core");
    return onPath(List.of("node")).orElseGet(() -> missing("Node.js is not installed"));
  }

  /** The Nu HTML checker. */
  static String nu() {
    needs("vnu-jar");
    return CHECKS.resolve("node_modules/vnu-jar/build/dist/vnu.jar").toString();
  }

  private static void needs(String module) {
    if (!Files.isDirectory(CHECKS.resolve("node_modules").resolve(module))) {
      missing(module + " is not installed; .ci/run does it");
    }
  }

  private static Optional<String> onPath(List<String> names) {
    String path = System.getenv().getOrDefault("PATH", "");
    return names.stream()
        .flatMap(name -> Arrays.stream(path.split(":")).map(folder -> Path.of(folder, name)))
        .filter(Files::isExecutable)
        .map(Path::toString)
        .findFirst();
  }

  private static String missing(String reason) {
    if ("required".equals(System.getenv("RIBBAND_BROWSER_TESTS"))) {
      fail(reason + ", and here it is required");
    }
    assumeTrue(false, reason);
    return "";
  }
}
