package ribband.press;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.Arrays;

/**
 * The real disk, up to a call that fails; a write that fails leaves half a file. Nothing is brought
 * down to the disk, which would only take time here.
 */
class FailingDisk implements Disk {
  private final Disk real = new RealDisk();
  private final int failing;
  private final Runnable before;
  private int calls;

  /**
   * @param failing which call fails, counted from 1; 0 for none
   * @param before looks at the disk just before the failure, as a kill would leave it
   */
  FailingDisk(int failing, Runnable before) {
    this.failing = failing;
    this.before = before;
  }

  static FailingDisk never() {
    return new FailingDisk(0, () -> {});
  }

  int calls() {
    return calls;
  }

  private boolean fails() {
    calls++;
    return calls == failing;
  }

  private IOException fault(String failed, Path path) {
    before.run();
    return RealDisk.named(failed, path, new IOException("No space left on device"));
  }

  @Override
  public void makeFolder(Path folder) throws IOException {
    if (fails()) {
      throw fault("cannot make the folder", folder);
    }
    real.makeFolder(folder);
  }

  @Override
  public void write(Path file, byte[] content) throws IOException {
    if (fails()) {
      Files.write(file, Arrays.copyOf(content, content.length / 2));
      throw fault("cannot write", file);
    }
    Files.write(file, content, StandardOpenOption.CREATE_NEW);
  }

  @Override
  public void copy(FileChannel content, Path file) throws IOException {
    if (fails()) {
      Files.write(file, new byte[] {1});
      throw fault("cannot write", file);
    }
    real.copy(content, file);
  }

  @Override
  public void force(Path path) throws IOException {
    if (fails()) {
      throw fault("cannot write", path);
    }
  }

  @Override
  public void move(Path from, Path to) throws IOException {
    if (fails()) {
      throw fault("cannot put in place", to);
    }
    real.move(from, to);
  }

  @Override
  public void moveToNew(Path from, Path to) throws IOException {
    if (fails()) {
      throw fault("cannot put in place", to);
    }
    real.moveToNew(from, to);
  }

  @Override
  public void delete(Path path) throws IOException {
    if (fails()) {
      throw fault("cannot remove", path);
    }
    real.delete(path);
  }
}
