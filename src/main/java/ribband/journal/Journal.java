package ribband.journal;

import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.Stream;
import ribband.measure.Name;
import ribband.measure.Percent;

/**
 * A whole journal without an error in it.
 *
 * @param phases the project's, or where it lists none those of the entries; never {@code unsorted}
 * @param entries by date, those of one day by path
 */
public record Journal(
    JournalFolder folder, Project project, List<Phase> phases, List<Entry> entries) {
  public Journal {
    phases = List.copyOf(phases);
    entries = List.copyOf(entries);
  }

  /**
   * A phase in words.
   *
   * @param id may be spelled as a job of an entry spells it
   * @return the id itself where no phase is called so
   */
  public String phaseTitle(String id) {
    return phase(id::equals)
        .or(() -> phase(each -> Name.fold(each).equals(Name.fold(id))))
        .map(Phase::title)
        .orElse(id);
  }

  private Optional<Phase> phase(Predicate<String> called) {
    return Stream.concat(phases.stream(), Stream.of(Phase.UNSORTED))
        .filter(phase -> called.test(phase.id()))
        .findFirst();
  }

  /**
   * The last {@code complete} of each phase, up to and with a day.
   *
   * @return by folded id
   */
  public Map<String, Percent> complete(LocalDate day) {
    Map<String, Percent> complete = new HashMap<>();
    entries.stream()
        .filter(entry -> !entry.date().isAfter(day))
        .forEach(
            entry ->
                entry.complete().forEach((phase, share) -> complete.put(Name.fold(phase), share)));
    return complete;
  }

  /** The day all figures are as of: the last entry's. */
  public Optional<LocalDate> asOf() {
    return entries.isEmpty()
        ? Optional.empty()
        : Optional.of(entries.get(entries.size() - 1).date());
  }
}
