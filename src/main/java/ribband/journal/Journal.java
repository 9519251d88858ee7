package ribband.journal;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

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

  /** The day all figures are as of: the last entry's. */
  public Optional<LocalDate> asOf() {
    return entries.isEmpty()
        ? Optional.empty()
        : Optional.of(entries.get(entries.size() - 1).date());
  }
}
