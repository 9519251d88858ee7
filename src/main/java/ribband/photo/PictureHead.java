package ribband.photo;

import com.drew.imaging.jpeg.JpegProcessingException;
import com.drew.imaging.jpeg.JpegSegmentData;
import com.drew.imaging.jpeg.JpegSegmentReader;
import com.drew.imaging.jpeg.JpegSegmentType;
import com.drew.lang.StreamReader;
import java.io.BufferedInputStream;
import java.io.EOFException;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDateTime;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Stream;
import java.util.stream.StreamSupport;

/**
 * What is told of a file as soon as possible: of a JPEG only what stands before its pixels is read.
 * Whether the rest is whole, {@link PictureReader} tells.
 *
 * @param other what it is where it is no picture that can be shown
 * @param taken EXIF DateTimeOriginal, the camera's own local time; empty where there is none or it
 *     is no date
 */
public record PictureHead(Optional<OtherKind> other, Optional<LocalDateTime> taken) {
  /** What it takes to know any kind of file. */
  private static final int ENOUGH_TO_TELL = 4096;

  /** An EXIF segment has at most this many bytes, and most JPEGs begin with it. */
  private static final int BUFFER = 1 << 16;

  private static final byte[] EXIF = "Exif\0\0".getBytes(StandardCharsets.US_ASCII);

  private static final List<JpegSegmentType> FRAMES =
      Arrays.stream(JpegSegmentType.values()).filter(t -> t.name().startsWith("SOF")).toList();

  private static final List<JpegSegmentType> WANTED =
      Stream.concat(FRAMES.stream(), Stream.of(JpegSegmentType.APP1)).toList();

  public PictureHead {
    Objects.requireNonNull(other);
    Objects.requireNonNull(taken);
  }

  /**
   * Reads a regular file's head.
   *
   * @throws UnfitPicture where it is a picture that cannot be shown, or is empty
   * @throws IOException where the file cannot be read
   */
  public static PictureHead read(Path file) throws UnfitPicture, IOException {
    try (InputStream in = new BufferedInputStream(Files.newInputStream(file), BUFFER)) {
      in.mark(ENOUGH_TO_TELL);
      byte[] start = in.readNBytes(ENOUGH_TO_TELL);
      in.reset();
      if (start.length == 0) {
        throw new UnfitPicture("is empty; copy it again from the camera");
      }
      Optional<PictureKind> kind = PictureKind.of(start);
      if (kind.isEmpty()) {
        return new PictureHead(Optional.of(OtherFormat.of(start)), Optional.empty());
      }
      return new PictureHead(
          Optional.empty(),
          kind.get() == PictureKind.JPEG ? taken(in) : new PictureReader().facts(file).taken());
    }
  }

  private static Optional<LocalDateTime> taken(InputStream jpeg) throws UnfitPicture, IOException {
    JpegSegmentData segments;
    try {
      segments = JpegSegmentReader.readSegments(new StreamReader(jpeg), WANTED);
    } catch (EOFException e) {
      throw UnfitPicture.cutShort();
    } catch (JpegProcessingException e) {
      throw UnfitPicture.damaged(e);
    }
    if (FRAMES.stream().noneMatch(segments::containsSegment)) {
      throw new UnfitPicture("holds no picture; copy it again from the camera");
    }
    return StreamSupport.stream(segments.getSegments(JpegSegmentType.APP1).spliterator(), false)
        .filter(PictureHead::isExif)
        .findFirst()
        .flatMap(exif -> ExifTags.of(Arrays.copyOfRange(exif, EXIF.length, exif.length)).taken());
  }

  private static boolean isExif(byte[] segment) {
    return segment.length > EXIF.length
        && Arrays.equals(segment, 0, EXIF.length, EXIF, 0, EXIF.length);
  }
}
