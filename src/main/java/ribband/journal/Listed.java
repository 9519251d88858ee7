package ribband.journal;

import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import ribband.measure.Name;
import ribband.measure.Reading;
import ribband.measure.Unreadable;
import ribband.problem.Nearest;

/** Names that must be among those listed, found whatever their case, spaces and hyphens. */
final class Listed {
  private final String list;
  private final Map<String, String> byFold = new LinkedHashMap<>();

  /**
   * @param list how a message calls the list: {@code phases of project.yaml}
   */
  Listed(String list, Collection<String> names) {
    this.list = list;
    names.forEach(name -> byFold.putIfAbsent(Name.fold(name), name));
  }

  /** Reads a name; leaves it as the list spells it. */
  Reading<String> reading() {
    return text ->
        find(text)
            .orElseThrow(
                () ->
                    new Unreadable(
                        "is not among the " + list,
                        Nearest.hint(text, byFold.values(), "none are listed; list it there")));
  }

  Optional<String> find(String name) {
    return Optional.ofNullable(byFold.get(Name.fold(name)));
  }

  Collection<String> names() {
    return byFold.values();
  }
}
