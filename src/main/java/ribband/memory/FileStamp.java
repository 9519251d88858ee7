package ribband.memory;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.BasicFileAttributes;
import java.time.Duration;
import java.time.Instant;
import java.util.Objects;

/**
 * What tells, without reading it, that a file is the one read before.
 *
 * @param path names the file between runs: its journal path, or its path in the site
 * @param size in bytes
 * @param modified when the file was last written
 * @param taken when the stamp was taken, before the file was read
 */
public record FileStamp(String path, long size, Instant modified, Instant taken) {
  /** The coarsest clock of a file system in use: FAT counts every second second. */
  private static final Duration TICK = Duration.ofSeconds(2);

  public FileStamp {
    Objects.requireNonNull(path);
    Objects.requireNonNull(modified);
    Objects.requireNonNull(taken);
  }

  /**
   * Stamps a file; take it before reading.
   *
   * @param now the time, or one a little before it
   */
  public static FileStamp of(String path, Path file, Instant now) throws IOException {
    return of(path, Files.readAttributes(file, BasicFileAttributes.class), now);
  }

  public static FileStamp of(String path, BasicFileAttributes file, Instant now) {
    return new FileStamp(path, file.size(), file.lastModifiedTime().toInstant(), now);
  }

  /**
   * Whether a later change must show in the stamp. A file written again within one tick of the file
   * system's clock keeps its time, so one that was touched less than 2 s before its stamp was
   * taken, or after it, is never to be trusted.
   */
  public boolean settled() {
    return !modified.isAfter(taken.minus(TICK));
  }

  String key() {
    return path + '\n' + size + '\n' + modified.getEpochSecond() + '.' + modified.getNano();
  }
}
