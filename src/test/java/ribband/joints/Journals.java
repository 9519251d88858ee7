package ribband.joints;

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
final class Journals {
  private Journals() {}

  static Journal read(Path folder, String project, String name, String keys) throws IOException {
    write(folder, "project.yaml", project);
    entry(folder, name, keys);
    return read(folder);
  }

  static void entry(Path folder, String name, String keys) throws IOException {
    write(folder, name + ".md", "---\n" + keys + "\n---\n");
  }

  private static void write(Path folder, String file, String text) throws IOException {
    Files.createDirectories(folder);
    Files.writeString(folder.resolve(file), text, StandardCharsets.UTF_8);
  }

  static Journal read(Path folder) throws IOException {
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
