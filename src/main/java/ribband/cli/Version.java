package ribband.cli;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.net.URI;
import java.net.URISyntaxException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.CodeSource;
import java.time.Instant;
import java.util.Objects;

/** The tool's version, as the build wrote it. */
final class Version {
  static final String NUMBER = read();

  /**
   * Tells this program from every other build of it; empty where it runs neither from a jar nor
   * from a Java it was linked into, as then a class may change under it.
   */
  static final String BUILD = build();

  private Version() {}

  /** The build; where there is none, what no other run has: then only pictures are remembered. */
  static String buildOr(Instant now) {
    return BUILD.isEmpty() ? now.toString() : BUILD;
  }

  private static String build() {
    CodeSource source = Version.class.getProtectionDomain().getCodeSource();
    try {
      Path held = holder(source.getLocation().toURI());
      return Files.isRegularFile(held)
          ? NUMBER + " " + Files.size(held) + " " + Files.getLastModifiedTime(held)
          : "";
    } catch (IOException | URISyntaxException | RuntimeException e) {
      // Without it nothing is remembered, and nothing is lost.
      return "";
    }
  }

  /** The file that holds the classes: the jar, or the modules of the Java they are part of. */
  private static Path holder(URI classes) {
    return classes.getScheme().equals("jrt")
        ? Path.of(System.getProperty("java.home"), "lib", "modules")
        : Path.of(classes);
  }

  private static String read() {
    try (InputStream in = Version.class.getResourceAsStream("/ribband/version.txt")) {
      return new String(Objects.requireNonNull(in).readAllBytes(), StandardCharsets.UTF_8).strip();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
