package ribband.memory;

import java.io.IOException;
import java.nio.file.FileVisitResult;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.SimpleFileVisitor;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.Set;
import java.util.concurrent.TimeUnit;

/**
 * Tells in one short text how a whole tree of files stands, by names, sizes and times alone.
 *
 * <p>Each file gives a number (FNV-1a, 64 bits), the numbers are added up: tens of thousands of
 * files need no order, and a change of any one changes the sum. It guards against chance, not
 * against somebody who wants to deceive himself.
 */
public final class TreeState {
  private static final long OFFSET = 0xcbf29ce484222325L;
  private static final long PRIME = 0x100000001b3L;

  private long files;
  private long sum;

  /**
   * Adds a file.
   *
   * @param modified in nanoseconds
   */
  public void add(String path, long size, long modified) {
    long hash = OFFSET;
    for (int i = 0; i < path.length(); i++) {
      hash = (hash ^ path.charAt(i)) * PRIME;
    }
    hash = (hash ^ size) * PRIME;
    hash = (hash ^ modified) * PRIME;
    // The last step spreads the low bits, which the multiplication leaves weak.
    sum += hash ^ (hash >>> 32);
    files++;
  }

  /** The state of all that was added. */
  public String told() {
    return files + " files " + Long.toHexString(sum);
  }

  /** The state of a folder, names that begin with a dot left out. */
  public static String of(Path folder) throws IOException {
    TreeState state = new TreeState();
    if (Files.isDirectory(folder)) {
      // A folder behind a link is what it holds, not the link.
      Path root = folder.toRealPath();
      Files.walkFileTree(root, Set.of(), Integer.MAX_VALUE, new Walk(root, state));
    }
    return state.told();
  }

  /** A file's time in nanoseconds. */
  public static long nanos(BasicFileAttributes file) {
    return file.lastModifiedTime().to(TimeUnit.NANOSECONDS);
  }

  private static final class Walk extends SimpleFileVisitor<Path> {
    private final Path root;
    private final int rootLength;
    private final TreeState state;

    Walk(Path root, TreeState state) {
      this.root = root;
      this.rootLength = root.toString().length();
      this.state = state;
    }

    @Override
    public FileVisitResult preVisitDirectory(Path path, BasicFileAttributes attributes) {
      boolean dotted = !path.equals(root) && path.getFileName().toString().startsWith(".");
      return dotted ? FileVisitResult.SKIP_SUBTREE : FileVisitResult.CONTINUE;
    }

    @Override
    public FileVisitResult visitFile(Path path, BasicFileAttributes file) {
      // A link in place of a file has another size and time than the file had.
      if (path.getFileName().toString().startsWith(".")) {
        return FileVisitResult.CONTINUE;
      }
      state.add(path.toString().substring(rootLength), file.size(), nanos(file));
      return FileVisitResult.CONTINUE;
    }
  }
}
