package ribband.photo;

import java.awt.Rectangle;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javax.imageio.IIOException;
import javax.imageio.ImageIO;
import javax.imageio.ImageReadParam;
import javax.imageio.ImageReader;

/**
 * Bytes to pixels, as stored, whole or not at all: what a decoder fills in for missing data is
 * never shown.
 */
final class Decoder {
  /**
   * The warnings that cost no pixel. All others refuse the picture, unknown ones too: a decoder
   * that spoke another tongue could make this stricter, never blinder. The JDK has its three texts
   * in English only, the codec's own are fixed C strings.
   */
  private static final List<Pattern> HARMLESS =
      List.of(
          Pattern.compile("JFIF markers not allowed in JFIF JPEG thumbnail; ignored"),
          Pattern.compile("Warning: unknown JFIF revision number .*"),
          Pattern.compile("Unknown Adobe color transform code .*"));

  private static final Pattern PADDED_END =
      Pattern.compile("Corrupt JPEG data: (\\d{1,9}) extraneous bytes before marker 0xd9");

  private Decoder() {}

  /**
   * @return the whole picture, or already as small as its largest print
   * @throws UnfitPicture where pixels are missing or damaged
   */
  static Negative decode(Original original, PictureFacts facts) throws UnfitPicture {
    Outline outline = Outline.of(facts.kind(), original.bytes());
    if (outline instanceof JpegOutline jpeg) {
      return jpeg(jpeg, PrintSize.largest(facts).asStored(facts));
    }
    Reading<BufferedImage> reading =
        facts.kind() == PictureKind.GIF ? Decoder::everyRow : reader -> reader.read(0);
    BufferedImage image = read(outline.pixels(), facts.kind(), 0, reading);
    return new Negative(FlatPixels.of(image), outline.profile());
  }

  /** The JDK takes an early end of a GIF's data for its right end. */
  private static BufferedImage everyRow(ImageReader reader) throws IOException {
    FinishedRows finished = new FinishedRows();
    reader.addIIOReadUpdateListener(finished);
    BufferedImage image = reader.read(0);
    if (finished.count() < image.getHeight()) {
      throw new IIOException(finished.count() + " rows of " + image.getHeight());
    }
    return image;
  }

  private static Negative jpeg(JpegOutline jpeg, PrintSize size) throws UnfitPicture {
    return switch (jpeg.samples()) {
      case GREY -> new Negative(whole(jpeg), jpeg.profile());
      case COLOUR -> new Negative(colour(jpeg, size), jpeg.profile());
      case CMYK, YCCK ->
          new Negative(
              Inks.onPaper(
                  jpeg(jpeg, reader -> reader.readRaster(0, null)), jpeg.samples(), jpeg.profile()),
              Optional.empty());
    };
  }

  private static BufferedImage whole(JpegOutline jpeg) throws UnfitPicture {
    return FlatPixels.of(jpeg(jpeg, reader -> reader.read(0)));
  }

  /** Small as it is decoded, where that goes; what fails so is judged by decoding it whole. */
  private static BufferedImage colour(JpegOutline jpeg, PrintSize size) throws UnfitPicture {
    if (jpeg.scans() > 1) {
      return severalScans(jpeg);
    }
    ShrinkingRaster rows =
        new ShrinkingRaster(jpeg.width(), jpeg.height(), size.width(), size.height());
    try {
      jpeg(jpeg, reader -> into(rows, reader));
    } catch (UnfitPicture e) {
      return whole(jpeg);
    }
    Optional<BufferedImage> small = rows.small();
    return small.isPresent() ? small.get() : whole(jpeg);
  }

  /** Asked for one row, the reader still takes in all scans, and tells what is wrong with them. */
  private static BufferedImage severalScans(JpegOutline jpeg) throws UnfitPicture {
    jpeg(jpeg, Decoder::firstRow);
    Optional<BufferedImage> rendered = Rendering.of(jpeg);
    return rendered.isPresent() ? rendered.get() : whole(jpeg);
  }

  private static BufferedImage firstRow(ImageReader reader) throws IOException {
    ImageReadParam how = reader.getDefaultReadParam();
    how.setSourceRegion(new Rectangle(reader.getWidth(0), 1));
    return reader.read(0, how);
  }

  private static BufferedImage into(ShrinkingRaster rows, ImageReader reader) throws IOException {
    ImageReadParam how = reader.getDefaultReadParam();
    how.setDestination(rows.large());
    return reader.read(0, how);
  }

  private static <T> T jpeg(JpegOutline jpeg, Reading<T> reading) throws UnfitPicture {
    return read(jpeg.pixels(), PictureKind.JPEG, jpeg.padding(), reading);
  }

  /** What is asked of a reader. */
  private interface Reading<T> {
    T by(ImageReader reader) throws IOException;
  }

  private static <T> T read(byte[] bytes, PictureKind kind, int padding, Reading<T> reading)
      throws UnfitPicture {
    ImageReader reader = ImageIO.getImageReadersByFormatName(kind.name()).next();
    List<String> warnings = new ArrayList<>();
    try (BytesInput in = new BytesInput(bytes)) {
      reader.addIIOReadWarningListener((source, warning) -> warnings.add(warning));
      reader.setInput(in, true, true);
      T read = reading.by(reader);
      for (String warning : warnings) {
        if (!isHarmless(warning, padding)) {
          throw UnfitPicture.damaged();
        }
      }
      return read;
    } catch (IOException | RuntimeException e) {
      // Hostile bytes make the readers throw nearly anything.
      throw UnfitPicture.damaged(e);
    } finally {
      reader.dispose();
    }
  }

  private static boolean isHarmless(String warning, int padding) {
    Matcher end = PADDED_END.matcher(warning);
    // Zeros before the end are a camera's padding; other bytes there are pixels that went astray.
    return end.matches()
        ? Integer.parseInt(end.group(1)) <= padding
        : HARMLESS.stream().anyMatch(text -> text.matcher(warning).matches());
  }
}
