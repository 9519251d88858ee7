package ribband.memory;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.TreeMap;
import java.util.concurrent.ConcurrentHashMap;

/**
 * Texts kept between runs in one file. Threads may share it. Only what is asked for or put in this
 * run is kept at {@link #save}, so that it does not grow for ever.
 */
public final class Memory {
  private final Path file;
  private final String version;
  private final Map<String, byte[]> before;

  /** As bytes: a text takes half the room or less. */
  private final Map<String, byte[]> kept = new ConcurrentHashMap<>();

  private Memory(Path file, String version, Map<String, byte[]> before) {
    this.file = file;
    this.version = version;
    this.before = before;
  }

  /**
   * Loads a memory whole. A file that is missing, unreadable, damaged, foreign or of another
   * version is an empty memory.
   *
   * @param version all that the values depend on beside their keys: the tool's version, its
   *     settings
   */
  public static Memory load(Path file, String version) {
    Objects.requireNonNull(version);
    return new Memory(file, version, MemoryFile.read(file, version));
  }

  /** The value under a key, if one was kept. */
  public Optional<String> get(String key) {
    byte[] now = kept.get(key);
    byte[] value = now == null ? before.get(key) : now;
    if (value == null) {
      return Optional.empty();
    }
    kept.putIfAbsent(key, value);
    return Optional.of(new String(value, StandardCharsets.UTF_8));
  }

  /** The value kept for a file, if it has not been touched since, and was not just touched. */
  public Optional<String> get(FileStamp stamp) {
    return stamp.settled() ? get(stamp.key()) : Optional.empty();
  }

  /** Keeps a value; a later one under the same key stands. */
  public void put(String key, String value) {
    kept.put(Objects.requireNonNull(key), value.getBytes(StandardCharsets.UTF_8));
  }

  /** Keeps a value for a file; one that was just touched is not kept, but read again next time. */
  public void put(FileStamp stamp, String value) {
    if (stamp.settled()) {
      put(stamp.key(), value);
    }
  }

  /**
   * Writes what this run asked for or put, whole or not at all.
   *
   * @throws IOException where the disk fails; nothing is lost by going on without
   */
  public void save() throws IOException {
    Files.createDirectories(file.toAbsolutePath().getParent());
    Path fresh = file.resolveSibling(file.getFileName() + ".new");
    try {
      MemoryFile.write(fresh, version, new TreeMap<>(kept));
      Files.move(fresh, file, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
    } finally {
      Files.deleteIfExists(fresh);
    }
  }
}
