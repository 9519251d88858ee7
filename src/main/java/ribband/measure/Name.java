package ribband.measure;

import java.text.Normalizer;
import java.util.Locale;
import java.util.regex.Pattern;

/** How names are compared. */
public final class Name {
  private static final Pattern APART = Pattern.compile("[ _\\-\\u00a0]+");

  private Name() {}

  /** spec: keys compare without regard to case, and space, hyphen and underscore are alike. */
  public static String fold(String name) {
    if (isFolded(name)) {
      return name;
    }
    return APART.matcher(plain(name.strip())).replaceAll("-");
  }

  /** Most names are written as they fold, and looking is cheaper than folding. */
  private static boolean isFolded(String name) {
    for (int i = 0; i < name.length(); i++) {
      char c = name.charAt(i);
      if (c < 'a' || c > 'z') {
        return false;
      }
    }
    return !name.isEmpty();
  }

  /** Composed and in small letters, for names of files: two that look alike are alike. */
  public static String plain(String name) {
    return Normalizer.normalize(name, Normalizer.Form.NFC).toLowerCase(Locale.ROOT);
  }
}
