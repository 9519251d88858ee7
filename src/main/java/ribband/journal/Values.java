package ribband.journal;

import java.util.Optional;
import ribband.journal.Node.Listing;
import ribband.journal.Node.Mapping;
import ribband.journal.Node.Text;
import ribband.measure.Reading;
import ribband.measure.Unreadable;
import ribband.problem.OneLine;
import ribband.problem.Problems;

/** Reads single nodes: the one place where a text becomes a value or a problem. */
final class Values {
  private Values() {}

  /** The value of a text node; a list or a mapping in its place is a problem. */
  static <T> Optional<T> read(String key, Node node, Reading<T> reading, Problems problems) {
    return text(key, node, problems)
        .flatMap(
            text -> {
              try {
                return Optional.of(reading.read(text.value()));
              } catch (Unreadable e) {
                problems.error(text.place(), told(key, text, e));
                return Optional.empty();
              }
            });
  }

  /** The sentence for a text that cannot be read: {@code hours "2;45" is not ...; write ...}. */
  static String told(String key, Text text, Unreadable e) {
    String subject = OneLine.cut(key);
    return text.isEmpty()
        ? subject + " has nothing written behind it; " + e.cure()
        : subject + " " + OneLine.quote(text.value()) + " " + e.wrong() + "; " + e.cure();
  }

  static Optional<Text> text(String key, Node node, Problems problems) {
    if (node instanceof Text text) {
      return Optional.of(text);
    }
    String found = node instanceof Listing ? "a list" : "a set of keys";
    problems.error(
        node.place(),
        OneLine.cut(key)
            + " holds "
            + found
            + "; write one value, and quotes round a text with brackets");
    return Optional.empty();
  }

  static Optional<Fields> mapping(String key, Node node, Problems problems) {
    if (node instanceof Mapping inner) {
      return Optional.of(new Fields(inner, problems));
    }
    problems.error(
        node.place(),
        OneLine.cut(key) + " has no keys of its own; write them below it, indented by two spaces");
    return Optional.empty();
  }
}
