package ribband.telling;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static ribband.telling.Teal.unpaid;
import static ribband.telling.Teal.usd;
import static ribband.telling.Teal.worked;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import ribband.ledger.Cell;
import ribband.telling.WorkTables.Fact;
import ribband.telling.WorkTables.MonthLine;
import ribband.telling.WorkTables.PhaseLine;

/** The tables of work, whole, against sums made by hand. */
class WorkTablesTest {
  @TempDir private Path scratch;
  private Teal teal;

  @BeforeEach
  void lay() {
    teal = new Teal(scratch.resolve("journal"));
  }

  private Teal carriedOver() throws IOException {
    return teal.with(
            "project.yaml",
            """
            name: Teal
            currency: USD
            started: 2026-01-02
            phases:
              - {id: moulds, title: Moulds and strongback, hours: 12, cost: 80}
              - {id: planking, title: Planking}
            carried:
              through: 2026-01-10
              sessions: 3
              hours: {moulds: 7.5}
              cost: {moulds: 61.20}
            """)
        .entry("2026-01-15-strongback", "phase: moulds\nhours: 2:45\ncost: 24.50\n")
        .entry("2026-03-14-plank", "phase: planking\nhours: 3:20\ncost: -10.00\n");
  }

  @Test
  void datesAndSumsOfAJournalThatCarriesWorkOver() throws IOException {
    assertEquals(
        List.of(
            new Fact("Begun", "2 January 2026"),
            new Fact("First night with hours", "15 January 2026"),
            new Fact("Last night with hours", "14 March 2026"),
            new Fact("Nights with hours", "2"),
            new Fact("Sessions", "5, 3 of them before this journal"),
            new Fact("Hours in all", "13:35 hours"),
            new Fact("Spent in all", "$75.70"),
            new Fact("Of it before this journal", "7½ hours and $61.20, through 10 January 2026")),
        carriedOver().work().dates());
  }

  @Test
  void phasesStandBesideTheirPlan() throws IOException {
    assertEquals(
        List.of(
            new PhaseLine(
                "Moulds and strongback",
                new ColumnHours("10.25", "10:15"),
                "12:00",
                usd(8570),
                "$80.00"),
            new PhaseLine("Planking", worked(200), "", usd(-1000), "")),
        carriedOver().work().phases());
    assertEquals(
        new WorkTables.Planned("not all planned", "not all planned"),
        carriedOver().work().planned());
  }

  @Test
  void monthsRunOnFromWhatWasBeforeAndAnEmptyOneHasItsLine() throws IOException {
    assertEquals(
        List.of(
            month("", "Before this journal", 3, worked(450), usd(6120), worked(450), usd(6120)),
            month("2026-01", "January 2026", 1, worked(165), usd(2450), worked(615), usd(8570)),
            month("2026-02", "February 2026", 0, worked(0), usd(0), worked(615), usd(8570)),
            month("2026-03", "March 2026", 1, worked(200), usd(-1000), worked(815), usd(7570))),
        carriedOver().work().months());
  }

  private static MonthLine month(
      String iso,
      String title,
      int sessions,
      ColumnHours hours,
      Cell cost,
      ColumnHours hoursToDate,
      Cell costToDate) {
    return new MonthLine(
        iso, title, new Cell.Count(sessions), hours, cost, hoursToDate, costToDate);
  }

  @Test
  void aJournalWithoutMoneyOrWorkBeforeTellsOfNeither() throws IOException {
    teal.with("project.yaml", "name: Teal\nphases: [moulds]\n")
        .entry("2026-01-15-a", "phase: moulds\nhours: 2\n");
    assertEquals(
        List.of(
            new Fact("First night with hours", "15 January 2026"),
            new Fact("Last night with hours", "15 January 2026"),
            new Fact("Nights with hours", "1"),
            new Fact("Sessions", "1"),
            new Fact("Hours in all", "2 hours")),
        teal.work().dates());
    assertEquals(
        List.of(month("2026-01", "January 2026", 1, worked(120), unpaid(), worked(120), unpaid())),
        teal.work().months());
  }

  @Test
  void workBeforeIsToldWithoutMoneyWhereThereIsNone() throws IOException {
    teal.with("project.yaml", "name: Teal\nphases: [moulds]\ncarried: {hours: {moulds: 7.5}}\n");
    assertEquals(
        List.of(
            new Fact("Nights with hours", "0"),
            new Fact("Sessions", "0"),
            new Fact("Hours in all", "7½ hours"),
            new Fact("Of it before this journal", "7½ hours")),
        teal.work().dates());
  }

  @Test
  void ofAPrivateNightTheMonthAloneIsTold() throws IOException {
    teal.with("project.yaml", "name: Teal\nphases: [moulds]\n")
        .entry("2026-01-15-a", "phase: moulds\nhours: 2\nprivate: true\n")
        // Public, but no work is told of on that day.
        .entry("2026-01-15-b", "title: Words alone\n")
        .entry("2026-02-03-c", "phase: moulds\nhours: 1\n")
        .entry("2026-02-03-d", "phase: moulds\nhours: 1\nprivate: true\n");
    assertEquals(
        List.of(
            new Fact("First night with hours", "January 2026"),
            new Fact("Last night with hours", "3 February 2026"),
            new Fact("Nights with hours", "2"),
            new Fact("Sessions", "3"),
            new Fact("Hours in all", "4 hours")),
        teal.work().dates());
  }
}
