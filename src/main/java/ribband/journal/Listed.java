package ribband.journal;

import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import ribband.measure.Name;
import ribband.measure.Reading;
import ribband.measure.Unreadable;
import ribband.problem.Nearest;

/** Names that must be among those listed, found whatever their case, spaces and hyphens. */
final class Listed {
  private final Map<String, String> byFold = new LinkedHashMap<>();
  private final Reading<String> reading;

  /**
   * @param list how a message calls the list: {@code phases of project.yaml}
   */
  Listed(String list, Collection<String> names) {
    names.forEach(name -> byFold.putIfAbsent(Name.fold(name), name));
    this.reading =
        text ->
            Optional.ofNullable(byFold.get(Name.fold(text)))
                .orElseThrow(
                    () ->
                        new Unreadable(
                            "is not among the " + list,
                            Nearest.hint(text, names(), "list it there, none are so far")));
  }

  /** No list to keep to: takes every name that the reading does. */
  Listed(Reading<String> reading) {
    this.reading = reading;
  }

  /** Reads a name; leaves it as the list spells it. */
  Reading<String> reading() {
    return reading;
  }

  List<String> names() {
    return List.copyOf(byFold.values());
  }
}
