package ribband.press;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.file.Path;

/**
 * The calls by which the press changes a disk, in one place, so that a test can let any of them
 * fail. Every {@link IOException} names the path.
 */
interface Disk {
  /** Makes a folder and those above it; one that is there is fine. */
  void makeFolder(Path folder) throws IOException;

  /** Writes a new file, down to the disk. */
  void write(Path file, byte[] content) throws IOException;

  /** Writes what is left of an open file into a new one, down to the disk. */
  void copy(FileChannel content, Path file) throws IOException;

  /** Brings a file or a folder's names down to the disk. */
  void force(Path path) throws IOException;

  /** Moves a file over another, or a folder over an empty one, in one step. */
  void move(Path from, Path to) throws IOException;

  /**
   * Moves a file to a name that nothing has, in one step.
   *
   * @throws java.nio.file.FileAlreadyExistsException where something has that name
   */
  void moveToNew(Path from, Path to) throws IOException;

  /** Deletes a file or an empty folder. */
  void delete(Path path) throws IOException;
}
