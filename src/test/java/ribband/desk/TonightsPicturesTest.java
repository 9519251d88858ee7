package ribband.desk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import ribband.card.LeftOut;
import ribband.desk.Tonight.Written;
import ribband.journal.Entry;
import ribband.journal.Photo;
import ribband.measure.Unreadable;
import ribband.photo.Camera;

/** Pictures come into the new entry's own folder, each once, whatever stopped the run before. */
class TonightsPicturesTest {
  @TempDir private Path temporary;
  private Path card;
  private Desk desk;

  @BeforeEach
  void boat() throws IOException {
    card = Files.createDirectory(temporary.resolve("card"));
    desk =
        new Desk(temporary.resolve("boat"))
            .with("project.yaml", "name: x")
            .entry("2026/2026-03-12-a.md", "phase: planking", "hours: 1");
  }

  private void shoot(String name, int width, String taken) throws IOException {
    Camera.shoot(card.resolve(name), width, 12, 1, taken);
  }

  private void aCard() throws IOException {
    shoot("IMG_3.JPG", 16, "2026:03:14 22:00:00");
    shoot("IMG_1.JPG", 17, "2026:03:14 20:00:00");
    shoot("IMG_2.JPG", 18, "2026:03:15 01:00:00");
    shoot("IMG_0.JPG", 19, "2026:03:12 20:00:00");
    Files.writeString(card.resolve("film.mov"), "x");
  }

  private Tonight tonight() throws IOException {
    return new Tonight(
        desk.journal(), Desk.NIGHT, Instant.EPOCH, Optional.empty(), Optional.empty());
  }

  private Written write() throws Exception {
    Written written = tonight().write(card, ZoneOffset.UTC, desk.output());
    assertEquals(List.of(), desk.problems());
    return written;
  }

  private List<String> shown(String file) throws IOException {
    return desk.journal().entries().stream()
        .filter(entry -> entry.file().equals(file))
        .map(Entry::photos)
        .flatMap(List::stream)
        .map(Photo::file)
        .toList();
  }

  private static List<String> leftOut(Written written) {
    return written.leftOut().stream().map(LeftOut::name).toList();
  }

  private static final List<String> ALL =
      List.of(
          "2026/2026-03-14-planking/IMG_1.JPG",
          "2026/2026-03-14-planking/IMG_3.JPG",
          "2026/2026-03-14-planking/IMG_2.JPG");

  @Test
  void theNightsPicturesAreCopiedAndListed() throws Exception {
    aCard();
    Written written = write();
    assertEquals(
        """
        ---
        title:
        phase: planking
        hours:                         # 2:45
        photos:
          - file: IMG_1.JPG
            caption:
          - file: IMG_3.JPG
            caption:
          - file: IMG_2.JPG
            caption:
        ---

        """,
        desk.text("2026/2026-03-14-planking.md"));
    assertEquals(List.of("IMG_1.JPG", "IMG_3.JPG", "IMG_2.JPG"), written.photos());
    assertEquals(List.of("film.mov", "IMG_0.JPG"), leftOut(written));
    assertEquals(ALL, shown("2026/2026-03-14-planking.md"));
    for (String file : ALL) {
      Path copy = desk.root().resolve(file);
      assertEquals(-1, Files.mismatch(card.resolve(copy.getFileName()), copy), file);
    }
    Written again = write();
    assertEquals(List.of(), again.photos());
    assertEquals(5, again.leftOut().size());
    assertTrue(Files.notExists(desk.root().resolve("2026/2026-03-14-planking-2")));
    assertTrue(!desk.text("2026/2026-03-14-planking-2.md").contains("photos"));
  }

