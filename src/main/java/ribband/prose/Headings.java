package ribband.prose;

import java.text.Normalizer;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;

/**
 * Gives the headings of one text their levels and ids, in order, and knows what links call them.
 */
public final class Headings {
  // The page around the text has the h1.
  private static final int HIGHEST = 2;
  private static final int LOWEST = 6;

  private static final Pattern NOT_IN_ID = Pattern.compile("[^a-z0-9]+");
  private static final Pattern NOT_A_WORD = Pattern.compile("[^\\p{L}\\p{M}\\p{N}]+");

  private final Map<String, String> idsByWords = new LinkedHashMap<>();
  private final Set<String> ids = new HashSet<>();
  private int previous = HIGHEST - 1;

  Headings() {}

  /**
   * The next heading.
   *
   * @param written the level in the text, 1 to 6
   * @param words the heading's words, not empty
   */
  Findings.Title next(int written, String words) {
    int level = Math.min(LOWEST, Math.max(HIGHEST, Math.min(previous + 1, written + 1)));
    previous = level;
    String slug = slug(words);
    String stem = "h-" + (slug.isEmpty() ? "section" : slug);
    String id = stem;
    for (int n = 2; !ids.add(id); n++) {
      id = stem + "-" + n;
    }
    idsByWords.putIfAbsent(key(words), id);
    return new Findings.Title(level, id);
  }

  /** The id that a link's fragment means. */
  public Optional<String> id(String fragment) {
    String direct = "h-" + slug(fragment);
    return ids.contains(direct)
        ? Optional.of(direct)
        : Optional.ofNullable(idsByWords.get(key(fragment)));
  }

  /** What links may name, in order. */
  public List<String> names() {
    return List.copyOf(idsByWords.keySet());
  }

  private static String slug(String words) {
    String plain = Normalizer.normalize(words, Normalizer.Form.NFD).replaceAll("\\p{M}+", "");
    return hyphened(plain.toLowerCase(Locale.ROOT), NOT_IN_ID);
  }

  private static String key(String words) {
    String whole = Normalizer.normalize(words, Normalizer.Form.NFC).toLowerCase(Locale.ROOT);
    return hyphened(whole, NOT_A_WORD);
  }

  private static String hyphened(String text, Pattern gaps) {
    return gaps.matcher(text).replaceAll("-").replaceAll("^-|-$", "");
  }
}
