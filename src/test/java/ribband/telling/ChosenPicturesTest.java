package ribband.telling;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import ribband.album.Album;
import ribband.ledger.Ledger;

/** Which picture stands for a month and a phase. */
class ChosenPicturesTest {
  @TempDir private Path scratch;
  private Teal teal;

  @BeforeEach
  void lay() throws IOException {
    teal = new Teal(scratch.resolve("journal"));
    teal.with("project.yaml", "name: Teal\nphases: [moulds, planking, sails]\n");
  }

  /** {@code a.png of 2026-01-02-a: January 2026, Moulds}. */
  private List<String> chosen() throws IOException {
    Album album = teal.album();
    return ChosenPictures.of(album, Ledger.of(album.journal())).stream()
        .map(
            picture ->
                picture.shot().file()
                    + " of "
                    + picture.leaf().entry().date()
                    + ": "
                    + String.join(", ", picture.standsFor()))
        .toList();
  }

  @Test
  void theLatestCoverStandsElseTheLatestPicture() throws IOException {
    teal.picture("a.png", 301)
        .picture("b.png", 302)
        .picture("c.png", 303)
        .picture("d.png", 304)
        .picture("e.png", 305)
        .entry("2026-01-02-a", "phase: moulds\nhours: 1\nphotos: [a.png]\n")
        .entry("2026-01-03-b", "phase: moulds\nhours: 1\nphotos: [{file: b.png, cover: true}]\n")
        .entry("2026-01-04-c", "phase: moulds\nhours: 1\nphotos: [{file: c.png, cover: true}]\n")
        .entry("2026-02-01-d", "phase: planking\nhours: 1\nphotos: [d.png]\n")
        .entry("2026-02-02-e", "phase: planking\nhours: 1\nphotos: [e.png]\n");
    assertEquals(
        List.of(
            "c.png of 2026-01-04: January 2026, Moulds",
            "e.png of 2026-02-02: February 2026, Planking"),
        chosen());
  }

  @Test
  void monthsStandBeforePhasesAndAPhaseIsThatOfTheHoursOrOfTheEntry() throws IOException {
    teal.picture("a.png", 301)
        .picture("b.png", 302)
        .picture("c.png", 303)
        .entry("2026-01-02-a", "title: Looking\nphotos: [a.png]\n")
        .entry("2026-01-03-b", "phase: sails\nphotos: [b.png]\n")
        .entry("2026-01-04-c", "hours: {planking: 1}\nphotos: [c.png]\n");
    assertEquals(
        List.of("c.png of 2026-01-04: January 2026, Planking", "b.png of 2026-01-03: Sails"),
        chosen());
  }

  @Test
  void aPictureStandsForNoPhaseThatItsNightHadNoHoursIn() throws IOException {
    teal.picture("a.png", 301)
        .entry("2026-01-02-a", "phase: sails\nhours: {planking: 1}\nphotos: [a.png]\n");
    assertEquals(List.of("a.png of 2026-01-02: January 2026, Planking"), chosen());
  }

  @Test
  void theSameBytesUnderTwoNamesAreOnePicture() throws IOException {
    teal.picture("a.png", 301)
        .picture("again.png", 301)
        .entry("2026-01-02-a", "phase: moulds\nhours: 1\nphotos: [a.png]\n")
        .entry("2026-03-02-b", "phase: planking\nhours: 1\nphotos: [again.png]\n");
    assertEquals(
        List.of("a.png of 2026-01-02: January 2026, March 2026, Moulds, Planking"), chosen());
  }

  @Test
  void noPictureOfAPrivateEntryIsChosen() throws IOException {
    teal.picture("a.png", 301)
        .picture("b.png", 302)
        .entry(
            "2026-01-02-a",
            "phase: moulds\nhours: 1\nprivate: true\nphotos: [{file: a.png, cover: true}]\n")
        .entry("2026-01-03-b", "phase: moulds\nhours: 1\nphotos: [b.png]\n");
    assertEquals(List.of("b.png of 2026-01-03: January 2026, Moulds"), chosen());
  }
}
