package ribband.photo;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.zip.CRC32;
import ribband.memory.Hash;

/**
 * A picture file read once, so that its digest, its header and its pixels come from the same bytes.
 *
 * @param bytes the whole file; never changed
 */
record Original(byte[] bytes) {
  static final long MOST_BYTES = 200_000_000;

  /**
   * @throws UnfitPicture where the file is empty, too large or no regular file
   * @throws IOException where it cannot be read
   */
  static Original read(Path file) throws UnfitPicture, IOException {
    // A pipe or device would block on opening; a missing file is an IOException further down.
    if (Files.exists(file) && !Files.isRegularFile(file)) {
      throw new UnfitPicture(
          Files.isDirectory(file)
              ? "is a folder; name the pictures in it"
              : "is no regular file; copy the picture itself here");
    }
    long size = Files.size(file);
    if (size == 0) {
      throw new UnfitPicture("is empty; copy it again from the camera");
    }
    if (size > MOST_BYTES) {
      throw new UnfitPicture("is larger than 200 MB; save it smaller");
    }
    byte[] bytes = new byte[(int) size];
    try (InputStream in = Files.newInputStream(file)) {
      if (in.readNBytes(bytes, 0, bytes.length) < bytes.length || in.read() >= 0) {
        throw changed();
      }
    }
    return new Original(bytes);
  }

  /** Reads the file that the facts were taken from, and no other. */
  static Original read(Path file, PictureFacts facts) throws UnfitPicture, IOException {
    Original original = read(file);
    if (original.checksum() != facts.checksum()) {
      throw changed();
    }
    return original;
  }

  /** SHA-256, hex: what the picture is known by. */
  String digest() {
    return Hash.of(bytes);
  }

  /** CRC-32: enough to see that a file is still the same, and a hundred times as fast. */
  long checksum() {
    CRC32 sum = new CRC32();
    sum.update(bytes);
    return sum.getValue();
  }

  private static UnfitPicture changed() {
    return new UnfitPicture("changed while it was read; run again when it is whole");
  }
}
