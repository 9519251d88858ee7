package ribband.desk;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import ribband.journal.Entry;
import ribband.journal.Phase;
import ribband.measure.Hours;

/** Finds what somebody most likely went on with. */
final class WorkedLast {
  private WorkedLast() {}

  /**
   * The phase with the most hours of the latest entry that has hours in one; the first among
   * equals.
   *
   * @param entries by date
   * @param night entries after it do not count
   */
  static Optional<String> phase(List<Entry> entries, LocalDate night) {
    return entries.stream()
        .filter(entry -> !entry.date().isAfter(night))
        .flatMap(entry -> phase(entry).stream())
        .reduce((before, last) -> last);
  }

  private static Optional<String> phase(Entry entry) {
    Optional<Map.Entry<String, Hours>> most = Optional.empty();
    for (Map.Entry<String, Hours> hours : entry.hours().entrySet()) {
      boolean isPhase = !hours.getKey().equals(Phase.UNSORTED.id());
      if (isPhase && most.filter(m -> m.getValue().compareTo(hours.getValue()) >= 0).isEmpty()) {
        most = Optional.of(hours);
      }
    }
    return most.map(Map.Entry::getKey);
  }
}
