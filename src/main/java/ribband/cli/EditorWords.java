package ribband.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * The words of {@code VISUAL}, else of {@code EDITOR}: they are parted by spaces, and what stands
 * in single or double quotes is one word, or part of one. Nothing else means anything: no
 * backslash, no dollar sign.
 */
final class EditorWords {
  /** No quote is open. */
  private static final char NONE = 0;

  private EditorWords() {}

  /** The program and its arguments; empty where neither variable names one. */
  static Optional<List<String>> of(Map<String, String> environment) {
    return Stream.of("VISUAL", "EDITOR")
        .map(name -> words(environment.getOrDefault(name, "")))
        .filter(words -> !words.isEmpty())
        .findFirst();
  }

  private static List<String> words(String line) {
    List<String> words = new ArrayList<>();
    StringBuilder word = new StringBuilder();
    char quote = NONE;
    for (char letter : line.toCharArray()) {
      if (letter == quote) {
        quote = NONE;
      } else if (quote == NONE && (letter == '\'' || letter == '"')) {
        quote = letter;
      } else if (quote == NONE && Character.isWhitespace(letter)) {
        words.add(word.toString());
        word.setLength(0);
      } else {
        word.append(letter);
      }
    }
    words.add(word.toString());
    words.removeIf(String::isEmpty);
    return words;
  }
}
