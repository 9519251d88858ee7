package ribband.press;

import java.io.IOException;
import java.nio.file.DirectoryStream;
import java.nio.file.FileVisitResult;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.SimpleFileVisitor;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * What waits in a folder to be put in place there, a file or a whole folder: named after the
 * process that made it, so that what a killed one left is known.
 */
final class Waiting {
  private static final Pattern NAME = Pattern.compile("\\.ribband-([0-9]{1,18})\\.new");

  private Waiting() {}

  /** Where this process lets something wait. */
  static Path in(Path folder) {
    return folder.resolve(".ribband-" + ProcessHandle.current().pid() + ".new");
  }

  /** Removes what killed runs left; what another run is about to put in place stays. */
  static void clear(Path folder, Disk disk) throws IOException {
    Path own = in(folder);
    try (DirectoryStream<Path> left = Files.newDirectoryStream(folder, ".ribband-*.new")) {
      for (Path path : left) {
        Matcher name = NAME.matcher(path.getFileName().toString());
        if (name.matches() && (path.equals(own) || !isAtWork(name.group(1)))) {
          remove(path, disk);
        }
      }
    }
  }

  private static boolean isAtWork(String process) {
    return ProcessHandle.of(Long.parseLong(process)).isPresent();
  }

  /** Removes a file or a folder with all in it, if it is there; links are not followed. */
  static void remove(Path path, Disk disk) throws IOException {
    if (!Files.isDirectory(path, LinkOption.NOFOLLOW_LINKS)) {
      disk.delete(path);
      return;
    }
    Files.walkFileTree(
        path,
        new SimpleFileVisitor<>() {
          @Override
          public FileVisitResult visitFile(Path file, BasicFileAttributes attributes)
              throws IOException {
            disk.delete(file);
            return FileVisitResult.CONTINUE;
          }

          @Override
          public FileVisitResult postVisitDirectory(Path folder, IOException failed)
              throws IOException {
            if (failed != null) {
              throw failed;
            }
            disk.delete(folder);
            return FileVisitResult.CONTINUE;
          }
        });
  }
}
