package ribband.press;

import java.io.Closeable;
import java.io.IOException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashSet;
import java.util.Set;

/**
 * Many new files: each is there whole or not, as a {@link LoneFile} is, at any moment. What a
 * folder is for one file, cleared before and its names brought down to the disk after, it is here
 * for all of them together, when this is closed.
 */
public final class NewFiles implements Closeable {
  private final Disk disk;
  private final Set<Path> cleared = new LinkedHashSet<>();
  private final Set<Path> changed = new LinkedHashSet<>();

  public NewFiles() {
    this(new RealDisk());
  }

  NewFiles(Disk disk) {
    this.disk = disk;
  }

  /**
   * Writes a file where none is, down to the disk but for its name, with the folders above it.
   *
   * @throws FileAlreadyExistsException where something has that name; it is left as it is
   * @throws IOException where the disk fails, with a message that names the file or its folder
   */
  public void write(Path file, byte[] content) throws IOException {
    Path folder = file.toAbsolutePath().getParent();
    makeFolder(folder);
    LoneFile.naming(
        file,
        () -> {
          if (cleared.add(folder)) {
            Waiting.clear(folder, disk);
          }
          LoneFile.place(file, waiting -> disk.write(waiting, content), disk::moveToNew, disk);
        });
    changed.add(folder);
  }

  private void makeFolder(Path folder) throws IOException {
    if (!changed.contains(folder) && !Files.isDirectory(folder)) {
      makeFolder(folder.getParent());
      disk.makeFolder(folder);
      changed.add(folder.getParent());
    }
  }

  /**
   * Brings the names of all files and folders down to the disk.
   *
   * @throws IOException where the disk fails, with a message that names the folder
   */
  @Override
  public void close() throws IOException {
    for (Path folder : changed) {
      disk.force(folder);
    }
  }
}
