package ribband.journal;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import ribband.ledger.Journals;

/** What phases are called, and which an entry is of. */
class PhaseTitlesTest {
  @TempDir Path folder;

  private Journal journal(String phases, String keys) throws IOException {
    Journals.write(folder, "project.yaml", "name: Teal\n" + phases);
    Journals.entry(folder, "2026-03-14", keys);
    return Journals.read(folder);
  }

  @Test
  void aPhaseHasItsTitleHoweverItsIdIsSpelled() throws IOException {
    Journal journal = journal("phases:\n  - {id: dry-fit, title: Dry fit}\n", "hours: 1\n");
    assertEquals(
        List.of("Dry fit", "Dry fit", "Unsorted", "sails"),
        Stream.of("dry-fit", "Dry Fit", "unsorted", "sails").map(journal::phaseTitle).toList());
  }

  @Test
  void anEntryIsOfThePhasesOfItsHoursElseOfItsOwn() throws IOException {
    String phases = "phases: [moulds, planking, sails]\n";
    assertEquals(
        List.of("planking", "moulds"),
        phases(phases, "phase: sails\nhours: {planking: 1, moulds: 2}\n"));
    assertEquals(List.of("sails"), phases(phases, "phase: sails\nhours: 0\n"));
    assertEquals(List.of(), phases(phases, "title: Looking\n"));
  }

  private List<String> phases(String phases, String keys) throws IOException {
    return journal(phases, keys).entries().get(0).phases();
  }
}
