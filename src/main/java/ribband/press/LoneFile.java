package ribband.press;

import java.io.IOException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * One file that the builder named: written whole beside its place, brought down to the disk, and
 * put in place in one step. Killed at any moment, the old file stands or the new one.
 */
public final class LoneFile {
  /** Of what waits to be put in place; the number is that of the process which made it. */
  private static final Pattern WAITING = Pattern.compile("\\.ribband-([0-9]{1,18})\\.new");

  private LoneFile() {}

  /**
   * Writes a file, over another that stands there.
   *
   * @param file in a folder that is there
   * @throws IOException where the disk fails, with a message that names the file
   */
  public static void write(Path file, byte[] content) throws IOException {
    write(file, content, new RealDisk());
  }

  static void write(Path file, byte[] content, Disk disk) throws IOException {
    Path folder = file.toAbsolutePath().getParent();
    Path waiting = folder.resolve(".ribband-" + ProcessHandle.current().pid() + ".new");
    try {
      clear(folder, waiting, disk);
      try {
        disk.write(waiting, content);
        disk.move(waiting, file);
      } catch (IOException e) {
        disk.delete(waiting);
        throw e;
      }
      disk.force(folder);
    } catch (IOException e) {
      throw e.getCause() instanceof IOException cause
          ? RealDisk.named("cannot write", file, cause)
          : RealDisk.named("cannot write", file, e);
    }
  }

  /** Removes what killed runs left; what another run is about to put in place stays. */
  private static void clear(Path folder, Path waiting, Disk disk) throws IOException {
    try (DirectoryStream<Path> left = Files.newDirectoryStream(folder, ".ribband-*.new")) {
      for (Path path : left) {
        Matcher name = WAITING.matcher(path.getFileName().toString());
        if (name.matches() && (path.equals(waiting) || !isAtWork(name.group(1)))) {
          disk.delete(path);
        }
      }
    }
  }

  private static boolean isAtWork(String process) {
    return ProcessHandle.of(Long.parseLong(process)).isPresent();
  }
}
