package ribband.journal;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import ribband.journal.Node.Field;
import ribband.journal.Node.Mapping;
import ribband.measure.Name;
import ribband.measure.Reading;
import ribband.problem.Problems;

/** Reads values written by phase: {@code {planking: 2, fairing: 0:45}}. */
final class PhaseMap {
  private PhaseMap() {}

  static <T> Map<String, T> read(
      String key, Mapping mapping, Reading<T> reading, Listed phases, Problems problems) {
    Map<String, T> values = new LinkedHashMap<>();
    for (Field field : mapping.fields()) {
      if (cutAtComma(field)) {
        problems.error(
            field.key().place(),
            "\""
                + field.key().value()
                + "\" stands where a phase belongs; inside braces a decimal"
                + " takes a point, as 2.75");
        continue;
      }
      Optional<String> phase = Values.read("phase", field.key(), phase(phases), problems);
      Optional<T> value = Values.read(key, field.value(), reading, problems);
      if (phase.isPresent() && value.isPresent()) {
        values.put(phase.get(), value.get());
      }
    }
    return values;
  }

  /** {@code {planking: 2,75}} comes out of YAML as planking: 2 and an empty 75. */
  private static boolean cutAtComma(Field field) {
    return field.value().isBlank() && field.key().value().matches("[0-9]+");
  }

  /** spec: phases that project.yaml does not list are errors, unless it lists none. */
  static Reading<String> phase(Listed phases) {
    return phases.names().isEmpty() ? text -> Name.fold(Readings.id(text)) : phases.reading();
  }
}
