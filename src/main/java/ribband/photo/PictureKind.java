package ribband.photo;

import java.util.Arrays;
import java.util.Optional;

/** The kinds of picture that can be shown, known by their first bytes and never by a name. */
public enum PictureKind {
  /** ITU-T T.81: start of image, then a marker. */
  JPEG(0xFF, 0xD8, 0xFF),
  /** PNG, W3C Recommendation, section 5.2: the signature. */
  PNG(0x89, 'P', 'N', 'G', '\r', '\n', 0x1A, '\n');

  private final byte[] signature;

  PictureKind(int... signature) {
    this.signature = new byte[signature.length];
    for (int i = 0; i < signature.length; i++) {
      this.signature[i] = (byte) signature[i];
    }
  }

  static Optional<PictureKind> of(byte[] bytes) {
    return Arrays.stream(values()).filter(kind -> kind.opens(bytes)).findFirst();
  }

  private boolean opens(byte[] bytes) {
    return bytes.length >= signature.length
        && Arrays.equals(bytes, 0, signature.length, signature, 0, signature.length);
  }
}
