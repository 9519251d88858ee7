package ribband.cli;

import java.io.PrintWriter;
import ribband.problem.OneLine;

/** Prints a sentence too long for one line of a terminal: indented, and broken between words. */
final class Paragraph {
  private static final int WIDEST = 80;
  private static final String FIRST = "  ";
  private static final String LATER = "    ";

  private Paragraph() {}

  static void print(String text, PrintWriter out) {
    StringBuilder line = new StringBuilder(FIRST);
    boolean bare = true;
    for (String word : OneLine.of(text).split(" ")) {
      if (!bare && line.length() + 1 + word.length() > WIDEST) {
        out.println(line);
        line = new StringBuilder(LATER);
        bare = true;
      }
      line.append(bare ? "" : " ").append(word);
      bare = false;
    }
    out.println(line);
  }
}
