package ribband.photo;

import java.util.Arrays;
import java.util.Optional;
import java.util.stream.IntStream;

/** The kinds of picture that can be shown, known by their first bytes and never by a name. */
public enum PictureKind {
  /** ITU-T T.81: start of image, then a marker. */
  JPEG(0xFF, 0xD8, 0xFF),
  /** PNG, W3C Recommendation, section 5.2: the signature. */
  PNG(0x89, 'P', 'N', 'G', '\r', '\n', 0x1A, '\n'),
  /** GIF 87a and 89a; of an animated one the first frame. */
  GIF('G', 'I', 'F', '8'),
  /** RFC 9649, section 2: RIFF, a size, WEBP; of an animated one the first frame. */
  WEBP('R', 'I', 'F', 'F', -1, -1, -1, -1, 'W', 'E', 'B', 'P');

  private final int[] signature;

  /**
   * @param signature a byte each, or -1 for any byte
   */
  PictureKind(int... signature) {
    this.signature = signature;
  }

  static Optional<PictureKind> of(byte[] bytes) {
    return Arrays.stream(values()).filter(kind -> kind.opens(bytes)).findFirst();
  }

  private boolean opens(byte[] bytes) {
    return bytes.length >= signature.length
        && IntStream.range(0, signature.length)
            .allMatch(i -> signature[i] < 0 || signature[i] == (bytes[i] & 0xFF));
  }
}
