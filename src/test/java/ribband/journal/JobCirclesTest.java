package ribband.journal;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import ribband.problem.Problem;

class JobCirclesTest {
  @TempDir private Path folder;

  /** Thirty jobs that all wait for each other: none of their circles is passed over in silence. */
  @Test
  void howManyCirclesAreNotToldOneByOneIsTold() throws Exception {
    StringBuilder entry = new StringBuilder("---\ntodo:\n");
    for (int i = 0; i < 30; i++) {
      entry.append("  - {id: job-").append(i).append(", after: [");
      for (int j = 0; j < 30; j++) {
        entry.append(j == 0 ? "" : ", ").append("job-").append(j);
      }
      entry.append("]}\n");
    }
    Files.writeString(folder.resolve("project.yaml"), "name: Teal\n", StandardCharsets.UTF_8);
    Files.writeString(folder.resolve("2026-03-14.md"), entry + "---\n", StandardCharsets.UTF_8);
    List<Problem> problems =
        JournalReader.read(
                JournalFolder.list(folder, folder.resolve("site")), LocalDate.of(2026, 3, 14))
            .problems();
    assertEquals(21, problems.size());
    // Each pair closes a circle, and each job one of its own: 465 in all.
    assertEquals(
        List.of(
            "jobs wait for each other in 445 more circles, this after closes one; mend those that"
                + " are told first"),
        problems.stream().map(Problem::sentence).filter(s -> s.contains("more circles")).toList());
  }
}
