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
  private static final String ENDS = ".!?…。";
  private static final String CUT = "…";

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

  /** What its text goes on with after its name, where that is its first words. */
  static String afterName(Leaf leaf) {
    String opening = leaf.opening();
    if (isTitled(leaf.entry())) {
      return opening;
    }
    String rest = opening.substring(end(opening)).strip();
    return of(leaf).endsWith(CUT) && !rest.isEmpty() ? CUT + rest : rest;
  }

  private static String firstWords(String opening) {
    int end = end(opening);
    String first = opening.substring(0, end);
    boolean isWhole = end == opening.length() || endsSentence(opening, end - 1);
    return isWhole ? first : first.replaceFirst("[,;:]$", "") + CUT;
  }

  /**
   * The end of the first sentence; of as many whole words as go into a line where that is longer.
   */
  private static int end(String opening) {
    int end = 0;
    while (end < opening.length() && !endsSentence(opening, end)) {
      end++;
    }
    if (end <= FEW_WORDS) {
      return Math.min(end + 1, opening.length());
    }
    int space = opening.lastIndexOf(' ', FEW_WORDS);
    return space > 0
        ? space
        : FEW_WORDS - (Character.isLowSurrogate(opening.charAt(FEW_WORDS)) ? 1 : 0);
  }

  private static boolean endsSentence(String text, int at) {
    boolean last = at + 1 == text.length() || text.charAt(at + 1) == ' ' || text.charAt(at) == '。';
    return last && ENDS.indexOf(text.charAt(at)) >= 0;
  }
}
