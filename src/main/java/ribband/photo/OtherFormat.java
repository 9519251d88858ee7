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

/** Tells what a file is that is of none of our kinds. */
final class OtherFormat {
  private static final int ENOUGH_TO_TELL = 512;

  /** ISO/IEC 14496-12 brands of the file type box that stand for still pictures. */
  private static final Set<String> HEIF_BRANDS =
      Set.of("heic", "heix", "heim", "heis", "hevc", "hevx", "mif1", "msf1");

  private static final Set<String> AVIF_BRANDS = Set.of("avif", "avis");

  /** RFC 8794, section 11.2.1: how Matroska and WebM files begin. */
  private static final byte[] EBML = {0x1A, 0x45, (byte) 0xDF, (byte) 0xA3};

  private OtherFormat() {}

  static UnfitPicture unfit(byte[] bytes) {
    return new UnfitPicture(of(bytes).sentence());
  }

  /**
   * @param bytes the file's, or its first thousands
   */
  static OtherKind of(byte[] bytes) {
    return brand(bytes)
        .or(() -> detected(bytes))
        .orElseGet(() -> isText(bytes) ? OtherKind.TEXT : OtherKind.UNKNOWN);
  }

  private static Optional<OtherKind> brand(byte[] bytes) {
    if (Arrays.equals(bytes, 0, Math.min(bytes.length, EBML.length), EBML, 0, EBML.length)) {
      return Optional.of(OtherKind.VIDEO);
    }
    if (bytes.length < 12 || !latin(bytes, 4, 8).equals("ftyp")) {
      return Optional.empty();
    }
    String brand = latin(bytes, 8, 12).toLowerCase(Locale.ROOT);
    if (HEIF_BRANDS.contains(brand)) {
      return Optional.of(OtherKind.HEIC);
    }
    if (AVIF_BRANDS.contains(brand)) {
      return Optional.of(OtherKind.AVIF);
    }
    return Optional.of(brand.equals("crx ") ? OtherKind.RAW : OtherKind.VIDEO);
  }

  private static Optional<OtherKind> detected(byte[] bytes) {
    FileType type;
    try {
      type = FileTypeDetector.detectFileType(new ByteArrayInputStream(bytes));
    } catch (IOException | RuntimeException e) {
      return Optional.empty();
    }
    return switch (type) {
      case Heif -> Optional.of(OtherKind.HEIC);
      case Avif -> Optional.of(OtherKind.AVIF);
      case Bmp -> Optional.of(OtherKind.BMP);
      case Psd -> Optional.of(OtherKind.PSD);
      case Ico -> Optional.of(OtherKind.ICO);
      case Eps -> Optional.of(OtherKind.EPS);
      case Tiff -> Optional.of(OtherKind.TIFF);
      case Dng, Arw, Crw, Cr2, Nef, Orf, Raf, Rw2, Crx, Kdc, ThreeFR, Pef, Srw ->
          Optional.of(OtherKind.RAW);
      case Pdf -> Optional.of(OtherKind.PDF);
      case Mp4, QuickTime, Avi, Asf, Flv, Mxf, Vob, GoPro -> Optional.of(OtherKind.VIDEO);
      default -> Optional.empty();
    };
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
