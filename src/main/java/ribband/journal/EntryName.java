package ribband.journal;

import java.nio.charset.StandardCharsets;
import java.text.Normalizer;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import ribband.measure.Dates;

/**
 * What an entry's path tells.
 *
 * @param date as written in the file's name, not yet checked
 * @param folderDate as written in its folder's name
 * @param rest of the file's name, without date and ending; may be empty
 */
record EntryName(Optional<String> date, Optional<String> folderDate, String rest) {
  private static final Pattern DATED =
      Pattern.compile("([0-9]{4}-[0-9]{2}-[0-9]{2})(?![0-9])(.*)", Pattern.DOTALL);
  private static final Pattern LOOSE =
      Pattern.compile("([0-9]{4}[-._ ]?[0-9]{1,2}[-._ ]?[0-9]{1,2})(?![0-9])(.*)", Pattern.DOTALL);
  private static final int LONGEST = 200;

  static EntryName of(String file) {
    String name = JournalFolder.nameOf(file);
    String stem = name.substring(0, name.lastIndexOf('.'));
    Matcher dated = DATED.matcher(stem);
    String folder = JournalFolder.nameOf(JournalFolder.folderOf(file));
    Matcher folderDated = DATED.matcher(folder);
    Optional<String> date = dated.matches() ? Optional.of(dated.group(1)) : Optional.empty();
    return new EntryName(
        date,
        folderDated.matches() ? Optional.of(folderDated.group(1)) : Optional.empty(),
        date.isPresent() ? dated.group(2) : stem);
  }

  static boolean isMarkdown(String file) {
    String name = file.toLowerCase(Locale.ROOT);
    return name.endsWith(".md") || name.endsWith(".markdown");
  }

  /** The name it should have, for a file whose date is written as {@code 2026-3-14-x.md}. */
  static Optional<String> looselyDated(String file) {
    Matcher loose = LOOSE.matcher(JournalFolder.nameOf(file));
    return loose.matches()
        ? Dates.strictly(loose.group(1)).map(day -> day + loose.group(2))
        : Optional.empty();
  }

  /** spec: an entry's address is its date and the rest of its file's name. */
  String address(String day) {
    String safe =
        Normalizer.normalize(rest, Normalizer.Form.NFC)
            .replaceAll("[^\\p{L}\\p{M}\\p{N}._~-]+", "-")
            .replaceAll("^[-._]+|[-._]+$", "");
    return shortened(safe.isEmpty() ? day : day + "-" + safe);
  }

  /** Leaves room for an ending within the 255 bytes that file systems allow a name. */
  private static String shortened(String address) {
    if (address.getBytes(StandardCharsets.UTF_8).length <= LONGEST) {
      return address;
    }
    String hash = Integer.toHexString(address.hashCode());
    StringBuilder kept = new StringBuilder();
    int bytes = hash.length() + 1;
    for (int c : address.codePoints().toArray()) {
      bytes += Character.toString(c).getBytes(StandardCharsets.UTF_8).length;
      if (bytes > LONGEST) {
        break;
      }
      kept.appendCodePoint(c);
    }
    return kept + "-" + hash;
  }

  /** The rest in words, for an entry with no title; empty where there is none. */
  Optional<String> words() {
    String words = rest.replaceAll("[-_ ]+", " ").strip();
    return words.isEmpty()
        ? Optional.empty()
        : Optional.of(words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1));
  }
}
