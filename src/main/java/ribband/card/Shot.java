package ribband.card;

import java.time.LocalDateTime;
import java.util.Comparator;
import java.util.Objects;
import ribband.photo.PictureKind;

/**
 * A picture of the night, sound as far as its marks tell.
 *
 * @param taken by the camera's own clock
 * @param digest SHA-256 of its bytes, 64 lower-case hex digits
 * @param size in bytes
 */
record Shot(CardFile file, PictureKind kind, LocalDateTime taken, String digest, long size)
    implements Seen {
  /** By time, and within a second as the camera counts them. */
  static final Comparator<Shot> ORDER =
      Comparator.comparing(Shot::taken)
          .thenComparing(shot -> shot.file().lastName(), NaturalOrder::compare)
          .thenComparing(shot -> shot.file().name(), NaturalOrder::compare);

  Shot {
    Objects.requireNonNull(file);
    Objects.requireNonNull(kind);
    Objects.requireNonNull(taken);
    Objects.requireNonNull(digest);
  }

  LeftOut leftOut(Reason reason, String detail) {
    return file.leftOut(reason, detail);
  }
}
