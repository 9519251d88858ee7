package ribband.press;

import java.io.IOException;
import java.nio.file.Path;

/**
 * One file that the builder named: written whole beside its place, brought down to the disk, and
 * put in place in one step. Killed at any moment, the old file stands or the new one.
 */
public final class LoneFile {
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
    Path waiting = Waiting.in(folder);
    try {
      Waiting.clear(folder, disk);
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
}
