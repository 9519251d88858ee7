package ribband.journal;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import ribband.journal.Node.Field;
import ribband.journal.Node.Mapping;
import ribband.measure.Reading;
import ribband.problem.Problems;

/** Reads values written by phase: {@code {planking: 2, fairing: 0:45}}. */
final class PhaseMap {
  private PhaseMap() {}

  static <T> Map<String, T> read(
      String key, Mapping mapping, Reading<T> reading, Listed phases, Problems problems) {
    Map<String, T> values = new LinkedHashMap<>();
    for (Field field : CutAtComma.passed(mapping, problems)) {
      Optional<String> phase = Values.read("phase", field.key(), phases.reading(), problems);
      Optional<T> value = Values.read(key, field.value(), reading, problems);
      if (phase.isPresent() && value.isPresent()) {
        values.put(phase.get(), value.get());
      }
    }
    return values;
  }
}
