package ribband.past;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import ribband.journal.Phase;
import ribband.journal.Project;
import ribband.measure.Name;
import ribband.measure.Unreadable;
import ribband.problem.Nearest;
import ribband.problem.OneLine;

/** Finds the phase that a cell names. */
final class PhaseNames {
  private static final Pattern SEVERAL = Pattern.compile("\\s*[,;/&+]\\s*|\\s+and\\s+");

  private final Map<String, String> byName = new LinkedHashMap<>();
  private final Map<String, String> asked;
  private final List<String> ids;
  private final List<String> names;
  private final boolean listed;

  /**
   * @param phases the journal's
   * @param asked ids by folded names, as the builder gave them
   */
  PhaseNames(Project project, List<Phase> phases, Map<String, String> asked) {
    this.listed = !project.phases().isEmpty();
    this.asked = asked;
    this.ids = phases.stream().map(Phase::id).toList();
    names =
        phases.stream().flatMap(phase -> Stream.of(phase.id(), phase.title())).distinct().toList();
    phases.forEach(phase -> byName.put(Name.fold(phase.id()), phase.id()));
    phases.forEach(phase -> byName.putIfAbsent(Name.fold(phase.title()), phase.id()));
  }

  /** The id; empty where the cell names none. */
  Optional<String> read(String text) throws Unreadable {
    String name = Name.fold(text);
    String given = asked.get(name);
    if (given != null) {
      return Optional.of(known(given));
    }
    if (name.isEmpty() || name.equals(Phase.UNSORTED.id())) {
      return Optional.empty();
    }
    String id = byName.get(name);
    if (id != null) {
      return Optional.of(id);
    }
    List<String> parts = new ArrayList<>(List.of(SEVERAL.split(text)));
    if (parts.size() > 1 && parts.stream().allMatch(part -> byName.containsKey(Name.fold(part)))) {
      throw new Unreadable("names several phases", "write a row for each, with its own hours");
    }
    return Optional.of(known(text));
  }

  private String known(String text) throws Unreadable {
    String id = byName.get(Name.fold(text));
    if (id != null) {
      return id;
    }
    if (listed) {
      throw new Unreadable(
          "is not among the phases of project.yaml",
          Nearest.to(text, names)
              .map(
                  near ->
                      "did you mean "
                          + OneLine.quote(near)
                          + "? Then say --phase "
                          + meant(text, byName.get(Name.fold(near))))
              .orElseGet(
                  () ->
                      Nearest.hint(text, ids, "") + "; or say --phase " + meant(text, ids.get(0))));
    }
    return Name.fold(Phase.readId(text.strip()));
  }

  private static String meant(String text, String id) {
    return OneLine.quote(text.strip() + "=" + id);
  }
}
