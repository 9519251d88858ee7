package ribband.press;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.LinkedHashSet;
import java.util.Set;
import ribband.journal.JournalFolder;

/**
 * A folder that the builder named: made whole beside its place, brought down to the disk, and put
 * in place in one step. Killed at any moment, all of it is there or nothing. Paths in it are those
 * of {@link Press}.
 */
public final class LoneFolder implements AutoCloseable {
  private static final String RAW = ".made";

  private final Path folder;
  private final Path waiting;
  private final Disk disk;
  private final Set<Path> folders = new LinkedHashSet<>();
  private boolean begun;

  private LoneFolder(Path folder, Disk disk) {
    this.folder = folder;
    this.waiting = Waiting.in(folder.getParent());
    this.disk = disk;
  }

  /**
   * Takes a folder to be made; nothing is written yet.
   *
   * @param folder new, or empty, in a folder that is there
   * @throws PressRefused where something stands there, or all of it would be published or cleared
   *     away with a site
   */
  public static LoneFolder at(Path folder) throws PressRefused, IOException {
    return at(folder, new RealDisk());
  }

  static LoneFolder at(Path folder, Disk disk) throws PressRefused, IOException {
    Path real = Ground.real(folder);
    if (Files.exists(real, LinkOption.NOFOLLOW_LINKS) && !isEmptyFolder(real)) {
      throw new PressRefused(
          "the output " + folder + " is there and is no empty folder",
          "choose an empty or a new folder");
    }
    Path above = real.getParent();
    if (above == null || !Files.isDirectory(above)) {
      throw new PressRefused(
          "the output " + folder + " is to lie in a folder that is not there",
          "make that folder first, or choose another");
    }
    for (Path in = above; in != null; in = in.getParent()) {
      if (Files.exists(in.resolve(JournalFolder.SITE_FILES), LinkOption.NOFOLLOW_LINKS)
          || in.endsWith(Ground.WORK_FOLDER)) {
        throw new PressRefused(
            "the output " + folder + " lies in a site, or in a work folder of the tool",
            "choose a folder outside, as what lies in a site is published");
      }
    }
    return new LoneFolder(real, disk);
  }

  private static boolean isEmptyFolder(Path path) throws IOException {
    if (!Files.isDirectory(path)) {
      return false;
    }
    try (DirectoryStream<Path> in = Files.newDirectoryStream(path)) {
      return !in.iterator().hasNext();
    }
  }

  /** What to do with the disk; its failures name the folder that the builder knows. */
  private interface Step {
    void run() throws IOException;
  }

  private void step(Step step) throws IOException {
    try {
      step.run();
    } catch (IOException e) {
      throw e.getCause() instanceof IOException cause
          ? RealDisk.named("cannot write", folder, cause)
          : RealDisk.named("cannot write", folder, e);
    }
  }

  private void begin() throws IOException {
    if (!begun) {
      Waiting.clear(waiting.getParent(), disk);
      begun = true;
      disk.makeFolder(waiting);
      folders.add(waiting);
    }
  }

  /** An empty folder on the same disk, where files are made before {@link #putFile}. */
  public Path workshop() throws IOException {
    Path workshop = waiting.resolve(RAW);
    step(
        () -> {
          begin();
          disk.makeFolder(workshop);
        });
    return workshop;
  }

  public void put(String path, byte[] content) throws IOException {
    step(() -> disk.write(place(path), content));
  }

  /** A file that was made in {@link #workshop}, and brought down to the disk there. */
  public void putFile(String path, Path made) throws IOException {
    step(() -> disk.move(made, place(path)));
  }

  /** A copy of another's file, byte for byte. */
  public void copy(String path, Path original) throws IOException {
    try (FileChannel content = open(original)) {
      step(() -> disk.copy(content, place(path)));
    }
  }

  static FileChannel open(Path original) throws IOException {
    try {
      return FileChannel.open(original, StandardOpenOption.READ);
    } catch (IOException e) {
      throw RealDisk.named("cannot read", original, e);
    }
  }

  private Path place(String path) throws IOException {
    begin();
    Path file = new SitePath(path).in(waiting);
    if (folders.add(file.getParent())) {
      disk.makeFolder(file.getParent());
    }
    return file;
  }

  /**
   * Puts it in place; once, and nothing is put after it.
   *
   * @throws IOException where the disk fails, with a message that names the folder; then nothing is
   *     there, but where the very last call failed, which brings its name down to the disk
   */
  public void finish() throws IOException {
    step(
        () -> {
          begin();
          Waiting.remove(waiting.resolve(RAW), disk);
          for (Path made : folders) {
            disk.force(made);
          }
          disk.move(waiting, folder);
          begun = false;
          disk.force(folder.getParent());
        });
  }

  /** Removes what was not put in place. */
  @Override
  public void close() throws IOException {
    if (begun) {
      step(() -> Waiting.remove(waiting, disk));
    }
  }
}
