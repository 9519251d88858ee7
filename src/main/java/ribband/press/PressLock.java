package ribband.press;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.channels.OverlappingFileLockException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.time.Instant;
import java.util.OptionalLong;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;

/**
 * One run at a time beside an output: a lock of the operating system, which frees it when a run is
 * killed. The file holds the number of the process and is never removed.
 */
final class PressLock implements AutoCloseable {
  // Closing any channel to a file frees all locks that this process has on it (POSIX), so a second
  // run in the same process must not even open the file.
  private static final Set<Path> HELD_HERE = ConcurrentHashMap.newKeySet();

  /** Where some systems lock, nobody else can read; the number must stay readable. */
  private static final long PAST_THE_NUMBER = Long.MAX_VALUE - 1;

  private final Path file;
  private final FileChannel channel;

  private PressLock(Path file, FileChannel channel) {
    this.file = file;
    this.channel = channel;
  }

  /**
   * Takes the lock or says who has it; never waits.
   *
   * @param file real path of the lock file, in an existing folder
   */
  static PressLock take(Path file) throws PressBusy, IOException {
    if (!HELD_HERE.add(file)) {
      throw new PressBusy(file, OptionalLong.of(ProcessHandle.current().pid()));
    }
    FileChannel channel = null;
    try {
      channel = FileChannel.open(file, StandardOpenOption.CREATE, StandardOpenOption.WRITE);
      if (channel.tryLock(PAST_THE_NUMBER, 1, false) == null) {
        throw new PressBusy(file, process(file));
      }
      PressLock lock = new PressLock(file, channel);
      lock.say(Long.toString(ProcessHandle.current().pid()));
      return lock;
    } catch (OverlappingFileLockException e) {
      letGo(file, channel);
      throw new PressBusy(file, OptionalLong.empty());
    } catch (PressBusy e) {
      letGo(file, channel);
      throw e;
    } catch (IOException e) {
      letGo(file, channel);
      throw RealDisk.named("cannot lock", file, e);
    }
  }

  private static OptionalLong process(Path file) {
    try {
      return OptionalLong.of(Long.parseLong(Files.readString(file, StandardCharsets.UTF_8)));
    } catch (IOException | NumberFormatException e) {
      return OptionalLong.empty();
    }
  }

  private void say(String text) throws IOException {
    channel.truncate(0);
    channel.write(ByteBuffer.wrap(text.getBytes(StandardCharsets.UTF_8)), 0);
  }

  /** When the lock was taken, by the clock of the file system. */
  Instant taken() throws IOException {
    return Files.getLastModifiedTime(file).toInstant();
  }

  @Override
  public void close() throws IOException {
    if (channel.isOpen()) {
      letGo(file, channel);
    }
  }

  private static void letGo(Path file, FileChannel channel) throws IOException {
    try {
      if (channel != null) {
        channel.close();
      }
    } finally {
      HELD_HERE.remove(file);
    }
  }
}
