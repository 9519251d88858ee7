package ribband.plan;

import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import org.apache.commons.numbers.fraction.BigFraction;
import ribband.journal.Journal;
import ribband.ledger.Journals;
import ribband.ledger.Ledger;
import ribband.measure.Hours;
import ribband.pieces.PieceCount;

/** Journals of a few lines, each entry's first line its name; all invented. */
final class Boats {
  static final LocalDate TODAY = LocalDate.of(2026, 5, 6);

  private Boats() {}

  static Journal journal(Path folder, String project, String... entries) throws IOException {
    Journals.write(folder, "project.yaml", "name: Dunlin\ncurrency: USD\n" + project);
    for (String entry : entries) {
      int end = entry.indexOf('\n');
      Journals.entry(folder, entry.substring(0, end).strip(), entry.substring(end + 1).strip());
    }
    return Journals.read(folder);
  }

  static Standing standing(Path folder, String project, String... entries) throws IOException {
    Journal journal = journal(folder, project, entries);
    return Standing.of(journal, Ledger.of(journal), PieceCount.of(journal, TODAY), TODAY);
  }

  static Hours hours(long whole) {
    return new Hours(3600 * whole);
  }

  static Hours hoursOf(String whole) {
    return hours(Long.parseLong(whole));
  }

  static BigFraction seconds(long hours) {
    return BigFraction.of(3600 * hours);
  }
}
