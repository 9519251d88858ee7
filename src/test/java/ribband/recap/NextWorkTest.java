package ribband.recap;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Path;
import java.time.Year;
import java.time.YearMonth;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import ribband.journal.Journal;
import ribband.ledger.Journals;
import ribband.ledger.Ledger;

/** What comes next at the end of a month. */
class NextWorkTest {
  @TempDir Path folder;

  private List<String> next(String month) throws IOException {
    Journal journal = Journals.read(folder);
    Recaps recaps = Recaps.of(journal, Ledger.of(journal));
    return recaps.next(recaps.month(YearMonth.parse(month)).orElseThrow());
  }

  private void project(String more) throws IOException {
    Journals.write(folder, "project.yaml", "phases: [moulds, planking]\n" + more);
  }

  private void entry(String name, String keys) throws IOException {
    Journals.entry(folder, name, keys);
  }

  @Test
  void readyJobsStandFirstAndOneLineIsKeptForPieces() throws IOException {
    project("pieces: {frames: {total: 5}, strakes: {total: 16}}\n");
    entry(
        "2026-01-02",
        "hours: 1\nphase: moulds\npieces: {strakes: 2}\n"
            + "todo: [{id: a, what: First}, {id: b, what: Second}, {id: c, what: Third}]");
    assertEquals(List.of("First", "Second", "Strakes: 14 of 16 left"), next("2026-01"));
  }

  @Test
  void withoutPiecesThreeJobsAreTold() throws IOException {
    project("");
    entry(
        "2026-01-02",
        "todo: [{id: a, what: First}, {id: b, what: Second}, {id: c, what: Third}, {id: d}]");
    assertEquals(List.of("First", "Second", "Third"), next("2026-01"));
  }

  @Test
  void kindsBegunStandBeforeTheFirstOfTheOthers() throws IOException {
    project("pieces: {frames: {total: 5}, floors: {total: 4}, strakes: {total: 1600}}\n");
    entry("2026-01-02", "hours: 1\nphase: moulds\npieces: {strakes: 2}");
    assertEquals(List.of("Strakes: 1,598 of 1,600 left", "Frames: 5 to make"), next("2026-01"));
  }

  @Test
  void fourKindsBegunAreThree() throws IOException {
    project("pieces: {a: {total: 2}, b: {total: 2}, c: {total: 2}, d: {total: 2}}\n");
    entry("2026-01-02", "hours: 1\nphase: moulds\npieces: {a: 1, b: 1, c: 1, d: 1}");
    assertEquals(List.of("A: 1 of 2 left", "B: 1 of 2 left", "C: 1 of 2 left"), next("2026-01"));
  }

  @Test
  void whatIsMadeOrOfAFinishedPhaseIsNotToCome() throws IOException {
    project(
        "pieces: {frames: {total: 5, phase: moulds}, plugs: {total: 2}, strakes: {total: 3, phase:"
            + " planking}}\n");
    entry(
        "2026-01-02",
        "hours: 1\nphase: moulds\npieces: {frames: 2, plugs: 2, strakes: 1}\ncomplete: {moulds:"
            + " 100%}");
    assertEquals(List.of("Strakes: 2 of 3 left"), next("2026-01"));
  }

  @Test
  void whatWaitsOrIsHeldByAJointIsNotNext() throws IOException {
    project(
        "adhesives: {epoxy: {rated at: 72 F, clamp time: 8 h, coldest: 50 F}}\n"
            + "time zone: America/Chicago\n");
    entry("2026-01-02", "todo: [{id: a}, {id: b, after: [a]}, {id: plane, after: [glue]}]");
    entry("2026-01-30", "todo: [{id: glue}]");
    entry(
        "2026-01-31",
        "done: [glue]\njoints: [{name: Stem, adhesive: epoxy, clamped at: 20:00, temperature: 72"
            + " F}]");
    assertEquals(List.of("a"), next("2026-01"));
  }

  @Test
  void onlyWhatWasNotedByTheEndOfTheMonthIsTold() throws IOException {
    project("pieces: {frames: {total: 5}}\n");
    entry("2026-01-31", "pieces: {frames: 1}\ntodo: [{id: a}]");
    entry("2026-02-01", "pieces: {frames: 1}\ntodo: [{id: b}]\ndone: [a]");
    assertEquals(List.of("a", "Frames: 4 of 5 left"), next("2026-01"));
    assertEquals(List.of("b", "Frames: 3 of 5 left"), next("2026-02"));
    Journal journal = Journals.read(folder);
    Recaps recaps = Recaps.of(journal, Ledger.of(journal));
    assertEquals(
        List.of("b", "Frames: 3 of 5 left"),
        recaps.next(recaps.year(Year.of(2026)).orElseThrow().soFar()));
  }

  @Test
  void theLastMonthIsAsOfTheLastEntry() throws IOException {
    project(
        "adhesives: {epoxy: {rated at: 72 F, clamp time: 3 days, coldest: 50 F}}\n"
            + "time zone: America/Chicago\n");
    entry("2026-01-02", "todo: [{id: glue}, {id: plane, after: [glue]}]");
    entry(
        "2026-01-03",
        "done: [glue]\njoints: [{name: Stem, adhesive: epoxy, clamped at: 20:00, temperature: 72"
            + " F}]");
    assertEquals(List.of(), next("2026-01"));
    entry("2026-02-01", "hours: 1\nphase: moulds");
    assertEquals(List.of("plane"), next("2026-01"));
  }

  @Test
  void aPrivateJobIsNotTold() throws IOException {
    project("pieces: {frames: {total: 5}}\n");
    entry("2026-01-02", "private: true\npieces: {frames: 1}\ntodo: [{id: a, what: A secret}]");
    assertEquals(List.of("Frames: 4 of 5 left"), next("2026-01"));
  }

  @Test
  void aJobOfWhichNothingCanBeSeenIsNotTold() throws IOException {
    project("");
    entry("2026-01-02", "todo: [{id: a, what: \"\\u200b\"}, {id: b, what: Second}]");
    assertEquals(List.of("Second"), next("2026-01"));
  }
}
