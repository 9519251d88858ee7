package ribband.ledger;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import ribband.journal.Journal;
import ribband.journal.JournalFolder;
import ribband.journal.JournalReader;
import ribband.problem.Problem;

/** Journals for tests, written to disk and read as any other. */
public final class Journals {
  private Journals() {}

  public static void write(Path folder, String file, String text) throws IOException {
    Files.createDirectories(folder);
    Files.writeString(folder.resolve(file), text, StandardCharsets.UTF_8);
  }

  public static void entry(Path folder, String name, String keys) throws IOException {
    write(folder, name + ".md", "---\n" + keys + "\n---\n");
  }

  public static Journal read(Path folder) throws IOException {
    JournalReader.Read read =
        JournalReader.read(
            JournalFolder.list(folder, folder.resolve("site")), LocalDate.of(2030, 1, 1));
    List<Problem> errors = read.problems().stream().filter(Problem::isError).toList();
    if (!errors.isEmpty()) {
      throw new AssertionError("the journal has errors: " + errors);
    }
    return read.journal();
  }
}
