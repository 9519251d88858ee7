package ribband.fuzz;

import static org.junit.jupiter.api.Assertions.assertEquals;

import com.code_intelligence.jazzer.junit.FuzzTest;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.io.TempDir;
import ribband.journal.JournalFolder;
import ribband.journal.JournalReader;

/** A project file of any bytes hides no entry, and each problem in it is one line with a place. */
class ProjectFuzzTest {
  private static final String ENTRY = "2026-03-14-garboard.md";

  @TempDir static Path root;
  private static JournalFolder folder;

  @BeforeAll
  static void aJournalOfOneEntry() throws IOException {
    Files.writeString(root.resolve(JournalFolder.PROJECT), "", StandardCharsets.UTF_8);
    Files.writeString(root.resolve(ENTRY), "---\nhours: 2\n---\nOn.\n", StandardCharsets.UTF_8);
    folder = JournalFolder.list(root, root.resolve("site"));
  }

  @FuzzTest(maxDuration = "10s")
  void project(byte[] bytes) throws IOException {
    Files.write(root.resolve(JournalFolder.PROJECT), bytes);
    JournalReader.Read read = JournalReader.read(folder, LocalDate.of(2026, 12, 31));
    assertEquals(1, read.journal().entries().size());
    byte[] longer =
        (new String(bytes, StandardCharsets.UTF_8) + "\n\n\n").getBytes(StandardCharsets.UTF_8);
    read.problems()
        .forEach(problem -> Lines.stand(problem, List.of(JournalFolder.PROJECT, ENTRY), longer));
  }
}
