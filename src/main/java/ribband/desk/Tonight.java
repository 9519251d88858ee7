package ribband.desk;

import java.io.IOException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import ribband.journal.Journal;
import ribband.journal.Phase;

/**
 * A night's entry, to be written down.
 *
 * @param journal which may have errors: what is known of it is used
 * @param night its date
 * @param now for what is still soft
 * @param title empty where none is given
 */
public record Tonight(Journal journal, LocalDate night, Instant now, Optional<String> title) {

  /** The paths of the entries that the night has already, in order. */
  public List<String> before() {
    return journal.entries().stream()
        .filter(entry -> entry.date().equals(night))
        .map(entry -> entry.file())
        .toList();
  }

  /**
   * Writes the entry's file, whole or not at all, under a name that is free.
   *
   * @return the file
   * @throws IOException where the disk fails, with a message that names what it failed on
   */
  public Path write() throws IOException {
    Optional<String> phase = WorkedLast.phase(journal.entries(), night);
    Draft draft =
        new Draft(
            title,
            phase,
            journal.phases().stream().map(Phase::id).toList(),
            Said.NOTHING,
            Reminders.of(journal, night, now, phase),
            List.of());
    while (true) {
      try {
        return NewEntry.free(journal, night, title.or(() -> phase).orElse(""))
            .write(journal.folder().root(), draft.text());
      } catch (FileAlreadyExistsException e) {
        // Somebody was faster: the name is taken now, and the next one is tried.
        continue;
      }
    }
  }
}
