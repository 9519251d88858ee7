package ribband.photo;

import com.drew.imaging.FileType;
import com.drew.imaging.FileTypeDetector;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;

/** Says what a file is that is of none of our kinds, and what to export instead. */
final class OtherFormat {
  private static final int ENOUGH_TO_TELL = 512;

  /** ISO/IEC 14496-12 brands of the file type box that stand for still pictures. */
  private static final Set<String> HEIF_BRANDS =
      Set.of("heic", "heix", "heim", "heis", "hevc", "hevx", "mif1", "msf1");

  private static final Set<String> AVIF_BRANDS = Set.of("avif", "avis");

  private OtherFormat() {}

  static UnfitPicture unfit(byte[] bytes) {
    return new UnfitPicture(
        brand(bytes)
            .or(() -> detected(bytes))
            .orElseGet(
                () ->
                    isText(bytes)
                        ? "is text and no picture; name a JPEG or PNG"
                        : "is no picture known here; export it as JPEG or PNG"));
  }

  private static Optional<String> brand(byte[] bytes) {
    if (bytes.length < 12 || !latin(bytes, 4, 8).equals("ftyp")) {
      return Optional.empty();
    }
    String brand = latin(bytes, 8, 12).toLowerCase(Locale.ROOT);
    if (HEIF_BRANDS.contains(brand)) {
      return Optional.of(picture("a HEIC", "JPEG"));
    }
    if (AVIF_BRANDS.contains(brand)) {
      return Optional.of(picture("an AVIF", "JPEG"));
    }
    return Optional.of(brand.equals("crx ") ? raw() : video());
  }

  private static Optional<String> detected(byte[] bytes) {
    FileType type;
    try {
      type = FileTypeDetector.detectFileType(new ByteArrayInputStream(bytes));
    } catch (IOException | RuntimeException e) {
      return Optional.empty();
    }
    return switch (type) {
      case Heif -> Optional.of(picture("a HEIC", "JPEG"));
      case Avif -> Optional.of(picture("an AVIF", "JPEG"));
      case Bmp -> Optional.of(picture("a BMP", "PNG"));
      case Psd -> Optional.of(picture("a PSD", "JPEG"));
      case Ico -> Optional.of(picture("an ICO", "PNG"));
      case Eps -> Optional.of(picture("an EPS", "PNG"));
      // Several makers' raw files are plain TIFF at their start.
      case Tiff -> Optional.of(picture("a TIFF or camera RAW", "JPEG"));
      case Dng, Arw, Crw, Cr2, Nef, Orf, Raf, Rw2, Crx, Kdc, ThreeFR, Pef, Srw ->
          Optional.of(raw());
      case Pdf -> Optional.of("is a PDF; export its page as JPEG or PNG");
      case Mp4, QuickTime, Avi, Asf, Flv, Mxf, Vob, GoPro -> Optional.of(video());
      default -> Optional.empty();
    };
  }

  private static String picture(String name, String export) {
    return "is " + name + " picture; export it as " + export;
  }

  private static String raw() {
    return picture("a camera RAW", "JPEG");
  }

  private static String video() {
    return "is a video; export one frame of it as JPEG";
  }

  private static boolean isText(byte[] bytes) {
    byte[] start = Arrays.copyOf(bytes, Math.min(bytes.length, ENOUGH_TO_TELL));
    try {
      return StandardCharsets.UTF_8
          .newDecoder()
          .decode(ByteBuffer.wrap(wholeCharacters(start)))
          .chars()
          .noneMatch(c -> c < ' ' && c != '\n' && c != '\r' && c != '\t');
    } catch (CharacterCodingException e) {
      return false;
    }
  }

  /** The cut at 512 bytes may fall inside a character of up to four bytes. */
  private static byte[] wholeCharacters(byte[] start) {
    int end = start.length;
    for (int back = 1; back <= Math.min(4, start.length); back++) {
      if ((start[start.length - back] & 0xC0) == 0xC0 && start.length == ENOUGH_TO_TELL) {
        end = start.length - back;
        break;
      }
    }
    return Arrays.copyOf(start, end);
  }

  private static String latin(byte[] bytes, int from, int to) {
    return new String(bytes, from, to - from, StandardCharsets.ISO_8859_1);
  }
}
