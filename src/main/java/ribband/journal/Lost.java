package ribband.journal;

import java.util.Set;
import ribband.journal.Node.Field;
import ribband.journal.Node.Listing;
import ribband.journal.Node.Mapping;
import ribband.journal.Node.Text;
import ribband.measure.Name;
import ribband.problem.Problems;

/**
 * Warns where YAML cuts a builder's words: in {@code title: Plank #3 on} all from the {@code #} is
 * a comment.
 */
final class Lost {
  private static final Set<String> WORDS =
      Set.of("title", "lesson", "caption", "alt", "what", "name", "why", "item", "from");

  private Lost() {}

  /** Looks at every value of words in a tree whose places are of that source. */
  static void comments(Source source, Node node, Problems problems) {
    String[] lines = source.text().split("\n", -1);
    walk(lines, node, problems);
  }

  private static void walk(String[] lines, Node node, Problems problems) {
    if (node instanceof Mapping mapping) {
      for (Field field : mapping.fields()) {
        if (WORDS.contains(Name.fold(field.key().value()))) {
          words(lines, field.key().value(), field.value(), problems);
        }
        walk(lines, field.value(), problems);
      }
    } else if (node instanceof Listing listing) {
      listing.items().forEach(item -> walk(lines, item, problems));
    }
  }

  private static void words(String[] lines, String key, Node value, Problems problems) {
    if (value instanceof Listing listing) {
      listing.items().forEach(item -> words(lines, key, item, problems));
    } else if (value instanceof Text text && isCut(lines, text)) {
      problems.warning(
          text.place(),
          key
              + " ends before the #, which begins a comment; put quotes round the text if the rest"
              + " belongs to it");
    }
  }

  /** Follows a plain text over its lines to a comment mark; what stands in quotes is never cut. */
  private static boolean isCut(String[] lines, Text text) {
    int line = text.place().line() - 1;
    if (line >= lines.length) {
      return false;
    }
    int before =
        Math.min(text.place().column() - 1, lines[line].codePointCount(0, lines[line].length()));
    String rest = lines[line].substring(lines[line].offsetByCodePoints(0, before));
    if (!rest.isEmpty() && "\"'|>".indexOf(rest.charAt(0)) >= 0) {
      return false;
    }
    String value = text.value();
    for (int read = 0; ; ) {
      int mark = rest.startsWith("#") ? 0 : rest.indexOf(" #");
      String kept = (mark < 0 ? rest : rest.substring(0, mark)).strip();
      if (mark >= 0) {
        return value.substring(read).equals(kept);
      }
      if (!value.startsWith(kept, read) || ++line >= lines.length) {
        return false;
      }
      read = afterSpace(value, read + kept.length());
      rest = lines[line].strip();
      if (read == value.length() || rest.startsWith("#")) {
        return false;
      }
    }
  }

  private static int afterSpace(String value, int from) {
    int at = from;
    while (at < value.length() && Character.isWhitespace(value.charAt(at))) {
      at++;
    }
    return at;
  }
}
