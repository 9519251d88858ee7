package ribband.recap;

import java.util.Set;

/** Makes a name fit to be pasted anywhere: one line that steers nothing and hides nothing. */
final class PlainName {
  /** They join letters and signs of some scripts, and hide nothing. */
  private static final Set<Integer> JOINERS = Set.of(0x200C, 0x200D);

  private PlainName() {}

  /** The name in one line; empty where nothing of it can be seen. */
  static String of(String name) {
    StringBuilder line = new StringBuilder(name.length());
    name.codePoints()
        .filter(PlainName::isKept)
        .map(PlainName::spaced)
        .forEach(line::appendCodePoint);
    return line.toString().strip().replaceAll(" {2,}", " ");
  }

  private static boolean isKept(int c) {
    return switch (Character.getType(c)) {
      case Character.SURROGATE -> false;
      case Character.FORMAT -> JOINERS.contains(c);
      default -> true;
    };
  }

  private static int spaced(int c) {
    return switch (Character.getType(c)) {
      case Character.CONTROL,
          Character.SPACE_SEPARATOR,
          Character.LINE_SEPARATOR,
          Character.PARAGRAPH_SEPARATOR ->
          ' ';
      default -> c;
    };
  }
}
