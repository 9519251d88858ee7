package ribband.ledger;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.YearMonth;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import ribband.ledger.Records.Night;
import ribband.ledger.Records.Stretch;
import ribband.measure.Hours;

class RecordsTest {
  @TempDir Path folder;

  @BeforeEach
  void project() throws IOException {
    Journals.write(folder, "project.yaml", "currency: USD\nphases: [planking]\n");
  }

  private void night(String day, String hours) throws IOException {
    Journals.entry(folder, day, "phase: planking\nhours: " + hours);
  }

  private Ledger ledger() throws IOException {
    return Ledger.of(Journals.read(folder));
  }

  private static Optional<Stretch> stretch(String from, String to, int length) {
    return Optional.of(new Stretch(LocalDate.parse(from), LocalDate.parse(to), length));
  }

  @Test
  void runsAndGapsAreTheFirstOfTheLongest() throws IOException {
    for (String day :
        List.of(
            "2026-01-30",
            "2026-01-31",
            "2026-02-01", // three nights, over a month's end
            "2026-02-10", // eight days without
            "2026-02-19",
            "2026-02-20",
            "2026-02-21", // eight days without, three nights again
            "2026-03-18")) {
      night(day, "1");
    }
    Records records = Records.of(ledger());
    assertEquals(stretch("2026-01-30", "2026-02-01", 3), records.runOfNights());
    assertEquals(stretch("2026-02-22", "2026-03-17", 24), records.gap());
    // Weeks 5, 7, 8 and 12 of the year have work.
    assertEquals(stretch("2026-02-10", "2026-02-21", 2), records.runOfWeeks());
  }

  @Test
  void aRunOfWeeksGoesOnOverTheTurnOfTheYear() throws IOException {
    // 2026 has 53 ISO weeks; 1 January 2027 lies in the last of them.
    for (String day : List.of("2026-12-20", "2026-12-24", "2027-01-01", "2027-01-04")) {
      night(day, "1");
    }
    assertEquals(stretch("2026-12-20", "2027-01-04", 4), Records.of(ledger()).runOfWeeks());
  }

  @Test
  void twoEntriesOfADayAreOneNight() throws IOException {
    Journals.entry(folder, "2026-01-01-a", "phase: planking\nhours: 2");
    Journals.entry(folder, "2026-01-01-b", "phase: planking\nhours: 1:30");
    night("2026-01-02", "3:30");
    night("2026-01-03", "3");
    night("2026-01-04", "0");
    Ledger ledger = ledger();
    assertEquals(
        List.of(
            new Night(LocalDate.of(2026, 1, 1), Hours.ofMinutes(210)),
            new Night(LocalDate.of(2026, 1, 2), Hours.ofMinutes(210)),
            new Night(LocalDate.of(2026, 1, 3), Hours.ofMinutes(180))),
        Records.of(ledger).nights());
    assertEquals(
        Optional.of(new Night(LocalDate.of(2026, 1, 1), Hours.ofMinutes(210))),
        Records.of(ledger).longestNight());
    assertEquals(4, ledger.whole().sessions());
    assertEquals(3, ledger.months().get(0).nights());
    assertEquals(Optional.empty(), Records.of(ledger).gap());
  }

  @Test
  void theEarliestOfTheBestMonthsWinsAndEqualsBeatNobody() throws IOException {
    night("2026-01-05", "2");
    night("2026-02-05", "5");
    night("2026-04-05", "5");
    Ledger ledger = ledger();
    assertEquals(
        Optional.of(YearMonth.of(2026, 2)), Records.of(ledger).bestMonth().map(Row::period));
    assertEquals(
        List.of(YearMonth.of(2026, 2), YearMonth.of(2026, 4), YearMonth.of(2026, 1)),
        Records.monthsByRank(ledger).stream().map(Row::period).toList());
    assertEquals(
        List.of(YearMonth.of(2026, 2), YearMonth.of(2026, 4)),
        Records.monthsThatBeat(Records.monthsByRank(ledger), ledger.months().get(0)));
    assertEquals(
        List.of(), Records.monthsThatBeat(Records.monthsByRank(ledger), ledger.months().get(3)));
  }

  @Test
  void aMonthWithoutHoursIsNeverTheBest() throws IOException {
    night("2026-01-05", "0");
    assertEquals(Optional.empty(), Records.of(ledger()).bestMonth());
    assertEquals(Optional.empty(), Records.of(ledger()).longestNight());
  }

  @Test
  void anEmptyJournalHasNoRecords() throws IOException {
    Records records = Records.of(ledger());
    assertEquals(
        new Records(
            Optional.empty(), List.of(), Optional.empty(), Optional.empty(), Optional.empty()),
        records);
  }
}
