package ribband.problem;

/** Lines of words for a terminal, none longer than 80 characters. */
public final class Paragraph {
  private static final int WIDTH = 80;

  private Paragraph() {}

  /**
   * Breaks words into lines.
   *
   * @param head stands before the first line
   * @param indent before the others, in spaces
   * @return with a line end
   */
  public static String of(String head, int indent, String words) {
    StringBuilder text = new StringBuilder();
    StringBuilder line = new StringBuilder(head);
    boolean isFresh = true;
    for (String word : OneLine.of(words).split(" ")) {
      String left = word;
      if (!isFresh && length(line) + 1 + length(left) > WIDTH) {
        text.append(line).append('\n');
        line.setLength(0);
        line.append(" ".repeat(indent));
        isFresh = true;
      }
      line.append(isFresh ? "" : " ");
      while (length(line) + length(left) > WIDTH) {
        int cut = left.offsetByCodePoints(0, WIDTH - length(line));
        text.append(line).append(left, 0, cut).append('\n');
        line.setLength(0);
        line.append(" ".repeat(indent));
        left = left.substring(cut);
      }
      line.append(left);
      isFresh = false;
    }
    return text.append(line).append('\n').toString();
  }

  private static int length(CharSequence text) {
    return Character.codePointCount(text, 0, text.length());
  }
}
