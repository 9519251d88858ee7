package ribband.ledger;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import ribband.journal.Journal;
import ribband.ledger.Cell.Blank;
import ribband.ledger.Cell.Count;
import ribband.measure.Unreadable;

/** A whole table of each kind, as data files have it and as a person reads it. */
class TallySheetTest {
  @TempDir Path folder;
  private Journal journal;

  @BeforeEach
  void writeAJournal() throws IOException {
    Journals.write(
        folder,
        "project.yaml",
        """
        currency: USD
        phases:
          - {id: planking, title: Planking, hours: 120, cost: 1400}
          - {id: fairing, title: Fairing and filling}
          - {id: varnish, title: Varnish, hours: 30, cost: 90.50}
        carried: {through: 2025-12-31, sessions: 2, hours: {planking: 4.5}, cost: {planking: 20}}
        """);
    Journals.entry(folder, "2026-12-30-garboard", "phase: planking\nhours: 2:45\ncost: 1200");
    Journals.entry(folder, "2027-01-01-filler", "hours: {planking: 1, fairing: 1:10}");
    Journals.entry(folder, "2027-01-04-refund", "phase: fairing\nhours: 3\ncost: -20");
    journal = Journals.read(folder);
  }

  private Sheet sheet(By by) {
    return TallySheet.of(Ledger.of(journal), journal.project().currency(), by, MoneyColumns.SHOWN);
  }

  private static String text(Sheet sheet, Function<Cell, String> cell) {
    return Stream.concat(
            Stream.of(sheet.columns()),
            Stream.of(sheet.opening().stream(), sheet.rows().stream(), sheet.total().stream())
                .flatMap(rows -> rows)
                .map(row -> row.stream().map(cell).toList()))
        .map(row -> String.join(" | ", row).stripTrailing() + "\n")
        .collect(Collectors.joining());
  }

  @Test
  void monthsAsData() {
    assertEquals(
        """
        month | sessions | hours | cost | hours_to_date | cost_to_date | rank_by_hours
        carried in | 2 | 4.5 | 20.00 | 4.5 | 20.00 |
        2026-12 | 1 | 2.75 | 1200.00 | 7.25 | 1220.00 | 2
        2027-01 | 2 | 5.1667 | -20.00 | 12.4167 | 1200.00 | 1
        total | 5 | 12.4167 | 1200.00 |  |  |
        """,
        text(sheet(By.MONTH), Cell::data));
  }

  @Test
  void monthsAsSaid() {
    assertEquals(
        """
        month | sessions | hours | cost | hours_to_date | cost_to_date | rank_by_hours
        carried in | 2 | 4½ | $20.00 | 4½ | $20.00 |
        December 2026 | 1 | 2¾ | $1,200.00 | 7¼ | $1,220.00 | 2
        January 2027 | 2 | 5:10 | −$20.00 | 12:25 | $1,200.00 | 1
        total | 5 | 12:25 | $1,200.00 |  |  |
        """,
        text(sheet(By.MONTH), Cell::said));
  }

  @Test
  void yearsAndWeeksHaveTheSameColumns() {
    assertEquals(
        """
        year | sessions | hours | cost | hours_to_date | cost_to_date | rank_by_hours
        carried in | 2 | 4.5 | 20.00 | 4.5 | 20.00 |
        2026 | 1 | 2.75 | 1200.00 | 7.25 | 1220.00 | 2
        2027 | 2 | 5.1667 | -20.00 | 12.4167 | 1200.00 | 1
        total | 5 | 12.4167 | 1200.00 |  |  |
        """,
        text(sheet(By.YEAR), Cell::data));
    assertEquals(
        """
        week | sessions | hours | cost | hours_to_date | cost_to_date | rank_by_hours
        carried in | 2 | 4½ | $20.00 | 4½ | $20.00 |
        2026-W53, from 28 Dec | 2 | 4:55 | $1,200.00 | 9:25 | $1,220.00 | 1
        2027-W01, from 4 Jan | 1 | 3 | −$20.00 | 12:25 | $1,200.00 | 2
        total | 5 | 12:25 | $1,200.00 |  |  |
        """,
        text(sheet(By.WEEK), Cell::said));
  }

  @Test
  void entriesHaveNoRank() {
    assertEquals(
        """
        entry | sessions | hours | cost | hours_to_date | cost_to_date
        carried in | 2 | 4.5 | 20.00 | 4.5 | 20.00
        2026-12-30-garboard | 1 | 2.75 | 1200.00 | 7.25 | 1220.00
        2027-01-01-filler | 1 | 2.1667 | 0.00 | 9.4167 | 1220.00
        2027-01-04-refund | 1 | 3 | -20.00 | 12.4167 | 1200.00
        total | 5 | 12.4167 | 1200.00 |  |
        """,
        text(sheet(By.ENTRY), Cell::data));
    assertEquals("2027-01-04  Refund", sheet(By.ENTRY).rows().get(2).get(0).said());
  }

