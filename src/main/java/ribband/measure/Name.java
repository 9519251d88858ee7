package ribband.measure;

import java.text.Normalizer;
import java.util.Locale;

/** How names are compared. */
public final class Name {
  private Name() {}

  /** spec: keys compare without regard to case, and space, hyphen and underscore are alike. */
  public static String fold(String name) {
    return Normalizer.normalize(name.strip(), Normalizer.Form.NFC)
        .toLowerCase(Locale.ROOT)
        .replaceAll("[ _\\-\\u00a0]+", "-");
  }
}
