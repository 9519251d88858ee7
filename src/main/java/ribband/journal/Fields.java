package ribband.journal;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.BiConsumer;
import ribband.journal.Node.Field;
import ribband.journal.Node.Listing;
import ribband.journal.Node.Mapping;
import ribband.journal.Node.Text;
import ribband.measure.Name;
import ribband.measure.Reading;
import ribband.problem.Nearest;
import ribband.problem.OneLine;
import ribband.problem.Place;
import ribband.problem.Problems;

/**
 * One mapping being read key by key; remembers which keys were asked for, so that {@link #close}
 * can tell the others as unknown. Short-lived, for one thread.
 */
final class Fields {
  private final Mapping mapping;
  private final Problems problems;
  private final Map<String, Field> byName = new LinkedHashMap<>();

  /** Keys asked for, by their folded names. */
  private final Map<String, String> known = new LinkedHashMap<>();

  Fields(Mapping mapping, Problems problems) {
    this.mapping = mapping;
    this.problems = problems;
    mapping.fields().forEach(field -> byName.put(Name.fold(field.key().value()), field));
  }

  Place place() {
    return mapping.place();
  }

  /** Whether the key is there with something written behind it. */
  boolean has(String key) {
    return find(key).isPresent();
  }

  /** Where the key stands, or where the mapping begins. */
  Place placeOf(String key) {
    Field field = byName.get(Name.fold(key));
    return field == null ? mapping.place() : field.key().place();
  }

  /** Where the value of the key stands, or where the mapping begins. */
  Place placeOfValue(String key) {
    Field field = byName.get(Name.fold(key));
    return field == null ? mapping.place() : field.value().place();
  }

  /** What stands behind the key; empty where it is missing or nothing is written. */
  Optional<Node> find(String key) {
    known.put(Name.fold(key), key);
    return Optional.ofNullable(byName.get(Name.fold(key)))
        .map(Field::value)
        .filter(node -> !node.isBlank());
  }

  /** A single value, read by what the key means. */
  <T> Optional<T> value(String key, Reading<T> reading) {
    return find(key).flatMap(node -> Values.read(key, node, reading, problems));
  }

  /** A single text for one line of print; line ends in it count as spaces. */
  Optional<String> text(String key) {
    return value(key, text -> text.replaceAll("\\s+", " "));
  }

  /** A single text with its place. */
  Optional<Text> located(String key) {
    return find(key).flatMap(node -> Values.text(key, node, problems));
  }

  /** How many items or names stand behind the key. */
  int count(String key) {
    return find(key)
        .map(node -> node instanceof Mapping inner ? inner.fields().size() : items(key).size())
        .orElse(0);
  }

  /** The items of a list; one value alone counts as a list of one. */
  List<Node> items(String key) {
    return find(key)
        .map(node -> node instanceof Listing listing ? listing.items() : List.of(node))
        .orElse(List.of())
        .stream()
        .filter(node -> !node.isBlank())
        .toList();
  }

  /** The texts of a list, each read by what the key means. */
  <T> List<T> values(String key, Reading<T> reading) {
    List<T> values = new ArrayList<>();
    for (Node item : items(key)) {
      Values.read(key, item, reading, problems).ifPresent(values::add);
    }
    return List.copyOf(values);
  }

  /** Each mapping of a list, read and closed. */
  void eachMapping(String key, BiConsumer<Fields, Place> reader) {
    for (Node item : items(key)) {
      if (item instanceof Mapping inner) {
        Fields fields = new Fields(inner, problems);
        reader.accept(fields, inner.place());
        fields.close();
      } else {
        problems.error(
            item.place(),
            key + " holds a bare value; write its keys, as - {...} or in lines below");
      }
    }
  }

  /** Each field of a mapping whose keys are names the builder gave. */
  void eachNamed(String key, BiConsumer<Text, Node> reader) {
    find(key)
        .ifPresent(
            node -> {
              if (node instanceof Mapping inner) {
                CutAtComma.passed(inner, problems)
                    .forEach(field -> reader.accept(field.key(), field.value()));
              } else {
                problems.error(
                    node.place(),
                    key + " has no names with values; write them as " + key + ": {name: value}");
              }
            });
  }

  /** A nested mapping; empty where the key is missing. */
  Optional<Fields> mapping(String key) {
    return find(key).flatMap(node -> Values.mapping(key, node, problems));
  }

  /** Tells every key that nobody asked for. */
  void close() {
    for (Field field : mapping.fields()) {
      String name = field.key().value();
      if (!known.containsKey(Name.fold(name))) {
        problems.error(
            field.key().place(), "unknown key " + OneLine.quote(name) + "; " + hint(field));
      }
    }
  }

  private String hint(Field field) {
    String name = field.key().value();
    // A flow mapping cut at a comma leaves a key with nothing behind it.
    if (field.value().isBlank() && name.matches("[0-9][0-9.]*")) {
      return "inside braces a comma parts two keys, so write an amount without one, as 1250.00";
    }
    if (field.value().isBlank() && Nearest.to(name, known.values()).isEmpty()) {
      return "put quotes round a text that holds a comma";
    }
    return Nearest.hint(name, known.values(), "there are no keys here");
  }
}
