package ribband.journal;

import java.util.List;
import java.util.Objects;
import ribband.problem.Place;

/** A piece of YAML as it stands in the file: texts untyped, each with its place. */
sealed interface Node {
  Place place();

  /** A scalar, as written; an empty value is an empty text. */
  record Text(String value, Place place) implements Node {
    public Text {
      Objects.requireNonNull(place);
      value = value.strip();
    }

    boolean isEmpty() {
      return value.isEmpty();
    }
  }

  /** A sequence. */
  record Listing(List<Node> items, Place place) implements Node {
    public Listing {
      items = List.copyOf(items);
    }
  }

  /** A mapping, its fields in the order of the file. */
  record Mapping(List<Field> fields, Place place) implements Node {
    public Mapping {
      fields = List.copyOf(fields);
    }
  }

  /** One line of a mapping. */
  record Field(Text key, Node value) {}

  /** Whether nothing was written here. */
  default boolean isBlank() {
    return this instanceof Text text && text.isEmpty();
  }
}
