package ribband.cli;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Objects;

/** The tool's version, as the build wrote it. */
final class Version {
  static final String NUMBER = read();

  private Version() {}

  private static String read() {
    try (InputStream in = Version.class.getResourceAsStream("/ribband/version.txt")) {
      return new String(Objects.requireNonNull(in).readAllBytes(), StandardCharsets.UTF_8).strip();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
