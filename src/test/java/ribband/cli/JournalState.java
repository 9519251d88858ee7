package ribband.cli;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileVisitResult;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.SimpleFileVisitor;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.Map;
import java.util.TreeMap;
import java.util.zip.CRC32C;

/**
 * All that lies in a folder but the tool's own folders: kinds, times, sizes, and what they hold.
 */
final class JournalState {
  private JournalState() {}

  /**
   * What stands at each path; of a folder only that it is there, as its time tells of new names.
   */
  static Map<String, String> of(Path folder) throws IOException {
    Map<String, String> state = new TreeMap<>();
    Files.walkFileTree(
        folder,
        new SimpleFileVisitor<>() {
          @Override
          public FileVisitResult preVisitDirectory(Path path, BasicFileAttributes attributes) {
            if (isTheTools(path)) {
              return FileVisitResult.SKIP_SUBTREE;
            }
            state.put(folder.relativize(path).toString(), "folder");
            return FileVisitResult.CONTINUE;
          }

          @Override
          public FileVisitResult visitFile(Path path, BasicFileAttributes attributes)
              throws IOException {
            state.put(
                folder.relativize(path).toString(),
                attributes.lastModifiedTime() + " " + attributes.size() + " " + content(path));
            return FileVisitResult.CONTINUE;
          }
        });
    return state;
  }

  /** The memory, and a site: the one called so, and any that a list of ours makes one. */
  private static boolean isTheTools(Path folder) {
    String name = folder.getFileName().toString();
    return name.equals(".ribband")
        || name.equals("site")
        || Files.exists(folder.resolve("site-files.txt"));
  }

  private static String content(Path path) throws IOException {
    if (Files.isSymbolicLink(path)) {
      return "link to " + Files.readSymbolicLink(path);
    }
    if (!Files.isRegularFile(path, LinkOption.NOFOLLOW_LINKS)) {
      return "neither file nor folder";
    }
    byte[] bytes = Files.readAllBytes(path);
    CRC32C sum = new CRC32C();
    sum.update(bytes);
    return bytes.length < 300
        ? new String(bytes, StandardCharsets.ISO_8859_1)
        : "" + sum.getValue();
  }
}
