package ribband.journal;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.text.Normalizer;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Stream;
import ribband.measure.Name;
import ribband.problem.Nearest;

/**
 * The files of a journal, listed once. Dotted names, the output, folders that hold a site of ours
 * and links that lead out of the journal are not in the list.
 */
public final class JournalFolder {
  /** The list of what a publish wrote; a folder with it in is a site of ours. */
  public static final String SITE_FILES = "site-files.txt";

  public static final String PROJECT = "project.yaml";

  private static final int DEEPEST = 64;

  private final Path root;

  /** NFC path to the path as it is on disk, both relative and with slashes. */
  private final NavigableMap<String, String> files;

  /** The first path of each file name, in whatever case and composition. */
  private final Map<String, String> byName = new HashMap<>();

  private JournalFolder(Path root, NavigableMap<String, String> files) {
    this.root = root;
    this.files = files;
    files.values().forEach(file -> byName.putIfAbsent(Name.plain(nameOf(file)), file));
  }

  /**
   * Lists a journal.
   *
   * @param root an existing folder
   * @param output where the site goes; it may lie inside the journal and need not exist
   */
  public static JournalFolder list(Path root, Path output) throws IOException {
    Path real = root.toRealPath();
    Path site = Files.exists(output) ? output.toRealPath() : output.toAbsolutePath().normalize();
    NavigableMap<String, String> files = new TreeMap<>();
    list(real, real, "", site, files, 0);
    return new JournalFolder(real, files);
  }

  private static void list(
      Path root, Path folder, String prefix, Path site, Map<String, String> files, int depth)
      throws IOException {
    for (Path child : children(folder)) {
      String name = child.getFileName().toString();
      if (name.startsWith(".") || child.equals(site)) {
        continue;
      }
      if (Files.isSymbolicLink(child)) {
        if (Files.isRegularFile(child) && child.toRealPath().startsWith(root)) {
          add(files, prefix + name);
        }
      } else if (Files.isDirectory(child, LinkOption.NOFOLLOW_LINKS)) {
        if (depth < DEEPEST && !Files.exists(child.resolve(SITE_FILES))) {
          list(root, child, prefix + name + "/", site, files, depth + 1);
        }
      } else if (Files.isRegularFile(child)) {
        add(files, prefix + name);
      }
    }
  }

  private static List<Path> children(Path folder) throws IOException {
    try (Stream<Path> children = Files.list(folder)) {
      return children.sorted(Comparator.comparing(p -> p.getFileName().toString())).toList();
    }
  }

  private static void add(Map<String, String> files, String path) {
    files.put(nfc(path), path);
  }

  private static String nfc(String path) {
    return Normalizer.normalize(path, Normalizer.Form.NFC);
  }

  public Path root() {
    return root;
  }

  /** All files, journal paths in order. */
  public List<String> all() {
    return List.copyOf(files.values());
  }

  /** The file on disk behind a journal path. */
  public Path path(String file) {
    return root.resolve(file);
  }

  /** The path as it is on disk, whatever way its letters are composed. */
  public Optional<String> find(String path) {
    return Optional.ofNullable(files.get(nfc(path)));
  }

  /** All files right in a folder. */
  public List<String> in(String folder) {
    String prefix = folder.isEmpty() ? "" : nfc(folder) + "/";
    List<String> found = new ArrayList<>();
    for (Map.Entry<String, String> file : files.tailMap(prefix, false).entrySet()) {
      if (!file.getKey().startsWith(prefix)) {
        break;
      }
      if (file.getKey().indexOf('/', prefix.length()) < 0) {
        found.add(file.getValue());
      }
    }
    return found;
  }

  /** Whether something of that path lies on the disk, though it is no file of the journal. */
  boolean isKeptOut(String path) {
    try {
      return find(path).isEmpty() && Files.exists(root.resolve(path), LinkOption.NOFOLLOW_LINKS);
    } catch (InvalidPathException e) {
      return false;
    }
  }

  /**
   * The file name nearest to a mistyped one, within the folders given.
   *
   * @param path of which the last part alone is compared
   */
  public Optional<String> nearest(String path, List<String> folders) {
    String name = nameOf(path);
    List<String> names =
        folders.stream()
            .distinct()
            .flatMap(folder -> in(folder).stream())
            .map(JournalFolder::nameOf)
            .distinct()
            .toList();
    List<String> sameButEnding =
        names.stream().filter(n -> stem(n).equalsIgnoreCase(stem(name))).toList();
    return Nearest.to(name, sameButEnding)
        .or(() -> sameButEnding.stream().findFirst())
        .or(() -> Nearest.to(name, names));
  }

  /** A file of that very name in any folder. */
  Optional<String> elsewhere(String name) {
    return Optional.ofNullable(byName.get(Name.plain(name)));
  }

  private static String stem(String name) {
    int dot = name.lastIndexOf('.');
    return dot > 0 ? name.substring(0, dot) : name;
  }

  static String nameOf(String path) {
    return path.substring(path.lastIndexOf('/') + 1);
  }

  /** The folder a file lies in, empty for the root. */
  static String folderOf(String path) {
    return path.contains("/") ? path.substring(0, path.lastIndexOf('/')) : "";
  }
}
