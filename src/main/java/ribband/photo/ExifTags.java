package ribband.photo;

import com.drew.lang.ByteArrayReader;
import com.drew.metadata.Directory;
import com.drew.metadata.Metadata;
import com.drew.metadata.exif.ExifIFD0Directory;
import com.drew.metadata.exif.ExifReader;
import com.drew.metadata.exif.ExifSubIFDDirectory;
import java.time.DateTimeException;
import java.time.LocalDateTime;
import java.time.format.DateTimeFormatter;
import java.time.format.ResolverStyle;
import java.util.Locale;
import java.util.Optional;

/**
 * The two EXIF tags that matter here; all others stay unread and go nowhere.
 *
 * @param orientation 1 to 8
 * @param taken camera's local time
 */
record ExifTags(int orientation, Optional<LocalDateTime> taken) {
  static final ExifTags NONE = new ExifTags(1, Optional.empty());

  /** EXIF 2.32, tag 0x9003; strict, so that 30 February is no date. */
  private static final DateTimeFormatter DATE_TIME =
      DateTimeFormatter.ofPattern("uuuu:MM:dd HH:mm:ss", Locale.ROOT)
          .withResolverStyle(ResolverStyle.STRICT);

  /** Never fails: a broken block is as good as none. */
  static ExifTags of(byte[] tiff) {
    Metadata metadata = new Metadata();
    try {
      new ExifReader().extract(new ByteArrayReader(tiff), metadata);
    } catch (RuntimeException e) {
      return NONE;
    }
    return new ExifTags(
        orientation(metadata.getFirstDirectoryOfType(ExifIFD0Directory.class)),
        taken(metadata.getFirstDirectoryOfType(ExifSubIFDDirectory.class)));
  }

  private static int orientation(Directory directory) {
    Integer value =
        directory == null ? null : directory.getInteger(ExifIFD0Directory.TAG_ORIENTATION);
    return value == null || value < 1 || value > 8 ? 1 : value;
  }

  private static Optional<LocalDateTime> taken(Directory directory) {
    String text =
        directory == null ? null : directory.getString(ExifSubIFDDirectory.TAG_DATETIME_ORIGINAL);
    if (text == null) {
      return Optional.empty();
    }
    try {
      return Optional.of(LocalDateTime.parse(text.strip(), DATE_TIME));
    } catch (DateTimeException e) {
      return Optional.empty();
    }
  }
}
