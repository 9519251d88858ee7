package ribband.desk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.ZoneId;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class NewJournalTest {
  private static final ZoneId ZONE = ZoneId.of("America/Chicago");

  @TempDir private Path folder;

  @Test
  void aJournalIsSoundAndNamedLikeItsFolder() throws IOException {
    Path boat = folder.resolve("yard/it's: a #1");
    List<Path> made = NewJournal.lay(boat, Desk.NIGHT, ZONE);
    assertEquals(
        List.of(boat.resolve("project.yaml"), boat.resolve("2026/2026-03-14-first-night.md")),
        made);
    Desk desk = new Desk(boat);
    assertEquals(List.of(), desk.problems());
    assertEquals("it's: a #1", desk.journal().project().name());
    assertEquals(ZONE, desk.journal().project().zone());
    assertEquals("The journal is laid", desk.journal().entries().get(0).title());
  }

  @Test
  void whatIsThereStays() throws IOException {
    Desk desk = new Desk(folder).with("2026/2026-03-14-first-night.md", "mine");
    assertEquals(List.of(folder.resolve("project.yaml")), NewJournal.lay(folder, Desk.NIGHT, ZONE));
    assertEquals("mine\n", desk.text("2026/2026-03-14-first-night.md"));
    desk.with("project.yaml", "name: mine");
    String inTheWay =
        assertThrows(
                FileAlreadyExistsException.class, () -> NewJournal.lay(folder, Desk.NIGHT, ZONE))
            .getFile();
    assertTrue(inTheWay.endsWith("project.yaml"), inTheWay);
    assertEquals("name: mine\n", desk.text("project.yaml"));
    Path file = Files.createFile(folder.resolve("file"));
    assertThrows(FileAlreadyExistsException.class, () -> NewJournal.lay(file, Desk.NIGHT, ZONE));
  }
}
