package ribband.press;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;

/**
 * One file that the builder named: written whole beside its place, brought down to the disk, and
 * put in place in one step. Killed at any moment, the old file stands or the new one; a new file is
 * there whole, or not.
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
    put(file, waiting -> disk.write(waiting, content), disk::move, disk);
  }

  /**
   * Writes a file where none is.
   *
   * @param file in a folder that is there
   * @throws FileAlreadyExistsException where something has that name; it is left as it is
   * @throws IOException where the disk fails, with a message that names the file
   */
  public static void writeNew(Path file, byte[] content) throws IOException {
    writeNew(file, content, new RealDisk());
  }

  static void writeNew(Path file, byte[] content, Disk disk) throws IOException {
    put(file, waiting -> disk.write(waiting, content), disk::moveToNew, disk);
  }

  /**
   * Copies a file, byte for byte, to where none is.
   *
   * @param file in a folder that is there
   * @throws FileAlreadyExistsException where something has that name; it is left as it is
   * @throws IOException where the disk fails, with a message that names the file
   */
  public static void copyNew(Path original, Path file) throws IOException {
    copyNew(original, file, new RealDisk());
  }

  static void copyNew(Path original, Path file, Disk disk) throws IOException {
    try (FileChannel content = LoneFolder.open(original)) {
      put(file, waiting -> disk.copy(content, waiting), disk::moveToNew, disk);
    }
  }

  /**
   * Makes a folder and those above it; one that is there is fine.
   *
   * @throws IOException where the disk fails or a file is in the way, with a message that names it
   */
  public static void makeFolder(Path folder) throws IOException {
    new RealDisk().makeFolder(folder);
  }

  /**
   * Removes what killed runs left waiting in a folder; where there is no such folder, nothing.
   *
   * @throws IOException where the disk fails, with a message that names what it failed on
   */
  public static void clear(Path folder) throws IOException {
    if (Files.isDirectory(folder)) {
      Waiting.clear(folder, new RealDisk());
    }
  }

  /** Writes what a file is to hold. */
  interface Content {
    void writeTo(Path waiting) throws IOException;
  }

  /** Gives what waits the file's name. */
  interface Placing {
    void move(Path waiting, Path file) throws IOException;
  }

  /** Steps of writing a file. */
  interface Steps {
    void take() throws IOException;
  }

  private static void put(Path file, Content content, Placing placing, Disk disk)
      throws IOException {
    Path folder = file.toAbsolutePath().getParent();
    naming(
        file,
        () -> {
          Waiting.clear(folder, disk);
          place(file, content, placing, disk);
          disk.force(folder);
        });
  }

  /** Puts a file in place, in a folder whose names are still to be brought down to the disk. */
  static void place(Path file, Content content, Placing placing, Disk disk) throws IOException {
    Path waiting = Waiting.in(file.toAbsolutePath().getParent());
    try {
      content.writeTo(waiting);
      placing.move(waiting, file);
    } catch (IOException e) {
      disk.delete(waiting);
      throw e;
    }
  }

  /** Takes steps whose failures are told as the file's. */
  static void naming(Path file, Steps steps) throws IOException {
    try {
      steps.take();
    } catch (FileAlreadyExistsException e) {
      throw e;
    } catch (IOException e) {
      throw e.getCause() instanceof IOException cause
          ? RealDisk.named("cannot write", file, cause)
          : RealDisk.named("cannot write", file, e);
    }
  }
}
