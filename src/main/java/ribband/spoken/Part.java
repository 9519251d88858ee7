package ribband.spoken;

import java.util.List;
import java.util.Optional;

/**
 * A stretch of the line that may say one thing.
 *
 * @param line all of it
 * @param words of the stretch, what stands between parts included
 */
record Part(String line, List<Lexeme> words) {
  Part {
    words = List.copyOf(words);
  }

  int size() {
    return words.size();
  }

  Lexeme get(int at) {
    return words.get(at);
  }

  /** Whether the word at a place is one of these; no where there is no such place. */
  boolean is(int at, List<String> wanted) {
    return at >= 0 && at < words.size() && words.get(at).isIn(wanted);
  }

  boolean is(int at, String wanted) {
    return is(at, List.of(wanted));
  }

  boolean isMark(int at, Lexeme.Mark mark) {
    return at >= 0 && at < words.size() && words.get(at).mark() == mark;
  }

  Optional<Integer> whole(int at) {
    return at >= 0 && at < words.size() && words.get(at).whole().isPresent()
        ? Optional.of(words.get(at).whole().getAsInt())
        : Optional.empty();
  }

  /** As typed. */
  String typed(Lexeme word) {
    return line.substring(word.start(), word.end());
  }
}
