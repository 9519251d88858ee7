package ribband.press;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.attribute.BasicFileAttributes;
import java.time.Instant;
import java.util.Arrays;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import ribband.memory.FileStamp;
import ribband.memory.Hash;
import ribband.memory.Memory;

/**
 * The site as it stands: what is listed, and what is really there. A file is read to know its hash;
 * one whose size and time are as remembered is not read again. Threads may share it.
 */
final class Standing {
  private final Path site;
  private final SiteList list;
  private final Memory hashes;
  private final Instant opened;
  private final Map<Path, Boolean> plainFolders = new ConcurrentHashMap<>();

  /**
   * @param hashes of files by their stamps
   * @param opened when this run began, by the clock of the file system
   */
  Standing(Path site, SiteList list, Memory hashes, Instant opened) {
    this.site = site;
    this.list = list;
    this.hashes = hashes;
    this.opened = opened;
  }

  SiteList list() {
    return list;
  }

  /** The hash of a file that is there just as we wrote it. */
  Optional<String> held(SitePath path) throws IOException {
    return hash(path).filter(hash -> list.names(path, hash));
  }

  /** The hash of a file of ours, if it has these bytes; to compare takes less time than to hash. */
  Optional<String> same(SitePath path, byte[] content) throws IOException {
    Optional<BasicFileAttributes> file = list.names(path) ? plainFile(path) : Optional.empty();
    return file.isPresent()
            && file.get().size() == content.length
            && Arrays.equals(Files.readAllBytes(path.in(site)), content)
        ? Optional.of(hash(path, file.get()))
        : Optional.empty();
  }

  /** Whether a file of ours with this hash is there. */
  boolean holds(SitePath path, String hash, long size) throws IOException {
    Optional<BasicFileAttributes> file = list.names(path) ? plainFile(path) : Optional.empty();
    return file.isPresent() && file.get().size() == size && hash(path, file.get()).equals(hash);
  }

  private Optional<String> hash(SitePath path) throws IOException {
    Optional<BasicFileAttributes> file = list.names(path) ? plainFile(path) : Optional.empty();
    return file.isPresent() ? Optional.of(hash(path, file.get())) : Optional.empty();
  }

  private String hash(SitePath path, BasicFileAttributes file) throws IOException {
    FileStamp stamp = FileStamp.of(path.text(), file, opened);
    Optional<String> remembered = hashes.get(stamp);
    if (remembered.isPresent()) {
      return remembered.get();
    }
    String hash = read(path.in(site));
    hashes.put(stamp, hash);
    return hash;
  }

  /** The hash of what stands at a path, read anew; empty where that is no plain file. */
  Optional<String> readHash(SitePath path) throws IOException {
    return plainFile(path).isPresent() ? Optional.of(read(path.in(site))) : Optional.empty();
  }

  static String read(Path file) throws IOException {
    try {
      return Hash.of(file);
    } catch (IOException e) {
      throw RealDisk.named("cannot read", file, e);
    }
  }

  /** A regular file that no link leads to or through. */
  private Optional<BasicFileAttributes> plainFile(SitePath path) throws IOException {
    Path file = path.in(site);
    if (!isPlainFolder(file.getParent())) {
      return Optional.empty();
    }
    try {
      return Optional.of(
              Files.readAttributes(file, BasicFileAttributes.class, LinkOption.NOFOLLOW_LINKS))
          .filter(BasicFileAttributes::isRegularFile);
    } catch (NoSuchFileException e) {
      return Optional.empty();
    }
  }

  private boolean isPlainFolder(Path folder) {
    if (folder.equals(site)) {
      return true;
    }
    Boolean known = plainFolders.get(folder);
    if (known == null) {
      known =
          isPlainFolder(folder.getParent()) && Files.isDirectory(folder, LinkOption.NOFOLLOW_LINKS);
      plainFolders.put(folder, known);
    }
    return known;
  }

  /**
   * Remembers the hash of a file just put in place.
   *
   * @param now the time by the clock of the file system
   */
  void remember(SitePath path, String hash, Instant now) throws IOException {
    hashes.put(FileStamp.of(path.text(), path.in(site), now), hash);
  }

  void save() {
    try {
      hashes.save();
    } catch (IOException e) {
      // The site is whole; without this memory the next run only reads its files again.
      return;
    }
  }
}
