package ribband.ledger;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import ribband.journal.Journal;
import ribband.ledger.Cell.Blank;
import ribband.ledger.Cell.Count;
import ribband.ledger.Cell.Words;

/** RFC 4180 quoting, with LF; words that a spreadsheet would run are held by an apostrophe. */
class SheetCsvTest {
  @TempDir Path folder;

  private static String csv(Sheet sheet) throws IOException {
    StringBuilder out = new StringBuilder();
    SheetCsv.write(sheet, out);
    return out.toString();
  }

  @Test
  void wordsThatLookLikeFormulasAreGuardedAndNumbersAreNot() throws IOException {
    List<List<Cell>> rows =
        List.of("=1+1", "+1", "-1", "@x", "\tx", "a=b").stream()
            .map(text -> List.<Cell>of(new Count(-1), Words.of(text)))
            .toList();
    assertEquals(
        "number,words\n-1,'=1+1\n-1,'+1\n-1,'-1\n-1,'@x\n-1,'\tx\n-1,a=b\n",
        csv(Sheet.of(List.of("number", "words"), rows)).replace("\"", ""));
  }

  @Test
  void commasQuotesAndLineEndsAreQuoted() throws IOException {
    assertEquals(
        "words,n\n\"a, b\",1\n\"say \"\"ah\"\"\",\n\"two\nlines\",2\n",
        csv(
            Sheet.of(
                List.of("words", "n"),
                List.of(
                    List.of(Words.of("a, b"), new Count(1)),
                    List.of(Words.of("say \"ah\""), new Blank()),
                    List.of(Words.of("two\nlines"), new Count(2))))));
  }

  @Test
  void hiddenMoneyLeavesNoColumnOfIt() throws IOException {
    Journals.write(
        folder, "project.yaml", "currency: USD\nphases: [{id: planking, hours: 10, cost: 99}]\n");
    Journals.entry(folder, "2026-01-02", "phase: planking\nhours: 2\ncost: 30");
    Journal journal = Journals.read(folder);
    Ledger ledger = Ledger.of(journal);
    assertEquals(
        "month,sessions,hours,hours_to_date,rank_by_hours\n2026-01,1,2,2,1\n",
        csv(TallySheet.of(ledger, journal.project().currency(), By.MONTH, MoneyColumns.HIDDEN)));
    assertEquals(
        "phase,sessions,hours,hours_planned\nplanking,1,2,10\n",
        csv(TallySheet.of(ledger, journal.project().currency(), By.PHASE, MoneyColumns.HIDDEN)));
  }

  @Test
  void aRowThatDoesNotFitIsRefused() {
    assertThrows(
        IllegalArgumentException.class,
        () -> Sheet.of(List.of("a", "b"), List.of(List.of(new Count(1)))));
  }
}
