package ribband.journal;

import ribband.measure.Name;

/**
 * A pattern for file names: {@code *} for any letters, {@code ?} for one, capitals like small
 * letters. Takes steps in line with both lengths multiplied, whatever the pattern.
 */
final class Wildcard {
  private final int[] pattern;

  Wildcard(String pattern) {
    this.pattern = points(pattern);
  }

  static boolean isPattern(String name) {
    return name.indexOf('*') >= 0 || name.indexOf('?') >= 0;
  }

  boolean matches(String fileName) {
    int[] name = points(fileName);
    int at = 0;
    int star = -1;
    int resume = 0;
    for (int i = 0; i < name.length; ) {
      if (at < pattern.length && pattern[at] == '*') {
        star = at++;
        resume = i;
      } else if (at < pattern.length && (pattern[at] == '?' || pattern[at] == name[i])) {
        at++;
        i++;
      } else if (star >= 0) {
        // The last star takes one letter more, and the rest of the pattern tries again.
        at = star + 1;
        i = ++resume;
      } else {
        return false;
      }
    }
    while (at < pattern.length && pattern[at] == '*') {
      at++;
    }
    return at == pattern.length;
  }

  private static int[] points(String text) {
    return Name.plain(text).codePoints().toArray();
  }
}
