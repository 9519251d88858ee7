package ribband.telling;

import java.nio.charset.StandardCharsets;
import java.text.Normalizer;

/** Names the copy of a receipt so that any disk takes it and its number stands in front. */
final class ReceiptName {
  /** What most file systems take, in bytes. */
  private static final int LONGEST = 255;

  private ReceiptName() {}

  /** At least three figures, so that names stand in order. */
  static String label(int number) {
    String figures = Integer.toString(number);
    return "0".repeat(Math.max(0, 3 - figures.length())) + figures;
  }

  /**
   * The number and the file's own name; other signs than letters, figures, dots, hyphens and
   * underscores become hyphens, and what is too long is cut before its ending.
   */
  static String of(int number, String file) {
    String name =
        Normalizer.normalize(file.substring(file.lastIndexOf('/') + 1), Normalizer.Form.NFC);
    String plain = name.replaceAll("[^\\p{L}\\p{M}\\p{N}._-]+", "-");
    int dot = plain.lastIndexOf('.');
    String ending = dot > 0 && plain.length() - dot <= 8 ? plain.substring(dot) : "";
    String stem = label(number) + "-" + plain.substring(0, plain.length() - ending.length());
    while (bytes(stem + ending) > LONGEST) {
      stem = stem.substring(0, stem.offsetByCodePoints(stem.length(), -1));
    }
    return stem + ending;
  }

  private static int bytes(String text) {
    return text.getBytes(StandardCharsets.UTF_8).length;
  }
}
