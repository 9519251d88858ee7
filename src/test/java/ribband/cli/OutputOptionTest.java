package ribband.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import ribband.cli.InMemory.Run;

/** Where a builder sends the site. */
class OutputOptionTest {
  @TempDir private Path folder;

  /** Nothing is read where the site goes, so the file would else be missed where it is named. */
  @Test
  void aFileOfTheJournalIsNoFolder() throws IOException {
    Run run =
        new InMemory(folder)
            .with("project.yaml", "name: Teal\nsite: {about: about.md}\n")
            .with("about.md", "A skiff.\n")
            .with("2026-01-01.md", "---\nhours: 1\n---\n")
            .run("publish", "-o", folder.resolve("about.md").toString());
    assertEquals(
        new Run(
            2,
            "",
            "ribband: the output "
                + folder.resolve("about.md")
                + " is not a folder; choose a folder\n"),
        run);
    assertEquals("A skiff.\n", Files.readString(folder.resolve("about.md")));
  }
}
