package ribband.measure;

import java.nio.charset.StandardCharsets;
import java.text.Normalizer;
import java.util.Locale;

/** Words as a part of a file's name: small letters and figures of any script, joined by hyphens. */
public final class Slug {
  private static final int LONGEST = 60;

  /** File systems allow a name 255; this leaves room for the date, a number and an ending. */
  private static final int MOST_BYTES = 180;

  private Slug() {}

  /** Of these words; empty where none has a letter or figure. */
  public static String of(String words) {
    String plain =
        Normalizer.normalize(words, Normalizer.Form.NFC)
            .toLowerCase(Locale.ROOT)
            .replaceAll("[^\\p{L}\\p{M}\\p{N}]+", "-");
    StringBuilder kept = new StringBuilder();
    int bytes = 0;
    for (int letter : plain.codePoints().limit(LONGEST).toArray()) {
      String one = Character.toString(letter);
      bytes += one.getBytes(StandardCharsets.UTF_8).length;
      if (bytes <= MOST_BYTES) {
        kept.append(one);
      }
    }
    return kept.toString().replaceAll("^-+|-+$", "");
  }
}
