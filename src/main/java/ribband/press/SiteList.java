package ribband.press;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.Map;
import java.util.NavigableMap;
import java.util.Optional;
import java.util.Set;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Stream;
import ribband.journal.JournalFolder;

/**
 * The list of a site's files: what the tool wrote there, so what it may change and remove.
 *
 * <p>A header, then a line per file in the order of their paths: the SHA-256 in hexadecimal digits,
 * two spaces, the path; UTF-8, LF. While a publish is at work a path may stand there twice, with
 * its old hash and its new one.
 */
final class SiteList {
  static final SiteList EMPTY = new SiteList(new TreeMap<>());

  private static final String HEADER = "# Ribband site files, form 1";
  private static final int HASH = 64;
  private static final String GAP = "  ";
  private static final long LARGEST = 64L << 20;

  private final NavigableMap<SitePath, SortedSet<String>> hashes;
  private final Map<String, SitePath> byFolded = new HashMap<>();

  private SiteList(NavigableMap<SitePath, SortedSet<String>> hashes) {
    this.hashes = hashes;
    hashes.keySet().forEach(path -> byFolded.put(path.folded(), path));
  }

  static SiteList of(Map<SitePath, String> files) {
    NavigableMap<SitePath, SortedSet<String>> hashes = new TreeMap<>();
    files.forEach((path, hash) -> hashes.put(path, new TreeSet<>(Set.of(hash))));
    return new SiteList(hashes);
  }

  /**
   * Reads the list of a folder; an absent or empty folder has an empty one.
   *
   * @throws PressRefused where the folder holds anything and no list, or a list that we cannot have
   *     written
   */
  static SiteList read(Path output) throws PressRefused, IOException {
    Path file = output.resolve(JournalFolder.SITE_FILES);
    if (!Files.exists(file, LinkOption.NOFOLLOW_LINKS)) {
      refuseUnlessEmpty(output);
      return EMPTY;
    }
    if (!Files.isRegularFile(file, LinkOption.NOFOLLOW_LINKS) || Files.size(file) > LARGEST) {
      throw damaged(file, "it is not a file of ours");
    }
    return parse(file, text(file));
  }

  private static void refuseUnlessEmpty(Path output) throws PressRefused, IOException {
    if (!Files.exists(output, LinkOption.NOFOLLOW_LINKS)) {
      return;
    }
    try (Stream<Path> children = Files.list(output)) {
      if (children.findAny().isPresent()) {
        throw new PressRefused(
            "the output " + output + " holds files and no site of ours",
            "choose an empty or a new folder");
      }
    }
  }

  private static String text(Path file) throws PressRefused, IOException {
    try {
      byte[] bytes = Files.readAllBytes(file);
      return StandardCharsets.UTF_8.newDecoder().decode(ByteBuffer.wrap(bytes)).toString();
    } catch (CharacterCodingException e) {
      throw damaged(file, "it is not UTF-8");
    }
  }

  private static SiteList parse(Path file, String text) throws PressRefused {
    String[] lines = text.split("\n", -1);
    if (!lines[0].equals(HEADER)) {
      throw damaged(file, "its first line is not \"" + HEADER + "\"");
    }
    if (!lines[lines.length - 1].isEmpty()) {
      throw damaged(file, "its last line is cut off");
    }
    NavigableMap<SitePath, SortedSet<String>> hashes = new TreeMap<>();
    for (int i = 1; i < lines.length - 1; i++) {
      if (!isLine(lines[i])) {
        throw damaged(file, "line " + (i + 1) + " is not a hash, two spaces and a path");
      }
      hashes
          .computeIfAbsent(
              path(file, i + 1, lines[i].substring(HASH + GAP.length())), p -> new TreeSet<>())
          .add(lines[i].substring(0, HASH));
    }
    return new SiteList(hashes);
  }

  private static boolean isLine(String line) {
    for (int i = 0; i < HASH; i++) {
      if (i >= line.length() || "0123456789abcdef".indexOf(line.charAt(i)) < 0) {
        return false;
      }
    }
    return line.startsWith(GAP, HASH) && line.length() > HASH + GAP.length();
  }

  private static SitePath path(Path file, int line, String text) throws PressRefused {
    try {
      return new SitePath(text);
    } catch (IllegalArgumentException e) {
      throw damaged(file, "the path in line " + line + " does not stay in the site");
    }
  }

  private static PressRefused damaged(Path file, String why) {
    return new PressRefused(
        "the list " + file + " is damaged: " + why,
        "move the folder " + file.getParent() + " away, then publish again");
  }

  SortedSet<SitePath> paths() {
    return hashes.navigableKeySet();
  }

  boolean names(SitePath path) {
    return hashes.containsKey(path);
  }

  boolean names(SitePath path, String hash) {
    return names(path) && hashes.get(path).contains(hash);
  }

  /** The path listed that some file system takes for the same file. */
  Optional<SitePath> alike(SitePath path) {
    return Optional.ofNullable(byFolded.get(path.folded()));
  }

  /** All that stands in either. */
  SiteList and(SiteList other) {
    NavigableMap<SitePath, SortedSet<String>> union = new TreeMap<>();
    for (SiteList list : new SiteList[] {this, other}) {
      list.hashes.forEach(
          (path, either) -> union.computeIfAbsent(path, p -> new TreeSet<>()).addAll(either));
    }
    return new SiteList(union);
  }

  byte[] bytes() {
    StringBuilder text = new StringBuilder(HEADER).append('\n');
    hashes.forEach(
        (path, either) ->
            either.forEach(hash -> text.append(hash).append(GAP).append(path).append('\n')));
    return text.toString().getBytes(StandardCharsets.UTF_8);
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof SiteList list && hashes.equals(list.hashes);
  }

  @Override
  public int hashCode() {
    return hashes.hashCode();
  }
}
