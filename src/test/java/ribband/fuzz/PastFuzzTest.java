package ribband.fuzz;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.code_intelligence.jazzer.junit.FuzzTest;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.io.TempDir;
import ribband.desk.Bringing;
import ribband.desk.BroughtEntry;
import ribband.journal.Journal;
import ribband.journal.JournalFolder;
import ribband.journal.JournalReader;
import ribband.ledger.Ledger;
import ribband.past.Asked;
import ribband.past.Past;
import ribband.past.PastReader;
import ribband.problem.Problem;
import ribband.problem.Problems;

/**
 * A spreadsheet of any bytes is told in problems of one line each, or becomes entries without an
 * error whose sums are those told before.
 */
class PastFuzzTest {
  private static final LocalDate TODAY = LocalDate.of(2026, 12, 31);
  private static final String PROJECT =
      "name: Dunlin\ncurrency: USD\nphases: [{id: planking, title: Planking}, lofting]\n";
  private static final int MOST_WRITTEN = 20;

  @TempDir static Path root;
  private static Journal journal;

  @BeforeAll
  static void anEmptyJournal() throws IOException {
    Files.writeString(root.resolve(JournalFolder.PROJECT), PROJECT, StandardCharsets.UTF_8);
    journal = read();
  }

  @FuzzTest(maxDuration = "12s")
  void past(byte[] bytes) throws IOException {
    Past past =
        PastReader.read("past.csv", bytes, Asked.NOTHING, journal.project(), journal.phases());
    past.problems().forEach(PastFuzzTest::stands);
    if (!past.isSound()) {
      return;
    }
    Problems problems = new Problems();
    Bringing bringing = Bringing.plan(journal, past, TODAY, problems);
    problems.sorted().forEach(PastFuzzTest::stands);
    assertEquals(0, bringing.already());
    if (problems.errors() == 0 && bringing.entries().size() <= MOST_WRITTEN) {
      assertEquals(past.sessions().size(), bringing.entries().size());
      try {
        bringing.write(root, file -> {});
        assertEquals(bringing.after(), Ledger.of(read()).whole());
      } finally {
        for (BroughtEntry entry : bringing.entries()) {
          Files.deleteIfExists(entry.file().file(root));
        }
      }
    }
  }

  private static Journal read() throws IOException {
    JournalReader.Read read =
        JournalReader.read(JournalFolder.list(root, root.resolve("site")), TODAY);
    List<Problem> errors = read.problems().stream().filter(Problem::isError).toList();
    assertEquals(List.of(), errors);
    return read.journal();
  }

  private static void stands(Problem problem) {
    String told = problem.toString();
    assertFalse(told.chars().anyMatch(Character::isISOControl), told);
    assertTrue(problem.sentence().contains(";"), () -> "says no cure: " + told);
    assertEquals("past.csv", problem.place().file());
  }
}
