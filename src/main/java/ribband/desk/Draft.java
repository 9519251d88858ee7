package ribband.desk;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import ribband.measure.Name;
import ribband.measure.Saying;
import ribband.problem.OneLine;

/**
 * An entry's text as it lies before the builder: keys with what is known, and in comments what may
 * be wanted. Each comment can be made a key by taking its mark away.
 *
 * @param title empty where none is given
 * @param phase id of the phase of all that names no other; empty where none is known
 * @param phases ids of all
 * @param said what was said of the night
 * @param photos names of files in the entry's own folder, in order
 */
record Draft(
    Optional<String> title,
    Optional<String> phase,
    List<String> phases,
    Said said,
    Reminders reminders,
    List<String> photos) {
  /** Where comments begin. */
  private static final int MARGIN = 31;

  /** Whoever keeps a list longer than this looks it up elsewhere. */
  private static final int MOST_PHASES = 24;

  Draft {
    phases = List.copyOf(phases);
    photos = List.copyOf(photos);
  }

  /** Lines with their ends. */
  String text() {
    List<String> lines = new ArrayList<>();
    lines.add("---");
    lines.add(key("title", title.map(Yaml::text)));
    lines.add(beside(key("phase", phase.map(Yaml::text)), othersInWords()));
    if (said.hours().isEmpty()) {
      lines.add(beside("hours:", "2:45" + byPhase()));
    }
    lines.addAll(said.hours());
    lines.addAll(said.cost());
    lines.addAll(named("pieces", " ", said.pieces(), reminders.pieces()));
    lines.addAll(named("done", " - ", Map.of(), reminders.jobs()));
    reminders.live().stream()
        .limit(Reminders.MOST)
        .forEach(live -> lines.add("# " + comment(live)));
    if (!photos.isEmpty()) {
      lines.add("photos:");
      photos.forEach(
          photo -> {
            lines.add("  - file: " + Yaml.text(photo));
            lines.add("    caption:");
          });
    }
    lines.add("---");
    lines.add("");
    // Each on its own, so that no two of them make a table or a heading.
    if (!said.text().isEmpty()) {
      lines.add(String.join("\n\n", said.text()));
    }
    return String.join("\n", lines) + "\n";
  }

  private static String key(String name, Optional<String> value) {
    return value.map(words -> name + ": " + words).orElse(name + ":");
  }

  private String othersInWords() {
    List<String> others = others();
    if (others.isEmpty()) {
      return phase.isPresent() ? "" : "the part of the build, as planking";
    }
    List<String> shown = others.subList(0, Math.min(MOST_PHASES, others.size()));
    int more = others.size() - shown.size();
    return (phase.isPresent() ? "or " : "one of ")
        + String.join(", ", shown)
        + (more == 0 ? "" : " and " + Saying.count(more) + " more");
  }

  private List<String> others() {
    return phases.stream()
        .filter(id -> phase.map(Name::fold).filter(Name.fold(id)::equals).isEmpty())
        .toList();
  }

  /** An example that is right as it stands. */
  private String byPhase() {
    List<String> two = Stream.concat(phase.stream(), others().stream()).limit(2).toList();
    return two.size() < 2
        ? ""
        : ", or by phase {" + Yaml.text(two.get(0)) + ": 2, " + Yaml.text(two.get(1)) + ": 0:45}";
  }

  /**
   * A key over names, in which those that are said stand and the others are comments.
   *
   * @param mark between the indent and a name
   */
  private static List<String> named(
      String key, String mark, Map<String, String> said, Map<String, String> reminders) {
    List<String> lines = new ArrayList<>();
    Map<String, String> others = new LinkedHashMap<>(reminders);
    if (said.isEmpty() && others.isEmpty()) {
      return lines;
    }
    lines.add((said.isEmpty() ? "# " : "") + key + ":");
    said.forEach(
        (name, value) ->
            lines.add(
                beside(
                    "  " + Yaml.text(name) + ": " + value,
                    Optional.ofNullable(others.remove(name)).orElse(""))));
    String indent = said.isEmpty() ? "#  " + mark : "  #" + mark;
    String end = mark.isBlank() ? ":" : "";
    others.entrySet().stream()
        .limit(Reminders.MOST)
        .forEach(
            other -> lines.add(beside(indent + Yaml.text(other.getKey()) + end, other.getValue())));
    if (others.size() > Reminders.MOST) {
      int more = others.size() - Reminders.MOST;
      lines.add("# and " + Saying.count(more) + " more: ribband ahead");
    }
    return lines;
  }

  static String beside(String key, String comment) {
    if (comment.isEmpty()) {
      return key;
    }
    int gap = MARGIN - key.codePointCount(0, key.length());
    return key + " ".repeat(Math.max(1, gap)) + "# " + comment(comment);
  }

  /** A comment ends with its line, whatever a name holds. */
  private static String comment(String words) {
    return OneLine.of(Yaml.line(words));
  }
}
