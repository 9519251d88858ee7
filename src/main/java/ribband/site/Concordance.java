package ribband.site;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;

/** Which words stand in which entries; filled entry by entry, in order. */
final class Concordance {
  private static final String DIGITS =
      "ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789-_";
  private static final int HALF = 32;

  private final Map<String, List<Integer>> entries = new TreeMap<>();

  /**
   * @param entry its number from 0, greater than all before
   */
  void add(int entry, List<String> words) {
    for (String word : new LinkedHashSet<>(words)) {
      entries.computeIfAbsent(word, none -> new ArrayList<>()).add(entry);
    }
  }

  Collection<String> words() {
    return entries.keySet();
  }

  /**
   * For each word where it stands, parted by spaces: of each entry how many lie between it and the
   * one before. A gap is written in digits of five bits, the greatest first; all but its last digit
   * come from the second half of the digits.
   */
  String packed(Collection<String> words) {
    return words.stream()
        .map(word -> gaps(entries.getOrDefault(word, List.of())))
        .collect(Collectors.joining(" "));
  }

  private static String gaps(List<Integer> numbers) {
    StringBuilder gaps = new StringBuilder();
    int next = 0;
    for (int number : numbers) {
      int gap = number - next;
      int at = gaps.length();
      gaps.append(DIGITS.charAt(gap % HALF));
      for (int rest = gap / HALF; rest > 0; rest /= HALF) {
        gaps.insert(at, DIGITS.charAt(HALF + rest % HALF));
      }
      next = number + 1;
    }
    return gaps.toString();
  }
}
