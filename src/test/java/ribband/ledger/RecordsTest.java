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
  void theEarliestOfTheBestMonthsWins() throws IOException {
    night("2026-01-05", "2");
    night("2026-02-05", "5");
    night("2026-04-05", "5");
    Ledger ledger = ledger();
    assertEquals(
        Optional.of(YearMonth.of(2026, 2)), Records.of(ledger).bestMonth().map(Row::period));
    assertEquals(
        List.of(YearMonth.of(2026, 2), YearMonth.of(2026, 4), YearMonth.of(2026, 1)),
        Records.byRank(ledger.months()).stream().map(Row::period).toList());
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
            Optional.empty(),
            List.of(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            List.of(),
            Optional.empty()),
        records);
    assertEquals(Optional.empty(), records.dearest());
  }

  private static final String PIECES =
      """
      currency: USD
      phases: [planking, fairing]
      pieces:
        strakes: {total: 16, phase: planking}
        plugs: {total: 900}
      """;

  private static Selection phase(String id) {
    return new Selection(Optional.empty(), Optional.empty(), Optional.of(id));
  }

  private static String said(Bought bought) {
    return bought.entry().date() + " " + bought.what() + " " + bought.amount().minor();
  }

  @Test
  void theDearestPurchasesComeFirstAndTheEarliestOfEquals() throws IOException {
    Journals.entry(
        folder,
        "2026-01-05-items",
        "phase: planking\ncost: 500\nmaterials:\n  bought:\n"
            + "    - {item: ply, cost: 90}\n    - {item: returned, cost: -300}\n"
            + "    - {item: free, cost: 0}");
    Journals.entry(folder, "2026-01-06-vise", "title: A vise\nphase: planking\ncost: 90.01");
    Journals.entry(folder, "2026-01-07-again", "phase: planking\ncost: 90.01\nprivate: true");
    Journals.entry(folder, "2026-01-08-refund", "phase: planking\ncost: -999");
    // The 710 left beside the items of the first night are no purchase.
    assertEquals(
        List.of("2026-01-06 A vise 9001", "2026-01-07 Again 9001", "2026-01-05 ply 9000"),
        Records.of(ledger()).bought().stream().map(RecordsTest::said).toList());
    assertEquals(
        Optional.of("2026-01-06 A vise 9001"),
        Records.of(ledger()).dearest().map(RecordsTest::said));
  }

  @Test
  void aPurchaseCountsForItsOwnPhaseAndDay() throws IOException {
    Journals.write(folder, "project.yaml", PIECES);
    Journals.entry(folder, "2026-01-05", "cost: {planking: 70, fairing: 80}");
    Journals.entry(
        folder,
        "2026-01-06",
        "phase: fairing\nmaterials: {bought: [{item: ply, cost: 90, phase: planking}]}");
    Ledger planking = Ledger.of(Journals.read(folder), phase("planking"));
    assertEquals(
        List.of("2026-01-06 ply 9000", "2026-01-05 5 January 2026 7000"),
        planking.bought().stream().map(RecordsTest::said).toList());
    Selection first =
        new Selection(Optional.empty(), Optional.of(LocalDate.of(2026, 1, 5)), Optional.empty());
    assertEquals(
        List.of("2026-01-05 5 January 2026 8000", "2026-01-05 5 January 2026 7000"),
        Ledger.of(Journals.read(folder), first).bought().stream().map(RecordsTest::said).toList());
  }

  @Test
  void mostPiecesAreOfOneKindOnOneDayLessThoseTakenBack() throws IOException {
    Journals.write(folder, "project.yaml", PIECES);
    Journals.entry(folder, "2026-01-05-a", "phase: planking\npieces: {strakes: 4}");
    Journals.entry(folder, "2026-01-05-b", "phase: planking\npieces: {Strakes: -1, plugs: 2}");
    Journals.entry(folder, "2026-01-06", "phase: planking\npieces: {plugs: 3, strakes: 3}");
    Journals.entry(folder, "2026-01-07", "pieces: {plugs: -3}");
    Ledger ledger = ledger();
    assertEquals(
        List.of(
            new Made(LocalDate.of(2026, 1, 5), "strakes", 3),
            new Made(LocalDate.of(2026, 1, 5), "plugs", 2),
            new Made(LocalDate.of(2026, 1, 6), "plugs", 3),
            new Made(LocalDate.of(2026, 1, 6), "strakes", 3),
            new Made(LocalDate.of(2026, 1, 7), "plugs", -3)),
        ledger.made());
    assertEquals(
        Optional.of(new Made(LocalDate.of(2026, 1, 5), "strakes", 3)),
        Records.of(ledger).mostPieces());
  }

  /** Where its kind has none, a piece is of its entry's phase. */
  @Test
  void piecesCountForThePhaseOfTheirKind() throws IOException {
    Journals.write(folder, "project.yaml", PIECES);
    Journals.entry(folder, "2026-01-05", "phase: fairing\npieces: {strakes: 4, plugs: 9}");
    Journals.entry(folder, "2026-01-06", "pieces: {plugs: 20}");
    Journals.entry(folder, "2026-01-07", "phase: planking\npieces: {plugs: 1, strakes: 1}");
    for (var most :
        java.util.Map.of(
                "planking", new Made(LocalDate.of(2026, 1, 5), "strakes", 4),
                "fairing", new Made(LocalDate.of(2026, 1, 5), "plugs", 9),
                "unsorted", new Made(LocalDate.of(2026, 1, 6), "plugs", 20))
            .entrySet()) {
      Ledger ledger = Ledger.of(Journals.read(folder), phase(most.getKey()));
      assertEquals(Optional.of(most.getValue()), Records.of(ledger).mostPieces(), most.getKey());
    }
  }

  @Test
  void piecesTakenBackAreNoRecord() throws IOException {
    Journals.write(folder, "project.yaml", PIECES);
    Journals.entry(folder, "2026-01-06", "phase: planking\npieces: {plugs: 1}");
    Journals.entry(folder, "2026-01-07", "phase: planking\npieces: {plugs: -1}");
    Journals.entry(folder, "2026-01-08-a", "phase: planking\npieces: {strakes: 1}");
    Journals.entry(folder, "2026-01-08-b", "phase: planking\npieces: {strakes: -1}");
    Selection later =
        new Selection(Optional.of(LocalDate.of(2026, 1, 7)), Optional.empty(), Optional.empty());
    assertEquals(
        Optional.empty(), Records.of(Ledger.of(Journals.read(folder), later)).mostPieces());
  }
}
