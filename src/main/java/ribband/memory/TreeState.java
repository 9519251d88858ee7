package ribband.memory;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileVisitResult;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.SimpleFileVisitor;
import java.nio.file.attribute.BasicFileAttributes;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.time.Instant;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.List;
import java.util.Set;

/** Tells in one short text how a whole tree of files stands, by names, sizes and times alone. */
public final class TreeState {
  private final MessageDigest digest = sha256();

  /** Adds a file; the order of the files counts. */
  public void add(String path, long size, Instant modified) {
    String line = path + '\n' + size + ' ' + modified.getEpochSecond() + '.' + modified.getNano();
    digest.update((line + '\0').getBytes(StandardCharsets.UTF_8));
  }

  /** The state of all that was added; ends the adding. */
  public String told() {
    return HexFormat.of().formatHex(digest.digest());
  }

  /**
   * The state of a folder, names that begin with a dot left out; {@code none} where it is absent.
   */
  public static String of(Path folder) throws IOException {
    if (!Files.isDirectory(folder)) {
      return "none";
    }
    TreeState state = new TreeState();
    for (Seen seen : seen(folder)) {
      state.add(seen.path(), seen.size(), seen.modified());
    }
    return state.told();
  }

  private record Seen(String path, long size, Instant modified) implements Comparable<Seen> {
    @Override
    public int compareTo(Seen other) {
      return path.compareTo(other.path);
    }
  }

  private static List<Seen> seen(Path folder) throws IOException {
    int root = folder.toString().length();
    List<Seen> seen = new ArrayList<>();
    Files.walkFileTree(
        folder,
        Set.of(),
        Integer.MAX_VALUE,
        new SimpleFileVisitor<Path>() {
          @Override
          public FileVisitResult preVisitDirectory(Path path, BasicFileAttributes attributes) {
            boolean dotted = !path.equals(folder) && path.getFileName().toString().startsWith(".");
            return dotted ? FileVisitResult.SKIP_SUBTREE : FileVisitResult.CONTINUE;
          }

          @Override
          public FileVisitResult visitFile(Path path, BasicFileAttributes file) {
            // A link in place of a file has another size and time than the file had.
            seen.add(
                new Seen(
                    path.toString().substring(root),
                    file.size(),
                    file.lastModifiedTime().toInstant()));
            return FileVisitResult.CONTINUE;
          }
        });
    seen.sort(null);
    return seen;
  }

  private static MessageDigest sha256() {
    try {
      return MessageDigest.getInstance("SHA-256");
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("every Java has SHA-256", e);
    }
  }
}
