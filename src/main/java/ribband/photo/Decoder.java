package ribband.photo;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javax.imageio.ImageIO;
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
   * @throws UnfitPicture where pixels are missing or damaged
   */
  static Negative decode(Original original, PictureKind kind) throws UnfitPicture {
    Outline outline = Outline.of(kind, original.bytes());
    int padding = outline instanceof JpegOutline jpeg ? jpeg.padding() : 0;
    BufferedImage image = read(kind, outline.pixels(), padding);
    return new Negative(FlatPixels.of(image), outline.profile());
  }

  private static BufferedImage read(PictureKind kind, byte[] bytes, int padding)
      throws UnfitPicture {
    ImageReader reader = ImageIO.getImageReadersByFormatName(kind.name()).next();
    List<String> warnings = new ArrayList<>();
    try (BytesInput in = new BytesInput(bytes)) {
      reader.addIIOReadWarningListener((source, warning) -> warnings.add(warning));
      reader.setInput(in, true, true);
      BufferedImage image = reader.read(0);
      for (String warning : warnings) {
        if (!isHarmless(warning, padding)) {
          throw UnfitPicture.damaged();
        }
      }
      return image;
    } catch (IOException | RuntimeException e) {
      // Hostile bytes make the JDK's readers throw nearly anything.
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
