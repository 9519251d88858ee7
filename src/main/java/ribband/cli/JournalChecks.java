package ribband.cli;

import java.util.List;

/** The checks beside those of reading that {@code check} and {@code publish} run alike. */
final class JournalChecks {
  static final List<OpenJournal.Check> ALL = List.of();

  private JournalChecks() {}
}
