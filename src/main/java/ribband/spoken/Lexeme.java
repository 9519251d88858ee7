package ribband.spoken;

import java.util.List;
import java.util.Objects;
import java.util.OptionalInt;

/**
 * A word of the line, a name of several words, or what stands between parts.
 *
 * @param start where it begins in the line
 * @param end just behind it
 * @param plain in small letters, composed
 * @param whole its value where it is a whole number, in figures or words
 * @param name what the project calls by it; {@link Named#NOTHING} where it is no name
 */
record Lexeme(int start, int end, String plain, Mark mark, OptionalInt whole, Named name) {
  /** What it does to the line. */
  enum Mark {
    WORD,
    /** May stand inside a list, and between hours and minutes. */
    COMMA,
    /** {@code and}: may stand inside a list, a time or what money went for. */
    AND,
    /** {@code then}, {@code plus}: parts what stands on its own. */
    THEN,
    /** Ends a sentence: nothing goes on over it. */
    STOP
  }

  Lexeme {
    Objects.requireNonNull(plain);
    Objects.requireNonNull(mark);
    Objects.requireNonNull(whole);
    Objects.requireNonNull(name);
  }

  boolean is(String word) {
    return plain.equals(word);
  }

  boolean isIn(List<String> words) {
    return words.contains(plain);
  }

  boolean isWord() {
    return mark == Mark.WORD;
  }
}
