package ribband.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * The words of {@code VISUAL}, else of {@code EDITOR}: they are parted by spaces, and what stands
 * in single or double quotes is one word, or part of one. Nothing else means anything: no
 * backslash, no dollar sign.
 */
final class EditorWords {
  private static final Pattern WORD = Pattern.compile("(?:[^\\s'\"]|'[^']*('|$)|\"[^\"]*(\"|$))+");
  private static final Pattern QUOTED = Pattern.compile("'([^']*)(?:'|$)|\"([^\"]*)(?:\"|$)");

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
    Matcher word = WORD.matcher(line);
    while (word.find()) {
      words.add(
          QUOTED
              .matcher(word.group())
              .replaceAll(
                  quoted ->
                      Matcher.quoteReplacement(
                          Optional.ofNullable(quoted.group(1)).orElse(quoted.group(2)))));
    }
    words.removeIf(String::isEmpty);
    return words;
  }
}
