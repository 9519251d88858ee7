package ribband.postcard;

import java.text.Normalizer;
import java.util.PrimitiveIterator;

/**
 * Makes words fit to be lettered in one line: composed, single-spaced, without what has no shape.
 */
final class PlainWords {
  /** Marks over or under one letter; more would climb out of their line. */
  private static final int MOST_MARKS = 2;

  /** More is on no card; it would only be measured. */
  private static final int MOST_CHARACTERS = 600;

  private PlainWords() {}

  static String of(String written) {
    StringBuilder plain = new StringBuilder();
    PrimitiveIterator.OfInt characters =
        Normalizer.normalize(written, Normalizer.Form.NFC).codePoints().iterator();
    int marks = 0;
    while (characters.hasNext() && plain.length() < MOST_CHARACTERS) {
      int character = characters.nextInt();
      marks = isMark(character) ? marks + 1 : 0;
      if (isBlank(character)) {
        space(plain);
      } else if (hasShape(character) && marks <= MOST_MARKS) {
        plain.appendCodePoint(character);
      }
    }
    return plain.toString().strip();
  }

  static boolean isMark(int character) {
    return switch (Character.getType(character)) {
      case Character.NON_SPACING_MARK, Character.ENCLOSING_MARK -> true;
      default -> false;
    };
  }

  private static void space(StringBuilder plain) {
    if (plain.length() > 0 && plain.charAt(plain.length() - 1) != ' ') {
      plain.append(' ');
    }
  }

  /** A no-break space is none of these: it stays. */
  private static boolean isBlank(int character) {
    return Character.isWhitespace(character) || Character.isISOControl(character);
  }

  /** The joiners have none, but shape what stands beside them. */
  private static boolean hasShape(int character) {
    return switch (Character.getType(character)) {
      case Character.FORMAT -> character == 0x200C || character == 0x200D;
      default -> true;
    };
  }
}
