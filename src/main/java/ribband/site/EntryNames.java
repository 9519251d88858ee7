package ribband.site;

import java.util.HashMap;
import java.util.Map;
import ribband.album.Album;
import ribband.album.Leaf;
import ribband.journal.Entry;
import ribband.measure.Saying;

/** What entries go by in lists, where their day stands beside them. */
final class EntryNames {
  private static final int FEW_WORDS = 60;
  private static final String ENDS = ".!?…";

  private final Map<String, String> byFile = new HashMap<>();

  EntryNames(Album album) {
    album.shown().forEach(leaf -> byFile.put(leaf.entry().file(), bare(of(leaf))));
  }

  /** Whether its builder gave it a title; else its day stands in. */
  static boolean isTitled(Entry entry) {
    return !entry.title().equals(Saying.day(entry.date()));
  }

  /**
   * Its title; else its first words, so that no day stands there twice; its day where it has none.
   */
  static String of(Leaf leaf) {
    return isTitled(leaf.entry()) || leaf.opening().isEmpty()
        ? leaf.entry().title()
        : firstWords(leaf.opening());
  }

  private static String bare(String name) {
    return name.endsWith(".") ? name.substring(0, name.length() - 1) : name;
  }

  /** The same of an entry that may be shown, for tables: without a full stop. */
  String of(Entry entry) {
    return byFile.getOrDefault(entry.file(), entry.title());
  }

  /** The first sentence; as many whole words as go into a line where that is longer. */
  static String firstWords(String opening) {
    int end = 0;
    while (end < opening.length() && !endsSentence(opening, end)) {
      end++;
    }
    String first = opening.substring(0, Math.min(end + 1, opening.length()));
    if (first.length() <= FEW_WORDS) {
      return first;
    }
    int space = first.lastIndexOf(' ', FEW_WORDS);
    int cut = space > 0 ? space : first.offsetByCodePoints(0, first.codePointCount(0, FEW_WORDS));
    return first.substring(0, cut).replaceFirst("[,;:]$", "") + "…";
  }

  private static boolean endsSentence(String text, int at) {
    boolean last = at + 1 == text.length() || text.charAt(at + 1) == ' ';
    return last && ENDS.indexOf(text.charAt(at)) >= 0;
  }
}
