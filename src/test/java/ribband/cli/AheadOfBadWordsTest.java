package ribband.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import ribband.cli.InMemory.Run;

/** What cannot be looked ahead to is refused in one line, with what to write. */
class AheadOfBadWordsTest {
  @TempDir Path folder;

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      textBlock =
          """
          --evening | 0      | is no evening; write more than none and 24 h at most, as 2h30
          --evening | 24:01  | is no evening; write more than none and 24 h at most, as 2h30
          --evening | long   | is not a length of time; write 2:45, 2.75 or 2 3/4
          --evening | -1     | is below zero; hours only add up, write 2:45, 2.75 or 2 3/4
          --clamps  | -3     | is no number of clamps; write figures alone, 99999 at most, as 36
          --clamps  | 100000 | is no number of clamps; write figures alone, 99999 at most, as 36
          --clamps  | 3.5    | is no number of clamps; write figures alone, 99999 at most, as 36
          --clamps  | ``     | is no number of clamps; write figures alone, 99999 at most, as 36
          --clamps  | 99999999999 | is no number of clamps; write figures alone, 99999 at most, as 36
          --show    | peices | cannot be shown; did you mean "pieces"?
          --show    | x      | cannot be shown; there are jobs, pieces, nights, plan, left, forecast
          --now     | 25:00  | is not on the clock; clock times go from 00:00 to 23:59, or 2026-03-15 07:30 on another day
          --now     | x      | is not a clock time; write 20:25, or 2026-03-15 07:30 on another day
          --today   | x      | is not a date; write year-month-day, as 2026-03-14
          --format  | x      | is no format; there are table, csv, json
          """)
  void aValueThatIsNone(String option, String value, String told) throws IOException {
    Run run = new InMemory(folder).with("project.yaml", "").run("ahead", option + "=" + value);
    assertEquals(new Run(2, "", "ribband: " + option + " \"" + value + "\" " + told + "\n"), run);
  }

  @ParameterizedTest
  @CsvSource({"--evening, 24h", "--clamps, 0", "--clamps, 99999", "--show, Plan", "--now, 0:00"})
  void aValueAtTheEdgeIsOne(String option, String value) throws IOException {
    Run run = new InMemory(folder).with("project.yaml", "name: Dunlin").run("ahead", option, value);
    assertEquals("", run.err());
    assertEquals(0, run.code());
  }

  /** A figure on one stream, or what to write on the other. */
  @ParameterizedTest
  @ValueSource(strings = {"--evening", "--clamps", "--show", "--now", "--today", "--format"})
  void noLineIsADefect(String option) throws IOException {
    InMemory memory = new InMemory(folder).with("project.yaml", "name: Dunlin");
    for (String value : ShopOfBadWordsTest.HOSTILE) {
      Run run = memory.run("ahead", "-q", option + "=" + value);
      assertTrue(run.code() == 0 || run.code() == 2, () -> value + ": " + run);
      assertEquals(run.code() == 0, run.err().isEmpty(), () -> value + ": " + run);
      assertEquals(run.code() == 0, !run.out().isEmpty(), () -> value + ": " + run);
      assertTrue(
          run.err().lines().allMatch(l -> l.startsWith("ribband: ") || l.startsWith("how to ")),
          () -> value + ": " + run);
    }
  }

  @Test
  void aJournalWithErrorsHasNoFigures() throws IOException {
    Run run =
        new InMemory(folder)
            .with("project.yaml", "pieces: {strakes: {total: 16}}\n")
            .with(
                "2026-03-14.md",
                "---\ntodo: [{id: a, after: strake}]\npieces: {strakes: 17}\n---\n")
            .run("ahead");
    assertEquals(1, run.code());
    assertEquals("", run.out());
    assertEquals(
        """
        2026-03-14.md:2:23: error: after "strake" names no job, kind of pieces or phase; did you mean "strakes"?
        2026-03-14.md:3:19: error: strakes "17" is out of bounds; write a number from -16 to 16
        2 errors in 1 entry, no figure is told
        """,
        run.err());
  }
}
