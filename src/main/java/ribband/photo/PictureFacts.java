package ribband.photo;

import java.time.LocalDateTime;
import java.util.Objects;
import java.util.Optional;

/**
 * What a picture file's bytes tell without decoding its pixels.
 *
 * @param digest SHA-256 of the file's bytes, 64 lower-case hex digits
 * @param checksum CRC-32 of the file's bytes
 * @param kind by content
 * @param orientation EXIF 0x0112, 1 to 8; 1 where the file has none or a wrong one
 * @param width px, upright (as shown, after turning by the orientation)
 * @param height px, upright
 * @param frames of an animated file, of which the first is shown; else 1
 * @param taken EXIF DateTimeOriginal, the camera's own local time; empty where there is none or it
 *     is no date
 */
public record PictureFacts(
    String digest,
    long checksum,
    PictureKind kind,
    int orientation,
    int width,
    int height,
    int frames,
    Optional<LocalDateTime> taken) {

  public PictureFacts {
    Objects.requireNonNull(kind);
    Objects.requireNonNull(taken);
    if (!digest.matches("[0-9a-f]{64}")) {
      throw new IllegalArgumentException("no SHA-256: " + digest);
    }
    if (orientation < 1 || orientation > 8) {
      throw new IllegalArgumentException("orientation " + orientation);
    }
    if (frames < 1) {
      throw new IllegalArgumentException(frames + " frames");
    }
    if (width < 1 || height < 1) {
      throw new IllegalArgumentException("size " + width + " x " + height);
    }
  }

  /** Whether the file's rows run along the height of the upright picture. */
  boolean liesOnItsSide() {
    return orientation >= 5;
  }

  long pixels() {
    return (long) width * height;
  }
}
