package ribband.cli;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import ribband.measure.Unreadable;
import ribband.problem.Nearest;

/** The word after {@code --format}, one of those that a command knows. */
final class FormatWord {
  private FormatWord() {}

  /**
   * Reads it.
   *
   * @param formats their names in small letters are the words
   * @throws Refusal where it is none of them
   */
  static <F extends Enum<F>> F read(String text, F[] formats) {
    List<String> words =
        Arrays.stream(formats).map(format -> format.name().toLowerCase(Locale.ROOT)).toList();
    int which = words.indexOf(text.strip().toLowerCase(Locale.ROOT));
    if (which < 0) {
      throw Refusal.wrongValue(
          "--format", text, new Unreadable("is no format", Nearest.hint(text, words, "")));
    }
    return formats[which];
  }
}
