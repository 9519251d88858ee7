package ribband.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What the guard around every command sees, and what it passes over. */
class JournalStateTest {
  @TempDir Path folder;
  private Map<String, String> before;
  private Path entry;

  @BeforeEach
  void write() throws IOException {
    new InMemory(folder)
        .with("2026/2026-03-14.md", "a night\n")
        .with("long.txt", "a".repeat(400))
        .with("site/index.html", "x");
    Files.createSymbolicLink(folder.resolve("link"), Path.of("long.txt"));
    entry = folder.resolve("2026/2026-03-14.md");
    before = JournalState.of(folder);
  }

  @Test
  void aTimeAByteANameAndAFolderAreSeen() throws IOException {
    FileTime time = Files.getLastModifiedTime(entry);
    Files.setLastModifiedTime(entry, FileTime.fromMillis(time.toMillis() - 1000));
    changed();
    Files.writeString(entry, "a Night\n");
    Files.setLastModifiedTime(entry, time);
    changed();
    FileTime longs = Files.getLastModifiedTime(folder.resolve("long.txt"));
    Files.writeString(folder.resolve("long.txt"), "b".repeat(400));
    Files.setLastModifiedTime(folder.resolve("long.txt"), longs);
    changed();
    Files.move(folder.resolve("long.txt"), folder.resolve("short.txt"));
    changed();
    Files.createDirectory(folder.resolve("2027"));
    changed();
    Files.delete(folder.resolve("link"));
    changed();
  }

  private void changed() throws IOException {
    Map<String, String> now = JournalState.of(folder);
    assertNotEquals(before, now);
    before = now;
  }

  @Test
  void theToolsOwnFoldersArePassedOver() throws IOException {
    new InMemory(folder)
        .with("site/index.html", "y")
        .with(".ribband/lock", "1")
        .with("www/site-files.txt", "")
        .with("www/index.html", "z");
    assertEquals(before, JournalState.of(folder));
  }
}
