package ribband.recap;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Path;
import java.time.YearMonth;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import ribband.journal.Journal;
import ribband.ledger.Journals;
import ribband.ledger.Ledger;

class RankWordsTest {
  @TempDir Path folder;

  private List<String> places(String... hoursByMonth) throws IOException {
    Journals.write(folder, "project.yaml", "name: Siskin\nphases: [planking]\n");
    YearMonth month = YearMonth.of(2025, 12);
    for (String hours : hoursByMonth) {
      Journals.entry(folder, month + "-01", "phase: planking\nhours: " + hours);
      month = month.plusMonths(1);
    }
    Journal journal = Journals.read(folder);
    Recaps recaps = Recaps.of(journal, Ledger.of(journal));
    return recaps.months().stream().map(m -> recaps.month(m).orElseThrow().place()).toList();
  }

  @Test
  void aPlaceNamesTheOneThatIsLevelWithItAndNoneThatBeatsIt() throws IOException {
    assertEquals(
        List.of(
            "second of 4 months with work, level with February 2026",
            "the best month so far",
            "second of 4 months with work, level with December 2025",
            "4th of 4 months with work"),
        places("4", "5", "4", "3"));
  }

  @Test
  void severalAreCounted() throws IOException {
    assertEquals(
        List.of(
            "the best month so far, level with two others",
            "the best month so far, level with two others",
            "the best month so far, level with two others",
            "4th of 5 months with work, level with April",
            "4th of 5 months with work, level with March"),
        places("4", "4", "4", "3", "3"));
  }

  @Test
  void theFirstIsLevelWithNone() throws IOException {
    assertEquals(List.of("the first month with work"), places("4"));
  }
}
