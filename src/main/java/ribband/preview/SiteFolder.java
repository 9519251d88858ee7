package ribband.preview;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.Optional;
import ribband.journal.JournalFolder;
import ribband.memory.TreeState;

/** The files of a site by the paths of requests. No path leads out of the site. */
final class SiteFolder {
  private static final int HEXADECIMAL = 16;
  private static final String FIRST_PAGE = "index.html";

  private final Path site;

  /**
   * @param site need not be there
   */
  SiteFolder(Path site) {
    this.site = site;
  }

  /** A short word for how the site stands; {@link Edition#NO_SITE} where none of ours is there. */
  String state() {
    try {
      return Files.isRegularFile(site.resolve(JournalFolder.SITE_FILES))
          ? TreeState.of(site).replace(' ', '-')
          : Edition.NO_SITE;
    } catch (IOException e) {
      // It is there, and each of its files is served or not as it can be read.
      return "unseen";
    }
  }

  /**
   * Finds a file.
   *
   * @param path of a request as it came, with a slash in front and per cent signs in
   * @return the path as a site has it; empty where no file of the site could have it
   */
  static Optional<String> decoded(String path) {
    if (!path.startsWith("/")) {
      return Optional.empty();
    }
    StringBuilder decoded = new StringBuilder();
    String whole = path.endsWith("/") ? path + FIRST_PAGE : path;
    for (String raw : whole.substring(1).split("/", -1)) {
      // Split first: a slash that was written otherwise is no slash.
      Optional<String> part = part(raw).filter(SiteFolder::isName);
      if (part.isEmpty()) {
        return Optional.empty();
      }
      decoded.append(decoded.isEmpty() ? "" : "/").append(part.get());
    }
    return Optional.of(decoded.toString());
  }

  private static boolean isName(String part) {
    return !part.isEmpty()
        && !part.startsWith(".")
        && part.chars().noneMatch(c -> c == '/' || c == '\\' || Character.isISOControl(c));
  }

  /** spec: RFC 3986, 2.1: decoded once, as UTF-8. */
  private static Optional<String> part(String raw) {
    ByteBuffer bytes = ByteBuffer.allocate(raw.length());
    for (int i = 0; i < raw.length(); i++) {
      char c = raw.charAt(i);
      if (c == '%') {
        int high = i + 2 <= raw.length() - 1 ? Character.digit(raw.charAt(i + 1), HEXADECIMAL) : -1;
        int low = high < 0 ? -1 : Character.digit(raw.charAt(i + 2), HEXADECIMAL);
        if (low < 0) {
          return Optional.empty();
        }
        bytes.put((byte) (high * HEXADECIMAL + low));
        i += 2;
      } else if (c < 0x80) {
        bytes.put((byte) c);
      } else {
        return Optional.empty();
      }
    }
    try {
      return Optional.of(StandardCharsets.UTF_8.newDecoder().decode(bytes.flip()).toString());
    } catch (CharacterCodingException e) {
      return Optional.empty();
    }
  }

  /**
   * A file's bytes, read whole, so that a file which is replaced meanwhile is never half of each.
   *
   * @param path of the site; empty where there is no such file or where a link leads out
   */
  Optional<byte[]> read(String path) {
    try {
      Path root = site.toRealPath();
      Path file = root.resolve(path).toRealPath();
      return file.startsWith(root) && Files.isRegularFile(file)
          ? Optional.of(Files.readAllBytes(file))
          : Optional.empty();
    } catch (IOException | InvalidPathException e) {
      // What cannot be read is not there for the reader; the publish tells why.
      return Optional.empty();
    }
  }
}
