package ribband.press;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.AccessDeniedException;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.DirectoryNotEmptyException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;

/** The disk as it is; remembers only whether it brings folders down. */
final class RealDisk implements Disk {
  private static final long LONGEST_STEP = 1 << 24;

  /** Set by the first folder that was brought down: from then on a refusal is a fault. */
  private volatile boolean bringsFoldersDown;

  @Override
  public void makeFolder(Path folder) throws IOException {
    try {
      Files.createDirectories(folder);
    } catch (IOException e) {
      throw named("cannot make the folder", folder, e);
    }
  }

  @Override
  public void write(Path file, byte[] content) throws IOException {
    try (FileChannel channel =
        FileChannel.open(file, StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE)) {
      ByteBuffer bytes = ByteBuffer.wrap(content);
      while (bytes.hasRemaining()) {
        channel.write(bytes);
      }
      channel.force(true);
    } catch (IOException e) {
      throw named("cannot write", file, e);
    }
  }

  @Override
  public void copy(FileChannel content, Path file) throws IOException {
    try (FileChannel channel =
        FileChannel.open(file, StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE)) {
      long at = content.position();
      for (long moved = 1; moved > 0; at += moved) {
        moved = content.transferTo(at, LONGEST_STEP, channel);
      }
      channel.force(true);
    } catch (IOException e) {
      throw named("cannot write", file, e);
    }
  }

  @Override
  public void force(Path path) throws IOException {
    boolean folder = Files.isDirectory(path);
    try (FileChannel channel =
        FileChannel.open(path, folder ? StandardOpenOption.READ : StandardOpenOption.WRITE)) {
      channel.force(true);
      bringsFoldersDown |= folder;
    } catch (IOException e) {
      // Some systems and network disks cannot; there its names are brought down by the move itself.
      if (!folder || bringsFoldersDown) {
        throw named("cannot write", path, e);
      }
    }
  }

  @Override
  public void move(Path from, Path to) throws IOException {
    try {
      Files.move(from, to, StandardCopyOption.ATOMIC_MOVE);
    } catch (AtomicMoveNotSupportedException e) {
      throw new IOException(
          "cannot move a file to "
              + to
              + " in one step: its folder is on another disk than "
              + from.getParent()
              + "; choose a folder inside it as the output",
          e);
    } catch (IOException e) {
      throw named("cannot put in place", to, e);
    }
  }

  @Override
  public void moveToNew(Path from, Path to) throws IOException {
    try {
      link(from, to);
    } catch (FileAlreadyExistsException e) {
      throw e;
    } catch (IOException e) {
      throw named("cannot put in place", to, e);
    }
    delete(from);
  }

  /** A second name for a file is refused where the first is taken, which a move is not. */
  private static void link(Path from, Path to) throws IOException {
    try {
      Files.createLink(to, from);
    } catch (FileAlreadyExistsException e) {
      throw e;
    } catch (UnsupportedOperationException | FileSystemException e) {
      // Sticks and cards know one name a file; there the move looks first.
      Files.move(from, to);
    }
  }

  @Override
  public void delete(Path path) throws IOException {
    try {
      Files.deleteIfExists(path);
    } catch (DirectoryNotEmptyException e) {
      throw e;
    } catch (IOException e) {
      throw named("cannot remove", path, e);
    }
  }

  /** An exception whose message says what failed, where and why. */
  static IOException named(String failed, Path path, IOException cause) {
    return new IOException(failed + " " + path + ": " + reason(cause), cause);
  }

  private static String reason(IOException cause) {
    if (cause instanceof AccessDeniedException) {
      return "permission denied";
    }
    if (cause instanceof NoSuchFileException gone) {
      return gone.getFile() + " is not there";
    }
    if (cause instanceof FileAlreadyExistsException there) {
      return there.getFile() + " is already there";
    }
    if (cause instanceof FileSystemException fault && fault.getReason() != null) {
      return fault.getReason();
    }
    return cause.getMessage() == null ? cause.getClass().getSimpleName() : cause.getMessage();
  }
}
