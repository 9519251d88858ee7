package ribband.jobs;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import ribband.joints.Bonds;
import ribband.journal.Journal;
import ribband.journal.JournalFolder;
import ribband.journal.JournalReader;
import ribband.problem.Problem;
import ribband.stock.Stock.Told;

/** Journals for tests, written to disk and read as any other. */
final class Journals {
  static final String PROJECT =
      """
      name: Dunlin
      phases: [planking, fairing, rigging]
      adhesives:
        epoxy: {rated at: 72 F, clamp time: 8 h, full cure: 7 days, coldest: 50 F}
      pieces:
        strakes: {total: 4, phase: planking, sides: [port, starboard], adhesive: epoxy}
        knees: {total: 2, phase: planking}
      """;

  private Journals() {}

  /** Entries begin with the line of their name. */
  static Journal read(Path folder, String... entries) throws IOException {
    write(folder, "project.yaml", PROJECT);
    for (String entry : entries) {
      String[] parts = entry.split("\n", 2);
      write(folder, parts[0] + ".md", "---\n" + parts[1] + "\n---\n");
    }
    JournalReader.Read read =
        JournalReader.read(
            JournalFolder.list(folder, folder.resolve("site")), LocalDate.of(2030, 1, 1));
    List<Problem> errors = read.problems().stream().filter(Problem::isError).toList();
    if (!errors.isEmpty()) {
      throw new AssertionError("the journal has errors: " + errors);
    }
    return read.journal();
  }

  private static void write(Path folder, String file, String text) throws IOException {
    Files.createDirectories(folder);
    Files.writeString(folder.resolve(file), text, StandardCharsets.UTF_8);
  }

  static PunchList list(Journal journal, Instant now) {
    return list(journal, now, Told.TO_THE_BUILDER);
  }

  static PunchList list(Journal journal, Instant now, Told told) {
    LocalDate today = now.atZone(journal.project().zone()).toLocalDate();
    return PunchList.of(journal, today, Bonds.of(journal, now), told);
  }
}
