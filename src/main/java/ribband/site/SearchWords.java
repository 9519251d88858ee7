package ribband.site;

import java.text.Normalizer;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;

/**
 * The words of a text as a search compares them: small letters without accents. The browser does
 * the same with what is asked, in {@code site-template/assets/searcher.js}.
 */
final class SearchWords {
  private static final Pattern FRACTION = Pattern.compile("[\u00bc-\u00be\u2150-\u215e\u2189]");
  private static final Pattern MARK = Pattern.compile("\\p{M}+");
  private static final Pattern APOSTROPHE = Pattern.compile("(\\p{L})['\u2019\u02bc](?=\\p{L})");
  private static final Pattern OTHER_LETTER = Pattern.compile("[ßøæœłđðþıς]");

  /** A number with its signs, as 3/4, 2:45, 2.75 and 1,200, or letters and digits in a row. */
  private static final Pattern WORD = Pattern.compile("\\p{N}+(?:[.,:/]\\p{N}+)+|[\\p{L}\\p{N}]+");

  /** Letters that are no plain letter with an accent, and how those write them who have none. */
  private static final Map<String, String> PLAIN_LETTERS =
      Map.ofEntries(
          Map.entry("ß", "ss"),
          Map.entry("ø", "o"),
          Map.entry("æ", "ae"),
          Map.entry("œ", "oe"),
          Map.entry("ł", "l"),
          Map.entry("đ", "d"),
          Map.entry("ð", "d"),
          Map.entry("þ", "th"),
          Map.entry("ı", "i"),
          Map.entry("ς", "σ"));

  private SearchWords() {}

  /** In their order, as often as they stand there. */
  static List<String> of(String text) {
    return WORD.matcher(folded(text)).results().map(MatchResult::group).toList();
  }

  private static String folded(String text) {
    // 2¾ is two words, 2 and 3/4, and no 23/4.
    String parted = FRACTION.matcher(text).replaceAll(" $0");
    String small =
        Normalizer.normalize(parted, Normalizer.Form.NFKD)
            .toLowerCase(Locale.ROOT)
            .replace('\u2044', '/');
    String bare = MARK.matcher(small).replaceAll("");
    String joined = APOSTROPHE.matcher(bare).replaceAll("$1");
    return OTHER_LETTER.matcher(joined).replaceAll(letter -> PLAIN_LETTERS.get(letter.group()));
  }
}
