package ribband.prose;

import java.util.Arrays;
import ribband.problem.Place;

/** Turns an offset in a text into its place in the file. */
final class Lines {
  private final Body body;
  private final String text;
  private final int[] starts;

  /**
   * @param text the body's text with LF line ends
   */
  Lines(Body body, String text) {
    this.body = body;
    this.text = text;
    int[] found = new int[16];
    int count = 1;
    for (int at = text.indexOf('\n'); at >= 0; at = text.indexOf('\n', at + 1)) {
      found = count < found.length ? found : Arrays.copyOf(found, count * 2);
      found[count++] = at + 1;
    }
    starts = Arrays.copyOf(found, count);
  }

  /** Line and column of a 0-based offset. */
  Place at(int offset) {
    int line = lineOf(offset);
    int column = text.codePointCount(starts[line], Math.min(offset, text.length())) + 1;
    return new Place(body.file(), body.firstLine() + line, column);
  }

  /** The whole line of a 0-based offset. */
  Place lineAt(int offset) {
    return new Place(body.file(), body.firstLine() + lineOf(offset), 0);
  }

  private int lineOf(int offset) {
    int found = Arrays.binarySearch(starts, offset);
    return found >= 0 ? found : -found - 2;
  }
}
