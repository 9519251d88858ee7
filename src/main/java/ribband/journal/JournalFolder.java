package ribband.journal;

import java.io.File;
import java.io.IOException;
import java.nio.file.FileVisitResult;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.SimpleFileVisitor;
import java.nio.file.attribute.BasicFileAttributes;
import java.text.Normalizer;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import ribband.measure.Name;
import ribband.memory.FileStamp;
import ribband.memory.TreeState;
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

  /** By NFC path. */
  private final NavigableMap<String, Listed> files;

  /**
   * A file as it was when the journal was listed.
   *
   * @param path as it is on disk, with slashes
   * @param modified in nanoseconds
   */
  private record Listed(String path, long size, long modified) {
    FileStamp stamp(Instant now) {
      Instant time = Instant.ofEpochSecond(0, modified);
      return new FileStamp(path, size, time, now);
    }
  }

  private JournalFolder(Path root, NavigableMap<String, Listed> files) {
    this.root = root;
    this.files = files;
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
    NavigableMap<String, Listed> files = new TreeMap<>();
    Walk walk = new Walk(real, site, files);
    Files.walkFileTree(real, Set.of(), DEEPEST, walk);
    walk.sites.forEach(folder -> files.keySet().removeIf(path -> path.startsWith(folder)));
    return new JournalFolder(real, files);
  }

  /** Passes over what is no part of the journal; one look at the disk a file. */
  private static final class Walk extends SimpleFileVisitor<Path> {
    private final Path root;
    private final Path site;
    private final Map<String, Listed> files;
    private final int rootLength;

    /** Folders that turned out to hold a site of ours, each with a slash at its end. */
    private final List<String> sites = new ArrayList<>();

    Walk(Path root, Path site, Map<String, Listed> files) {
      this.root = root;
      this.rootLength = root.toString().length() + 1;
      this.site = site;
      this.files = files;
    }

    @Override
    public FileVisitResult preVisitDirectory(Path folder, BasicFileAttributes attributes) {
      boolean passedOver = !folder.equals(root) && (isDotted(folder) || folder.equals(site));
      return passedOver ? FileVisitResult.SKIP_SUBTREE : FileVisitResult.CONTINUE;
    }

    @Override
    public FileVisitResult visitFile(Path file, BasicFileAttributes attributes) throws IOException {
      if (isDotted(file) || file.equals(site)) {
        return FileVisitResult.CONTINUE;
      }
      if (attributes.isRegularFile()) {
        add(file, attributes);
      } else if (attributes.isSymbolicLink()
          && Files.isRegularFile(file)
          && file.toRealPath().startsWith(root)) {
        add(file, Files.readAttributes(file, BasicFileAttributes.class));
      }
      return FileVisitResult.CONTINUE;
    }

    private void add(Path file, BasicFileAttributes attributes) {
      String path = file.toString().substring(rootLength).replace(File.separatorChar, '/');
      if (path.endsWith("/" + SITE_FILES)) {
        sites.add(nfc(folderOf(path)) + "/");
      }
      files.put(nfc(path), new Listed(path, attributes.size(), TreeState.nanos(attributes)));
    }

    private static boolean isDotted(Path path) {
      return path.getFileName().toString().startsWith(".");
    }
  }

  private static String nfc(String path) {
    // Latin letters up to U+02FF stand for themselves, and looking is cheaper than asking.
    boolean plain = path.chars().allMatch(c -> c < 0x300);
    return plain ? path : Normalizer.normalize(path, Normalizer.Form.NFC);
  }

  public Path root() {
    return root;
  }

  /** All files, journal paths in order. */
  public List<String> all() {
    return files.values().stream().map(Listed::path).toList();
  }

  /** What tells a file of the journal from a later one of its name, as it was when listed. */
  public FileStamp stamp(String file, Instant now) {
    return files.get(nfc(file)).stamp(now);
  }

  /** How all the files stood when they were listed, in one short text. */
  public String state() {
    TreeState state = new TreeState();
    files.values().forEach(file -> state.add(file.path(), file.size(), file.modified()));
    return state.told();
  }

  /** Whether no file was touched so shortly before that it may change again unseen. */
  public boolean isSettled(Instant now) {
    return files.values().stream().allMatch(file -> file.stamp(now).settled());
  }

  /** The file on disk behind a journal path. */
  public Path path(String file) {
    return root.resolve(file);
  }

  /** The path as it is on disk, whatever way its letters are composed. */
  public Optional<String> find(String path) {
    return Optional.ofNullable(files.get(nfc(path))).map(Listed::path);
  }

  /** All files right in a folder. */
  public List<String> in(String folder) {
    String prefix = folder.isEmpty() ? "" : nfc(folder) + "/";
    List<String> found = new ArrayList<>();
    for (Map.Entry<String, Listed> file : files.tailMap(prefix, false).entrySet()) {
      if (!file.getKey().startsWith(prefix)) {
        break;
      }
      if (file.getKey().indexOf('/', prefix.length()) < 0) {
        found.add(file.getValue().path());
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
    String wanted = Name.plain(name);
    return all().stream().filter(file -> Name.plain(nameOf(file)).equals(wanted)).findFirst();
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
