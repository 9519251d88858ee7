package ribband.press;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.text.Normalizer;
import java.util.Locale;
import ribband.journal.JournalFolder;

/**
 * Where a file stands in the site.
 *
 * @param text relative, parts joined by slashes, NFC; no part is empty, begins with a dot or is
 *     longer than 255 bytes, no backslash, no control character
 */
record SitePath(String text) implements Comparable<SitePath> {
  private static final int LONGEST_PART = 255;

  /** The order in which files are put in place, the first page last. */
  enum Wave {
    ASSETS,
    ENTRIES,
    PAGES,
    LISTINGS,
    FRONT
  }

  SitePath {
    for (String part : text.split("/", -1)) {
      if (part.isEmpty()
          || part.startsWith(".")
          || part.getBytes(StandardCharsets.UTF_8).length > LONGEST_PART) {
        throw new IllegalArgumentException("not a path of a site: \"" + text + "\"");
      }
    }
    if (text.indexOf('\\') >= 0
        || text.chars().anyMatch(Character::isISOControl)
        || !(isAscii(text) || Normalizer.isNormalized(text, Normalizer.Form.NFC))
        || folded(text).equals(JournalFolder.SITE_FILES)) {
      throw new IllegalArgumentException("not a path of a site: \"" + text + "\"");
    }
  }

  /** The same for all paths that some file system takes for one. */
  String folded() {
    return folded(text);
  }

  private static String folded(String text) {
    if (isAscii(text)) {
      return text.toLowerCase(Locale.ROOT);
    }
    String folded = text.toUpperCase(Locale.ROOT).toLowerCase(Locale.ROOT);
    return Normalizer.normalize(folded, Normalizer.Form.NFC);
  }

  /** Most paths are, and there are tens of thousands of them. */
  private static boolean isAscii(String text) {
    for (int i = 0; i < text.length(); i++) {
      if (text.charAt(i) >= 0x80) {
        return false;
      }
    }
    return true;
  }

  Wave wave() {
    if (text.endsWith(".html")) {
      return text.startsWith("entries/")
          ? Wave.ENTRIES
          : text.equals("index.html") ? Wave.FRONT : Wave.PAGES;
    }
    // What lies beside the first page tells of other pages: feeds, tables, what a search looks at.
    return text.contains("/") ? Wave.ASSETS : Wave.LISTINGS;
  }

  /**
   * The file in a folder.
   *
   * @throws IOException where this machine cannot write such a name
   */
  Path in(Path folder) throws IOException {
    try {
      return folder.resolve(text);
    } catch (InvalidPathException e) {
      throw new IOException(
          "this machine's encoding cannot write the name " + text + "; set LC_ALL=C.UTF-8", e);
    }
  }

  @Override
  public int compareTo(SitePath other) {
    return text.compareTo(other.text);
  }

  @Override
  public String toString() {
    return text;
  }
}
