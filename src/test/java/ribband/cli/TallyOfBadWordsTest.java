package ribband.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Errors in words and pictures stop figures as all others do. */
class TallyOfBadWordsTest {
  @TempDir private Path folder;

  @Test
  void aPictureThatIsNotThereStopsTheFigures() throws IOException {
    InMemory.Run run =
        new InMemory(folder)
            .with("project.yaml", "phases: [a]\n")
            .with("2026-01-01.md", "---\nhours: 1\nphase: a\n---\n![](missing.jpg)\n")
            .run("tally", "--format", "csv");

    assertEquals(1, run.code());
    assertEquals("", run.out());
    assertEquals(
        "1 error in 1 entry, no figure is told", run.err().lines().skip(1).findFirst().orElse(""));
  }
}