  /** Between any two pictures, and between the last one and the entry. */
  @Test
  void aRunThatWasStoppedIsTakenUp() throws Exception {
    aCard();
    for (int copied = 0; copied <= 3; copied++) {
      Desk other =
          new Desk(temporary.resolve("boat" + copied))
              .with("project.yaml", "name: x")
              .entry("2026/2026-03-12-a.md", "phase: planking", "hours: 1");
      for (String file : ALL.subList(0, copied)) {
        Path copy = other.root().resolve(file);
        Files.createDirectories(copy.getParent());
        Files.copy(card.resolve(copy.getFileName()), copy);
      }
      desk = other;
      Written written = write();
      assertEquals(ALL, shown("2026/2026-03-14-planking.md"));
      assertEquals(List.of("film.mov", "IMG_0.JPG"), leftOut(written));
    }
  }

  @Test
  void picturesThatLieThereAreListedToo() throws Exception {
    aCard();
    Path own = Files.createDirectories(desk.root().resolve("2026/2026-03-14-planking"));
    Camera.shoot(own.resolve("img_1.jpg"), 30, 12, 1, "2026:03:14 21:00:00");
    Camera.shoot(own.resolve("old.jpg"), 31, 12, 1, "2025:03:14 21:00:00");
    Camera.shoot(own.resolve("wrong.jpg"), 32, 12, 1, "no time");
    Files.writeString(own.resolve("notes.txt"), "x");
    Files.write(own.resolve("cut.jpg"), new byte[] {(byte) 0xff, (byte) 0xd8, (byte) 0xff});
    assertEquals(
        List.of("old.jpg", "IMG_1-2.JPG", "img_1.jpg", "IMG_3.JPG", "IMG_2.JPG", "wrong.jpg"),
        write().photos());
  }

  /** A second entry lists none of the first one's. */
  @Test
  void anotherEntryOfTheNightKeepsItsOwn() throws Exception {
    aCard();
    write();
    shoot("IMG_9.JPG", 40, "2026:03:14 23:30:00");
    Written second = write();
    assertEquals(List.of("IMG_9.JPG"), second.photos());
    assertEquals(
        List.of("2026/2026-03-14-planking-2/IMG_9.JPG"), shown("2026/2026-03-14-planking-2.md"));
    assertEquals(ALL, shown("2026/2026-03-14-planking.md"));
  }

  /** Days between two entries go with the later one, whatever lies behind it. */
  @Test
  void theWindowBeginsBehindTheLastEntryBefore() throws Exception {
    desk.entry("2026/2026-03-10.md", "title: x").entry("2026/2026-03-14-x.md", "title: x");
    desk.entry("2026/2026-03-20.md", "title: x");
    assertEquals("2026-03-13T04:00", tonight().window().from().toString());
    assertEquals("2026-03-15T04:00", tonight().window().until().toString());
  }

  @Test
  void noFolderWritesNothing() throws Exception {
    Unreadable why =
        assertThrows(
            Unreadable.class,
            () -> tonight().write(card.resolve("none"), ZoneOffset.UTC, desk.output()));
    assertEquals("is not there", why.wrong());
    assertEquals(List.of("2026/2026-03-12-a.md", "project.yaml"), desk.journal().folder().all());
  }

  @Test
  void aFileInTheFoldersPlaceIsNamed() throws Exception {
    aCard();
    Tonight tonight = tonight();
    Path own = Files.createDirectories(desk.root().resolve("2026/2026-03-14-planking"));
    Files.writeString(own.resolve("IMG_3.JPG"), "another");
    String told =
        assertThrows(IOException.class, () -> tonight.write(card, ZoneOffset.UTC, desk.output()))
            .getMessage();
    assertEquals(
        "cannot write " + own.resolve("IMG_3.JPG") + ": another file came there; try again", told);
    assertTrue(Files.notExists(desk.root().resolve("2026/2026-03-14-planking.md")));
    Files.delete(own.resolve("IMG_3.JPG"));
    Files.copy(card.resolve("IMG_3.JPG"), own.resolve("IMG_3.JPG"));
    assertEquals(3, tonight.write(card, ZoneOffset.UTC, desk.output()).photos().size());
    assertEquals(ALL, shown("2026/2026-03-14-planking.md"));
  }
}
