package ribband.pieces;

import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import ribband.journal.Journal;
import ribband.ledger.Journals;

/** Journals of a few lines, each entry's first line its name. */
public final class Texts {
  private Texts() {}

  public static Journal journal(Path folder, String project, String... entries) throws IOException {
    Journals.write(folder, "project.yaml", "name: Dunlin\ncurrency: USD\n" + project);
    for (String entry : entries) {
      int end = entry.indexOf('\n');
      Journals.entry(folder, entry.substring(0, end).strip(), entry.substring(end + 1).strip());
    }
    return Journals.read(folder);
  }

  static PieceCount strakes(Path folder, LocalDate asOf, String project, String... entries)
      throws IOException {
    return PieceCount.of(journal(folder, project, entries), asOf).get("strakes");
  }
}
