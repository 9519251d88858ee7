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
          warn(lines, field, problems);
        }
        walk(lines, field.value(), problems);
      }
    } else if (node instanceof Listing listing) {
      listing.items().forEach(item -> walk(lines, item, problems));
    }
  }

  private static void warn(String[] lines, Field field, Problems problems) {
    if (!(field.value() instanceof Text text) || text.place().line() > lines.length) {
      return;
    }
    String line = lines[text.place().line() - 1];
    int start =
        line.offsetByCodePoints(
            0, Math.min(text.place().column() - 1, line.codePointCount(0, line.length())));
    String rest = line.substring(start);
    boolean plain = !rest.isEmpty() && "\"'|>".indexOf(rest.charAt(0)) < 0;
    int mark = rest.indexOf(" #");
    boolean cut = plain && mark >= 0 && text.value().equals(rest.substring(0, mark).strip());
    if (cut || plain && rest.startsWith("#")) {
      problems.warning(
          text.place(),
          field.key().value()
              + " ends before the #, which begins a comment; put quotes round the text if the rest"
              + " belongs to it");
    }
  }
}
