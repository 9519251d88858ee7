package ribband.desk;

import java.util.List;
import java.util.Map;
import ribband.measure.Ordered;

/**
 * What was said of a night, as an entry has it.
 *
 * @param hours lines of YAML; empty where none were said
 * @param cost lines of YAML, those of things bought among them
 * @param pieces by name of their kind, each as YAML
 * @param text lines of Markdown
 */
record Said(List<String> hours, List<String> cost, Map<String, String> pieces, List<String> text) {
  static final Said NOTHING = new Said(List.of(), List.of(), Map.of(), List.of());

  Said {
    hours = List.copyOf(hours);
    cost = List.copyOf(cost);
    pieces = Ordered.copy(pieces);
    text = List.copyOf(text);
  }
}
