package ribband.memory;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.time.Instant;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class TreeStateTest {
  private static final FileTime THEN = FileTime.from(Instant.parse("2026-03-14T20:25:00Z"));

  @TempDir private Path folder;
  private Path tree;

  @BeforeEach
  void plant() throws IOException {
    tree = Files.createDirectories(folder.resolve("tree"));
    write("index.html", "home");
    write("entries/one.html", "one");
    write(".git/config", "theirs");
  }

  private void write(String name, String text) throws IOException {
    Path file = tree.resolve(name);
    Files.createDirectories(file.getParent());
    Files.writeString(file, text);
    Files.setLastModifiedTime(file, THEN);
  }

  @Test
  void aTreeThatStandsAsItStoodIsKnown() throws IOException {
    String before = TreeState.of(tree);
    write("entries/one.html", "two");
    write(".git/config", "theirs alone");

    assertEquals(before, TreeState.of(tree), "same names, sizes and times");
  }

  @Test
  void aFileThatGrewOrWentOrCameOrWasTouchedIsSeen() throws IOException {
    String before = TreeState.of(tree);
    write("entries/one.html", "more");
    assertNotEquals(before, TreeState.of(tree));
    write("entries/one.html", "one");
    assertEquals(before, TreeState.of(tree));
    Files.setLastModifiedTime(tree.resolve("index.html"), FileTime.from(Instant.EPOCH));
    assertNotEquals(before, TreeState.of(tree));
    Files.delete(tree.resolve("index.html"));
    assertNotEquals(before, TreeState.of(tree));
    write("index.html", "home");
    write("note.txt", "mine");
    assertNotEquals(before, TreeState.of(tree));
  }

  @Test
  void aTreeBehindALinkIsTheTreeItself() throws IOException {
    Path link = Files.createSymbolicLink(folder.resolve("link"), tree);
    assertEquals(TreeState.of(tree), TreeState.of(link));
    Files.delete(tree.resolve("index.html"));
    assertEquals(TreeState.of(tree), TreeState.of(link));
  }
}
