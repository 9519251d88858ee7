package ribband.spoken;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;

/** Whole numbers in figures, and in English words from one to ninety-nine. */
final class NumberWords {
  private static final List<String> TO_NINETEEN =
      List.of(
          "one",
          "two",
          "three",
          "four",
          "five",
          "six",
          "seven",
          "eight",
          "nine",
          "ten",
          "eleven",
          "twelve",
          "thirteen",
          "fourteen",
          "fifteen",
          "sixteen",
          "seventeen",
          "eighteen",
          "nineteen");
  private static final List<String> TENS =
      List.of("twenty", "thirty", "forty", "fifty", "sixty", "seventy", "eighty", "ninety");
  private static final Map<String, Integer> ALL = all();

  /** Longer figures count nothing in a boat. */
  private static final int MOST_FIGURES = 5;

  private NumberWords() {}

  private static Map<String, Integer> all() {
    Map<String, Integer> all = new HashMap<>();
    for (int i = 0; i < TO_NINETEEN.size(); i++) {
      all.put(TO_NINETEEN.get(i), i + 1);
    }
    for (int ten = 0; ten < TENS.size(); ten++) {
      int value = (ten + 2) * 10;
      all.put(TENS.get(ten), value);
      for (int i = 0; i < 9; i++) {
        all.put(TENS.get(ten) + "-" + TO_NINETEEN.get(i), value + i + 1);
      }
    }
    return Map.copyOf(all);
  }

  /**
   * @param plain in small letters; {@code twenty-five} with its hyphen
   */
  static OptionalInt read(String plain) {
    if (plain.length() <= MOST_FIGURES && plain.matches("0|[1-9][0-9]*")) {
      return OptionalInt.of(Integer.parseInt(plain));
    }
    Integer value = ALL.get(plain);
    return value == null ? OptionalInt.empty() : OptionalInt.of(value);
  }
}
