package ribband.press;

import java.io.IOException;
import java.nio.file.FileVisitResult;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.SimpleFileVisitor;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.concurrent.atomic.AtomicInteger;

/** The folder where files wait until the whole site is made; gives out names, threads may share. */
final class Staging {
  private final Path folder;
  private final AtomicInteger given = new AtomicInteger();

  private Staging(Path folder) {
    this.folder = folder;
  }

  /** An empty one; what a killed run left is removed. */
  static Staging fresh(Path workFolder, Disk disk) throws IOException {
    Staging staging = new Staging(in(workFolder));
    staging.clear();
    try {
      disk.makeFolder(staging.made());
      disk.makeFolder(staging.pages());
      return staging;
    } catch (IOException e) {
      staging.clear();
      throw e;
    }
  }

  static Path in(Path workFolder) {
    return workFolder.resolve("staging");
  }

  /** For files that others make. */
  Path made() {
    return folder.resolve("made");
  }

  private Path pages() {
    return folder.resolve("pages");
  }

  /** A name not given out before. */
  Path next() {
    return pages().resolve(Integer.toString(given.incrementAndGet()));
  }

  void clear() throws IOException {
    if (!Files.exists(folder, LinkOption.NOFOLLOW_LINKS)) {
      return;
    }
    try {
      Files.walkFileTree(folder, new Remover());
    } catch (IOException e) {
      throw RealDisk.named("cannot clear", folder, e);
    }
  }

  /** Removes all that is walked; links are removed, not followed. */
  private static final class Remover extends SimpleFileVisitor<Path> {
    @Override
    public FileVisitResult visitFile(Path file, BasicFileAttributes attributes) throws IOException {
      Files.delete(file);
      return FileVisitResult.CONTINUE;
    }

    @Override
    public FileVisitResult postVisitDirectory(Path folder, IOException failed) throws IOException {
      if (failed != null) {
        throw failed;
      }
      Files.delete(folder);
      return FileVisitResult.CONTINUE;
    }
  }
}
