package ribband.recap;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.Year;
import java.time.YearMonth;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import ribband.journal.Journal;
import ribband.ledger.Journals;
import ribband.ledger.Ledger;
import ribband.recap.Recap.Costs;
import ribband.recap.Recap.LongestNight;
import ribband.recap.Recap.PhaseShare;

/** Whole recaps of small journals, and what they say where something is none. */
class RecapsTest {
  @TempDir Path folder;

  private void project(String more) throws IOException {
    Journals.write(
        folder, "project.yaml", "name: Teal\ncurrency: USD\nphases: [moulds, planking]\n" + more);
  }

  private void entry(String name, String keys) throws IOException {
    Journals.entry(folder, name, keys);
  }

  private Recap month(String month) throws IOException {
    Journal journal = Journals.read(folder);
    return Recaps.of(journal, Ledger.of(journal)).month(YearMonth.parse(month)).orElseThrow();
  }

  @Test
  void whatIsToldOfAMonthNotOver() throws IOException {
    project("");
    entry("2026-02-27", "hours: 2:30\nphase: moulds\ncost: 4");
    assertEquals(
        new Recap(
            "Teal",
            "February 2026 so far",
            LocalDate.of(2026, 2, 1),
            LocalDate.of(2026, 2, 28),
            "2½",
            "hours",
            "2½ hours",
            "1 session",
            "1 night",
            "the first month with work",
            "the first month with work",
            List.of(new PhaseShare("Moulds", "2½", 9000, "2½ hours", "2½", "2½ hours", true)),
            new Costs("$4.00 went out", "$4.00"),
            List.of(),
            Optional.of(new LongestNight("Friday 27 February 2026", "2½ hours")),
            "2½",
            "hours",
            "2½ hours"),
        month("2026-02").soFar());
  }

  @Test
  void aMonthIsWorkedOnceAnyHourIsIn() throws IOException {
    project("");
    entry("2026-01-02", "hours: 1 min\nphase: moulds");
    entry("2026-02-02", "cost: {moulds: 4}");
    assertEquals(true, month("2026-01").isWorked());
    assertEquals(false, month("2026-02").isWorked());
  }

  @Test
  void moneyToDateIsToldFromTheFirstSpentOn() throws IOException {
    project("");
    entry("2026-01-02", "hours: 1\nphase: moulds");
    entry("2026-02-02", "cost: {moulds: 4}");
    entry("2026-03-02", "hours: 1\nphase: moulds");
    entry("2026-04-02", "cost: {moulds: -4}");
    entry("2026-05-02", "hours: 1\nphase: moulds");
    assertEquals(new Costs("", ""), month("2026-01").costs());
    assertEquals(new Costs("$4.00 went out", "$4.00"), month("2026-02").costs());
    assertEquals(new Costs("", "$4.00"), month("2026-03").costs());
    assertEquals(new Costs("$4.00 came back", "$0.00"), month("2026-04").costs());
    assertEquals(new Costs("", ""), month("2026-05").costs());
  }

  @Test
  void hiddenMoneyIsInNoCost() throws IOException {
    project("site: {show money: false}\n");
    entry("2026-01-02", "cost: {moulds: 4}");
    entry("2026-02-02", "hours: 1\nphase: moulds");
    assertEquals(new Costs("", ""), month("2026-01").costs());
    assertEquals(new Costs("", ""), month("2026-02").costs());
  }

  @Test
  void yearsLevelWithEachOtherAreNamed() throws IOException {
    project("");
    entry("2024-05-02", "hours: 2\nphase: moulds");
    entry("2025-05-02", "hours: 1\nphase: moulds");
    entry("2026-05-02", "hours: 2\nphase: moulds");
    Journal journal = Journals.read(folder);
    Recaps recaps = Recaps.of(journal, Ledger.of(journal));
    assertEquals(
        List.of(
            "the best year so far, level with 2026",
            "third of 3 years with work (2024 and 2026 beat it)",
            "the best year so far, level with 2024"),
        recaps.years().stream().map(year -> recaps.year(year).orElseThrow().rank()).toList());
    assertEquals(Optional.empty(), recaps.year(Year.of(2023)));
  }
}
