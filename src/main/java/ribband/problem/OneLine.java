package ribband.problem;

/** Keeps text that comes from outside on one line and unable to steer a terminal. */
public final class OneLine {
  private static final int LONGEST = 60;

  private OneLine() {}

  /** The text with every control and direction character shown as {@code \}{@code uXXXX}. */
  public static String of(String text) {
    StringBuilder line = new StringBuilder(text.length());
    text.codePoints()
        .forEach(
            c -> {
              if (isUnprintable(c)) {
                line.append('\\').append('u').append(hex(c));
              } else {
                line.appendCodePoint(c);
              }
            });
    return line.toString();
  }

  /** What the builder wrote, in quotes, cut after 60 characters. */
  public static String quote(String text) {
    return '"' + cut(text) + '"';
  }

  /** The text, cut after 60 characters. */
  public static String cut(String text) {
    int[] points = text.codePoints().limit(LONGEST + 1L).toArray();
    return points.length <= LONGEST ? text : new String(points, 0, LONGEST) + "...";
  }

  private static boolean isUnprintable(int c) {
    int type = Character.getType(c);
    return type == Character.CONTROL
        || type == Character.FORMAT
        || type == Character.LINE_SEPARATOR
        || type == Character.PARAGRAPH_SEPARATOR
        || type == Character.SURROGATE;
  }

  private static String hex(int c) {
    String digits = Integer.toHexString(c);
    return "0".repeat(Math.max(0, 4 - digits.length())) + digits;
  }
}
