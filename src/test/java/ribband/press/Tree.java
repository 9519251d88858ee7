package ribband.press;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Stream;

/** A folder as text: every path with its bytes, for comparing whole trees. */
final class Tree {
  private Tree() {}

  /** Relative path to content; folders end in a slash, links begin with an arrow. */
  static SortedMap<String, String> of(Path root) throws IOException {
    SortedMap<String, String> tree = new TreeMap<>();
    for (Path path : walk(root)) {
      String name = root.relativize(path).toString();
      if (Files.isSymbolicLink(path)) {
        tree.put(name, "-> " + Files.readSymbolicLink(path));
      } else if (Files.isDirectory(path)) {
        tree.put(name + "/", "");
      } else {
        tree.put(name, new String(Files.readAllBytes(path), StandardCharsets.ISO_8859_1));
      }
    }
    return tree;
  }

  /** Relative path to time of last change, of files only. */
  static SortedMap<String, String> times(Path root) throws IOException {
    SortedMap<String, String> times = new TreeMap<>();
    for (Path path : walk(root)) {
      if (Files.isRegularFile(path, LinkOption.NOFOLLOW_LINKS)) {
        times.put(root.relativize(path).toString(), Files.getLastModifiedTime(path).toString());
      }
    }
    return times;
  }

  static void write(Path root, String path, String content) throws IOException {
    Path file = root.resolve(path);
    Files.createDirectories(file.getParent());
    Files.writeString(file, content, StandardCharsets.UTF_8);
  }

  /** The state a killed process would leave: the same bytes and times elsewhere. */
  static void copy(Path from, Path to) throws IOException {
    for (Path path : walk(from)) {
      Path target = to.resolve(from.relativize(path));
      Files.createDirectories(target.getParent());
      Files.copy(path, target, StandardCopyOption.COPY_ATTRIBUTES, LinkOption.NOFOLLOW_LINKS);
    }
  }

  private static List<Path> walk(Path root) throws IOException {
    if (!Files.exists(root)) {
      return List.of();
    }
    try (Stream<Path> paths = Files.walk(root)) {
      return paths.filter(path -> !path.equals(root)).sorted().toList();
    }
  }
}
