package ribband.recap;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import ribband.album.Album;
import ribband.album.AlbumReader;
import ribband.album.PictureMemory;
import ribband.album.Showing;
import ribband.journal.Journal;
import ribband.ledger.Journals;
import ribband.ledger.Ledger;
import ribband.memory.Memory;
import ribband.problem.Problems;
import ribband.whole.FullJournal;

/** Which picture stands for a month. */
class BestPictureTest {
  @TempDir Path scratch;
  private Path folder;

  @BeforeEach
  void lay() throws IOException {
    folder = scratch.resolve("journal");
    Journals.write(folder, "project.yaml", "phases: [moulds]\n");
  }

  /** An entry of the moulds with pictures of its own. */
  private void night(String name, String hours, String more, String... pictures)
      throws IOException {
    StringBuilder photos = new StringBuilder();
    for (String picture : pictures) {
      String file = picture.replaceAll("[{}]|file: |, cover: true", "");
      FullJournal.picture(folder.resolve(file), 300 + file.charAt(0), 200);
      photos.append(photos.isEmpty() ? "" : ", ").append(picture);
    }
    Journals.entry(
        folder, name, "phase: moulds\nhours: " + hours + "\n" + more + "photos: [" + photos + "]");
  }

  private String best(String from, String to) throws IOException {
    Journal journal = Journals.read(folder);
    Album album =
        AlbumReader.read(
            journal,
            Showing.NOWHERE,
            PictureMemory.NONE,
            Memory.load(scratch.resolve("no-memory"), "a build"),
            new Problems());
    return BestPicture.of(album, Ledger.of(journal), LocalDate.parse(from), LocalDate.parse(to))
        .map(best -> best.shot().file() + " of " + best.leaf().entry().address())
        .orElse("none");
  }

  private String january() throws IOException {
    return best("2026-01-01", "2026-01-31");
  }

  @Test
  void withoutAMarkTheFirstOfTheLongestNightStands() throws IOException {
    night("2026-01-02", "2", "", "a.png", "b.png");
    night("2026-01-03", "3", "", "c.png", "d.png");
    night("2026-01-04", "1", "", "e.png");
    assertEquals("c.png of 2026-01-03", january());
  }

  @Test
  void theLatestOfEqualNightsStands() throws IOException {
    night("2026-01-02", "2", "", "a.png");
    night("2026-01-03", "2", "", "b.png");
    assertEquals("b.png of 2026-01-03", january());
  }

  @Test
  void aMarkedPictureBeatsALongerNight() throws IOException {
    night("2026-01-02", "2", "", "a.png", "{file: b.png, cover: true}");
    night("2026-01-03", "3", "", "c.png");
    assertEquals("b.png of 2026-01-02", january());
  }

  @Test
  void ofMarkedPicturesThatOfTheLongerNightStandsThenTheLatest() throws IOException {
    night("2026-01-02", "1", "", "{file: a.png, cover: true}");
    night("2026-01-03", "2", "", "{file: b.png, cover: true}");
    night("2026-01-04", "1", "", "{file: c.png, cover: true}");
    assertEquals("b.png of 2026-01-03", january());
    night("2026-01-05", "2", "", "{file: d.png, cover: true}");
    assertEquals("d.png of 2026-01-05", january());
  }

  @Test
  void aNightIsAllItsEntries() throws IOException {
    night("2026-01-02-a", "2", "", "a.png");
    Journals.entry(folder, "2026-01-02-b", "phase: moulds\nhours: 2\nprivate: true");
    night("2026-01-03", "3", "", "b.png");
    assertEquals("a.png of 2026-01-02-a", january());
  }

  @Test
  void aPrivatePictureNeverStands() throws IOException {
    night("2026-01-02", "9", "private: true\n", "{file: a.png, cover: true}");
    assertEquals("none", january());
    night("2026-01-03", "1", "", "b.png");
    assertEquals("b.png of 2026-01-03", january());
  }

  @Test
  void bothEndsCountAndNoDayBesideThem() throws IOException {
    night("2026-01-31", "3", "", "a.png");
    night("2026-02-01", "1", "", "b.png");
    night("2026-02-28", "2", "", "c.png");
    night("2026-03-01", "3", "", "d.png");
    assertEquals("c.png of 2026-02-28", best("2026-02-01", "2026-02-28"));
    assertEquals("b.png of 2026-02-01", best("2026-02-01", "2026-02-27"));
    assertEquals("none", best("2026-02-02", "2026-02-27"));
  }
}