  @Test
  void recordsAreARowEach() throws IOException {
    String project = Files.readString(folder.resolve("project.yaml"), StandardCharsets.UTF_8);
    Journals.write(folder, "project.yaml", project + "pieces: {strakes: {total: 16}}\n");
    Journals.entry(
        folder, "2027-01-05-night", "phase: planking\nhours: 0:50\npieces: {strakes: 3}");
    journal = Journals.read(folder);
    assertEquals(
        """
        record | figure | unit | from | to | what
        longest run of days | 2 | days | 2027-01-04 | 2027-01-05 |
        longest run of weeks | 2 | weeks | 2026-12-30 | 2027-01-05 |
        longest gap without work | 2 | days | 2027-01-02 | 2027-01-03 |
        best month | 6 | hours | 2027-01-01 | 2027-01-31 | 2027-01
        longest night | 3 | hours | 2027-01-04 | 2027-01-04 |
        largest purchase | 1200.00 | USD | 2026-12-30 | 2026-12-30 | Garboard
        most pieces in a night | 3 | pieces | 2027-01-05 | 2027-01-05 | strakes
        """,
        text(sheet(By.RECORD), Cell::data));
    Sheet hidden =
        TallySheet.of(
            Ledger.of(journal), journal.project().currency(), By.RECORD, MoneyColumns.HIDDEN);
    assertEquals(
        List.of("longest night", "most pieces in a night"),
        hidden.rows().subList(4, 6).stream().map(row -> row.get(0).data()).toList());
    assertEquals(6, hidden.rows().size());
  }

  /** Sessions in two phases, and carried ones, would not add up: their total stays blank. */
  @Test
  void phasesStandBesideTheirPlan() {
    assertEquals(
        """
        phase | sessions | hours | cost | hours_planned | cost_planned
        planking | 2 | 8.25 | 1220.00 | 120 | 1400.00
        fairing | 2 | 4.1667 | -20.00 |  |
        varnish | 0 | 0 | 0.00 | 30 | 90.50
        total |  | 12.4167 | 1200.00 | 150 | 1490.50
        """,
        text(sheet(By.PHASE), Cell::data));
    assertEquals("Fairing and filling", sheet(By.PHASE).rows().get(1).get(0).said());
  }

  @Test
  void sessionsOfPhasesAreAddedUpWhereNoneIsSharedOrCarried() {
    Selection lastDays =
        new Selection(
            Optional.of(LocalDate.of(2027, 1, 2)), Optional.empty(), Optional.of("fairing"));
    Sheet sheet =
        TallySheet.of(
            Ledger.of(journal, lastDays),
            journal.project().currency(),
            By.PHASE,
            MoneyColumns.SHOWN);
    assertEquals(
        """
        phase | sessions | hours | cost | hours_planned | cost_planned
        fairing | 1 | 3 | -20.00 |  |
        total | 1 | 3 | -20.00 |  |
        """,
        text(sheet, Cell::data));
  }

  @Test
  void withNothingCarriedTheSheetHasNoOpening() {
    Selection later =
        new Selection(Optional.of(LocalDate.of(2027, 1, 2)), Optional.empty(), Optional.empty());
    Sheet sheet =
        TallySheet.of(
            Ledger.of(journal, later), journal.project().currency(), By.MONTH, MoneyColumns.SHOWN);
    assertEquals(
        """
        month | sessions | hours | cost | hours_to_date | cost_to_date | rank_by_hours
        2027-01 | 1 | 3 | -20.00 | 3 | -20.00 | 1
        total | 1 | 3 | -20.00 |  |  |
        """,
        text(sheet, Cell::data));
  }

  /** What is no number may not be set as one, nor summed by who reads the file. */
  @Test
  void wordsAndBlanksAreNoNumbers() {
    List<Cell> december = sheet(By.MONTH).rows().get(0);
    assertEquals(
        List.of(false, true, true, true, true, true, true),
        december.stream().map(Cell::isNumber).toList());
    assertEquals(false, new Blank().isNumber());
  }

  @ParameterizedTest
  @CsvSource({
    "month, MONTH",
    "' Year ', YEAR",
    "PHASE, PHASE",
    "week, WEEK",
    "entry, ENTRY",
    "record, RECORD"
  })
  void whatIsAddedUpByIsReadInAnyCase(String written, By by) throws Unreadable {
    assertEquals(by, By.read(written));
  }

  @Test
  void whatNothingIsAddedUpByIsAnsweredWithTheNearest() {
    Unreadable refused = assertThrows(Unreadable.class, () -> By.read("moth"));
    assertEquals("is nothing to add up by; did you mean \"month\"?", refused.getMessage());
  }

  @Test
  void openingAndTotalFitTheColumnsToo() {
    List<Cell> one = List.of(new Count(1));
    List<Cell> two = List.of(new Count(1), new Blank());
    List<String> columns = List.of("a", "b");
    Sheet whole = new Sheet(columns, Optional.of(two), List.of(two), Optional.of(two));
    assertEquals(List.of(two), whole.rows());
    assertEquals(
        "a row does not fit the columns [a, b]",
        assertThrows(
                IllegalArgumentException.class,
                () -> new Sheet(columns, Optional.of(one), List.of(two), Optional.of(two)))
            .getMessage());
    assertThrows(
        IllegalArgumentException.class,
        () -> new Sheet(columns, Optional.of(two), List.of(two), Optional.of(one)));
  }
}
