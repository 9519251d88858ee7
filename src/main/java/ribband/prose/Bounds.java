package ribband.prose;

import com.vladsch.flexmark.util.ast.Node;
import java.util.Optional;
import java.util.function.IntPredicate;

/**
 * The bounds within which a builder's text stays and Markdown is read in time: looked at in one
 * pass before parsing, and once over the parsed tree.
 */
final class Bounds {
  private static final int LONGEST = 1 << 20;
  private static final int BACKSLASHES = 30;
  private static final int MARKS = 200;
  private static final int BRACKETS = 60;
  private static final int BRACKETS_OF_A_PARAGRAPH = 2000;
  private static final int LEVELS = 60;
  private static final int TREE_LEVELS = 100;

  private Bounds() {}

  /**
   * Where a text leaves the bounds.
   *
   * @param offset 0-based
   */
  record Breach(int offset, String sentence) {}

  /** The first breach in a text that is not parsed yet. */
  static Optional<Breach> in(String text) {
    if (text.length() > LONGEST) {
      return Optional.of(
          new Breach(0, "the text is longer than 1 MiB; split the entry into several"));
    }
    return endlessRun(text).or(() -> tooDeepLine(text)).or(() -> crowdedParagraph(text));
  }

  /** The first node of a tree that lies too deep. */
  static Optional<Breach> in(Node root) {
    int level = 0;
    for (Node node = root; node != null; ) {
      if (level > TREE_LEVELS) {
        return Optional.of(tooDeep(node.getStartOffset()));
      }
      if (node.getFirstChild() != null) {
        node = node.getFirstChild();
        level++;
        continue;
      }
      while (node != root && node.getNext() == null) {
        node = node.getParent();
        level--;
      }
      node = node == root ? null : node.getNext();
    }
    return Optional.empty();
  }

  static Breach tooDeep(int offset) {
    return new Breach(
        offset,
        "the text is nested too deep here; take out some quote or list marks, stars or brackets");
  }

  private static Optional<Breach> endlessRun(String text) {
    for (int start = 0; start < text.length(); ) {
      char mark = text.charAt(start);
      int end = start + 1;
      while (end < text.length() && text.charAt(end) == mark) {
        end++;
      }
      if (end - start > longestRun(mark)) {
        return Optional.of(
            new Breach(
                start,
                (end - start)
                    + " times \""
                    + mark
                    + "\" in a row; at most "
                    + longestRun(mark)
                    + " are read"));
      }
      start = end;
    }
    return Optional.empty();
  }

  /** Each bracket of a paragraph may belong to any before it: reading them takes square time. */
  private static Optional<Breach> crowdedParagraph(String text) {
    int brackets = 0;
    boolean blank = true;
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      if (c == '\n') {
        brackets = blank ? 0 : brackets;
        blank = true;
      } else {
        blank &= c == ' ' || c == '\t';
        brackets += c == '[' ? 1 : 0;
      }
      if (brackets > BRACKETS_OF_A_PARAGRAPH) {
        return Optional.of(
            new Breach(
                i,
                "more than "
                    + BRACKETS_OF_A_PARAGRAPH
                    + " times \"[\" in one paragraph; part it by empty lines"));
      }
    }
    return Optional.empty();
  }

  private static int longestRun(char mark) {
    return switch (mark) {
      case '\\' -> BACKSLASHES;
      case '[', ']', '!', '(', ')', '<' -> BRACKETS;
      case '`', '*', '_', '~' -> MARKS;
      default -> Integer.MAX_VALUE;
    };
  }

  /** Quote and list marks that stand one behind the other at a line's beginning. */
  private static Optional<Breach> tooDeepLine(String text) {
    for (int line = 0; line >= 0 && line < text.length(); line = text.indexOf('\n', line) + 1) {
      int levels = 0;
      int at = line;
      while (at < text.length()) {
        int behind = behindMark(text, at);
        if (behind == at) {
          break;
        }
        levels += Character.isWhitespace(text.charAt(at)) ? 0 : 1;
        at = behind;
      }
      if (levels > LEVELS) {
        return Optional.of(tooDeep(line));
      }
      if (text.indexOf('\n', line) < 0) {
        break;
      }
    }
    return Optional.empty();
  }

  private static int behindMark(String text, int at) {
    char c = text.charAt(at);
    if (c == '>' || c == ' ' || c == '\t') {
      return at + 1;
    }
    if (c == '-' || c == '*' || c == '+') {
      return isAt(text, at + 1, Bounds::isGap) ? at + 2 : at;
    }
    int digits = at;
    while (isAt(text, digits, d -> d >= '0' && d <= '9')) {
      digits++;
    }
    boolean numbered =
        digits > at
            && isAt(text, digits, d -> d == '.' || d == ')')
            && isAt(text, digits + 1, Bounds::isGap);
    return numbered ? digits + 2 : at;
  }

  private static boolean isGap(int c) {
    return c == ' ' || c == '\t';
  }

  private static boolean isAt(String text, int at, IntPredicate wanted) {
    return at < text.length() && wanted.test(text.charAt(at));
  }
}
