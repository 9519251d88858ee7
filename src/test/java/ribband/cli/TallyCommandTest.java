package ribband.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import ribband.cli.InMemory.Run;

/** Small journals added up by hand: the figures below were reckoned on paper. */
class TallyCommandTest {
  @TempDir Path folder;
  private InMemory memory;

  @BeforeEach
  void wherry() throws IOException {
    memory =
        new InMemory(folder)
            .with(
                "project.yaml",
                """
                name: Wherry
                currency: USD
                phases:
                  - {id: lofting, title: Lofting, hours: 40, cost: 120}
                  - {id: planking, title: Planking, hours: 120, cost: 1400}
                  - {id: fairing, title: Fairing}
                carried:
                  through: 2025-12-31
                  sessions: 12
                  hours: {lofting: 44.5}
                  cost: {lofting: 310.20}
                """)
            .with("2026-01-03-frames.md", entry("phase: planking\nhours: 2:45\ncost: 88.20"))
            .with(
                "2026-01-04-boards.md",
                entry("phase: planking\nhours: {planking: 2, fairing: 0:45}"))
            .with("2026-02-01-refund.md", entry("phase: planking\nhours: 4\ncost: -120.50"))
            .with("2026-02-01-second.md", entry("hours: 0:01"))
            .with("2026-04-30.md", entry("phase: fairing\nhours: 4:01"))
            .with("2026-05-01-bill.md", entry("phase: fairing\ncost: 9.99"));
  }

  private static String entry(String keys) {
    return "---\n" + keys + "\n---\n";
  }

  private String tally(String... words) {
    List<String> all = new ArrayList<>(List.of("tally", "-q"));
    all.addAll(List.of(words));
    Run run = memory.run(all.toArray(String[]::new));
    assertEquals("", run.err());
    assertEquals(0, run.code());
    return run.out();
  }

  /** Sums of hundred thousands leave a table wider than the screen, and its months whole. */
  @Test
  void aMonthIsNeverCut() throws IOException {
    InMemory dear =
        new InMemory(Files.createDirectory(folder.resolve("dear")))
            .with("project.yaml", "name: Wherry\ncurrency: HUF\n")
            .with("2026-09-01.md", entry("hours: 2:45\ncost: 412345678.50"))
            .with("2026-10-01.md", entry("cost: 412345678.50"));
    String told = dear.run("tally", "-q").out();
    assertTrue(told.contains("\nSeptember 2026  "), told);
    // Of a month without work there is no rank to tell.
    assertTrue(told.lines().anyMatch(l -> l.startsWith("October 2026") && l.endsWith(" –")), told);
  }

  @Test
  void monthsStandWithZerosBetweenAndTiesShareARank() {
    assertEquals(
        """
        month,sessions,hours,cost,hours_to_date,cost_to_date,rank_by_hours
        2026-01,2,5.5,88.20,50,398.40,1
        2026-02,2,4.0167,-120.50,54.0167,277.90,2
        2026-03,0,0,0.00,54.0167,277.90,4
        2026-04,1,4.0167,0.00,58.0333,277.90,2
        2026-05,0,0,9.99,58.0333,287.89,4
        """,
        tally("--format", "csv"));
  }

  @Test
  void aYearAddsItsMonths() {
    assertEquals(
        """
        year,sessions,hours,cost,hours_to_date,cost_to_date,rank_by_hours
        2026,5,13.5333,-22.31,58.0333,287.89,1
        """,
        tally("--by", "year", "--format", "csv"));
  }

  @Test
  void weeksAreThoseOfIso8601() throws IOException {
    memory.with("2027-01-01.md", entry("phase: fairing\nhours: 1"));
    String told =
        tally("--by", "week", "--format", "csv", "--from", "2026-12-21", "--today", "2028-01-01");
    assertEquals(
        """
        week,sessions,hours,cost,hours_to_date,cost_to_date,rank_by_hours
        2026-W53,1,1,0.00,1,0.00,1
        """,
        told);
    assertEquals(
        """
        week,sessions,hours,cost,hours_to_date,cost_to_date,rank_by_hours
        2026-W01,2,5.5,88.20,5.5,88.20,1
        2026-W02,0,0,0.00,5.5,88.20,3
        2026-W03,0,0,0.00,5.5,88.20,3
        2026-W04,0,0,0.00,5.5,88.20,3
        2026-W05,2,4.0167,-120.50,9.5167,-32.30,2
        """,
        tally("--by", "week", "--format", "csv", "--to", "2026-03", "--today", "2028-01-01"));
  }

  @Test
  void phasesStandInTheirOrderWithUnsortedLast() {
    assertEquals(
        """
        phase,sessions,hours,cost,hours_planned,cost_planned
        lofting,0,44.5,310.20,40,120.00
        planking,3,8.75,-32.30,120,1400.00
        fairing,2,4.7667,9.99,,
        unsorted,1,0.0167,0.00,,
        """,
        tally("--by", "phase", "--format", "csv"));
  }

  @Test
  void aSelectionLeavesCarriedWorkOutAndZeroPhasesIn() {
    assertEquals(
        """
        phase,sessions,hours,cost,hours_planned,cost_planned
        lofting,0,0,0.00,40,120.00
        planking,2,4.75,88.20,120,1400.00
        fairing,1,0.75,0.00,,
        """,
        tally("--by", "phase", "--to", "2026-01", "--format", "csv"));
  }

  @Test
  void entriesHaveNoRank() {
    assertEquals(
        """
        entry,sessions,hours,cost,hours_to_date,cost_to_date
        2026-01-03-frames,1,2.75,88.20,47.25,398.40
        2026-01-04-boards,1,2.75,0.00,50,398.40
        2026-02-01-refund,1,4,-120.50,54,277.90
        2026-02-01-second,1,0.0167,0.00,54.0167,277.90
        2026-04-30,1,4.0167,0.00,58.0333,277.90
        2026-05-01-bill,0,0,9.99,58.0333,287.89
        """,
        tally("--by", "entry", "--format", "csv"));
  }

  @Test
  void recordsAreARowEach() throws IOException {
    pieces();
    assertEquals(
        """
        record,figure,unit,from,to,what
        longest run of days,2,days,2026-01-03,2026-01-04,
        longest run of weeks,1,weeks,2026-01-03,2026-01-04,
        longest gap without work,87,days,2026-02-02,2026-04-29,
        best month,5.5,hours,2026-01-01,2026-01-31,2026-01
        longest night,4.0167,hours,2026-02-01,2026-02-01,
        largest purchase,412.50,USD,2026-05-02,2026-05-02,"ply, 4 mm"
        most pieces in a night,3,pieces,2026-05-03,2026-05-03,strakes
        """,
        tally("--by", "record", "--format", "csv"));
    assertEquals(
        """
        [
          {"record": "longest run of days", "figure": 1, "unit": "days", "from": "2026-02-01", "to": "2026-02-01", "what": null},
          {"record": "longest run of weeks", "figure": 1, "unit": "weeks", "from": "2026-02-01", "to": "2026-02-01", "what": null},
          {"record": "best month", "figure": 4, "unit": "hours", "from": "2026-02-01", "to": "2026-02-28", "what": "2026-02"},
          {"record": "longest night", "figure": 4, "unit": "hours", "from": "2026-02-01", "to": "2026-02-01", "what": null},
          {"record": "largest purchase", "figure": 412.50, "unit": "USD", "from": "2026-05-02", "to": "2026-05-02", "what": "ply, 4 mm"},
          {"record": "most pieces in a night", "figure": 3, "unit": "pieces", "from": "2026-05-03", "to": "2026-05-03", "what": "strakes"}
        ]
        """,
        tally("--by", "record", "--phase", "planking", "--from", "2026-02", "--format", "json"));
  }

  /** A private purchase and private pieces: the builder's own terminal tells them. */
  private void pieces() throws IOException {
    memory
        .with(
            "project.yaml",
            """
            name: Wherry
            currency: USD
            phases: [lofting, planking, fairing]
            pieces: {strakes: {total: 16, phase: planking}}
            """)
        .with(
            "2026-05-02-ply.md",
            entry(
                "phase: planking\nprivate: true\nmaterials:\n  bought:\n"
                    + "    - {item: 'ply, 4 mm', cost: 412.50}"))
        .with("2026-05-03-a.md", entry("phase: planking\npieces: {strakes: 4}"))
        .with("2026-05-03-b.md", entry("private: true\npieces: {strakes: -1}"));
  }

  @Test
  void aTableSaysRecordsInWords() throws IOException {
    pieces();
    assertEquals(
        """
        Records of Wherry

        longest run of days       2 days, 3 January 2026 to 4 January 2026
        longest run of weeks      1 week, 3 January 2026 to 4 January 2026
        longest gap without work  87 days, 2 February 2026 to 29 April 2026
        best month                5½ hours, January 2026
        longest night             4:01 hours, 1 February 2026
        largest purchase          $412.50, ply, 4 mm, 2 May 2026
        most pieces in a night    3 strakes, 3 May 2026
        """,
        tally("--by", "record"));
    assertEquals(
        """
        Records of Wherry, Fairing, through 4 January 2026

        longest run of days   1 day, 4 January 2026
        longest run of weeks  1 week, 4 January 2026
        best month            ¾ hour, January 2026
        longest night         ¾ hour, 4 January 2026
        """,
        tally("--by", "record", "--phase", "fairing", "--to", "2026-01-04"));
  }

  @Test
  void whereNothingIsHeldThereIsNoRecord() {
    assertEquals(
        "record,figure,unit,from,to,what\n",
        tally("--by", "record", "--from", "2027", "--format", "csv"));
    assertEquals("[]\n", tally("--by", "record", "--from", "2027", "--format", "json"));
    assertEquals(
        "Records of Wherry, from 1 January 2027\n\nnothing yet\n",
        tally("--by", "record", "--from", "2027"));
  }

  @Test
  void jsonHasNumbersWithAllTheirPlacesAndNullForNothing() {
    assertEquals(
        """
        [
          {"phase": "lofting", "sessions": 0, "hours": 44.5, "cost": 310.20, "hours_planned": 40, "cost_planned": 120.00},
          {"phase": "planking", "sessions": 3, "hours": 8.75, "cost": -32.30, "hours_planned": 120, "cost_planned": 1400.00},
          {"phase": "fairing", "sessions": 2, "hours": 4.7667, "cost": 9.99, "hours_planned": null, "cost_planned": null},
          {"phase": "unsorted", "sessions": 1, "hours": 0.0167, "cost": 0.00, "hours_planned": null, "cost_planned": null}
        ]
        """,
        tally("--by", "phase", "--format", "json"));
  }

  @Test
  void aPhaseKeepsItsCarriedShareAndPassesOverOtherEntries() {
    assertEquals(
        """
        month,sessions,hours,cost,hours_to_date,cost_to_date,rank_by_hours
        2026-01,2,4.75,88.20,4.75,88.20,1
        2026-02,1,4,-120.50,8.75,-32.30,2
        """,
        tally("--phase", "Planking", "--format", "csv"));
    assertEquals(
        """
        phase,sessions,hours,cost,hours_planned,cost_planned
        lofting,0,44.5,310.20,40,120.00
        """,
        tally("--phase", "lofting", "--by", "phase", "--format", "csv"));
  }

  @Test
  void aTableSaysMonthsToAPerson() {
    assertEquals(
        """
        Wherry by month

                                                    hours     cost      rank
        month          sessions  hours      cost  to date  to date  by hours
        ────────────────────────────────────────────────────────────────────
        carried in           12    44½   $310.20      44½  $310.20
        January 2026          2     5½    $88.20       50  $398.40         1
        February 2026         2   4:01  −$120.50    54:01  $277.90         2
        March 2026            0      0     $0.00    54:01  $277.90         –
        April 2026            1   4:01     $0.00    58:02  $277.90         2
        May 2026              0      0     $9.99    58:02  $287.89         –
        ────────────────────────────────────────────────────────────────────
        total                17  58:02   $287.89
        """,
        tally());
  }

  @Test
  void aTableOfPhasesAddsUpThePlan() {
    assertEquals(
        """
        Wherry by phase

                                              hours       cost
        phase     sessions  hours     cost  planned    planned
        ──────────────────────────────────────────────────────
        Lofting          0    44½  $310.20       40    $120.00
        Planking         3     8¾  −$32.30      120  $1,400.00
        Fairing          2   4:46    $9.99
        Unsorted         1   0:01    $0.00
        ──────────────────────────────────────────────────────
        total               58:02  $287.89      160  $1,520.00
        """,
        tally("--by", "phase"));
  }

  @Test
  void aLongTitleGivesWayToTheScreen() throws IOException {
    memory.with(
        "2026-05-02-x.md",
        entry(
            "title: The whole long story of a plank that would not bend at all\nhours: 1\nphase: fairing"));
    String told = tally("--by", "entry");
    assertEquals(80, told.lines().mapToInt(String::length).max().orElseThrow());
    assertEquals(
        "2026-05-02  The whole long story o…         1      1     $0.00    59:02  $287.89",
        told.lines().filter(line -> line.startsWith("2026-05-02")).findFirst().orElseThrow());
  }

  @Test
  void moneyHasThePlacesOfItsCurrency() throws IOException {
    for (var one : java.util.Map.of("JPY", "1200", "KWD", "1.250", "EUR", "1.50").entrySet()) {
      Path other = folder.resolve(one.getKey());
      InMemory there =
          new InMemory(other)
              .with("project.yaml", "currency: " + one.getKey() + "\nphases: [planking]\n")
              .with("2026-01-01.md", entry("phase: planking\ncost: " + one.getValue()));
      assertEquals(
          "year,sessions,hours,cost,hours_to_date,cost_to_date,rank_by_hours\n2026,0,0,V,0,V,1\n"
              .replace("V", one.getValue()),
          there.run("tally", "--by", "year", "--format", "csv").out());
    }
  }

  @Test
  void withoutACurrencyMoneyIsZeroInDataAndLeftOutOfATable() throws IOException {
    InMemory plain =
        new InMemory(folder.resolve("plain"))
            .with("project.yaml", "name: Dory\n")
            .with("2026-01-01.md", entry("phase: Planking\nhours: 20 min"));
    assertEquals(
        """
        phase,sessions,hours,cost,hours_planned,cost_planned
        planking,1,0.3333,0,,
        """,
        plain.run("tally", "--by", "phase", "--format", "csv").out());
    assertEquals(
        """
        Dory by year

                                  hours      rank
        year   sessions  hours  to date  by hours
        ─────────────────────────────────────────
        2026          1   0:20     0:20         1
        ─────────────────────────────────────────
        total         1   0:20
        """,
        plain.run("tally", "--by", "year").out());
  }

  @Test
  void nothingYetIsAHeadAlone() {
    assertEquals(
        "month,sessions,hours,cost,hours_to_date,cost_to_date,rank_by_hours\n",
        tally("--from", "2027", "--format", "csv"));
    assertEquals("[]\n", tally("--from", "2027", "--format", "json"));
    assertEquals("Wherry by month, from 1 January 2027\n\nnothing yet\n", tally("--from", "2027"));
    assertEquals(
        "Wherry by month, from 1 January 2027 through 31 March 2027\n\nnothing yet\n",
        tally("--from", "2027", "--to", "2027-03"));
  }

  @Test
  void wrongWordsAreAnsweredWithTheRightOnes() {
    refused("--by \"mnth\" is nothing to add up by; did you mean \"month\"?", "--by", "mnth");
    refused("--format \"jsn\" is no format; did you mean \"json\"?", "--format", "jsn");
    refused(
        "--phase \"plankng\" is not among the phases; did you mean \"planking\"?",
        "--phase",
        "plankng");
    refused(
        "--from \"March\" is no day, month or year; write it as 2026-03-14, 2026-03 or 2026",
        "--from",
        "March");
    refused("--to \"2026-13\" has no such month; months go from 01 to 12", "--to", "2026-13");
    refused(
        "--to \"2026-02-29\" is not in the calendar; that month ends with 2026-02-28",
        "--to",
        "2026-02-29");
    refused(
        "--from 2026-05 is later than --to 2026-04; swap them",
        "--from",
        "2026-05",
        "--to",
        "2026-04");
  }

  private void refused(String line, String... words) {
    List<String> all = new ArrayList<>(List.of("tally", "-q"));
    all.addAll(List.of(words));
    assertEquals(new Run(2, "", "ribband: " + line + "\n"), memory.run(all.toArray(String[]::new)));
  }

  @Test
  void noFigureIsToldOfAJournalWithErrors() throws IOException {
    memory.with("2026-05-03.md", entry("hours: 2;45"));
    assertEquals(
        new Run(
            1,
            "",
            """
            2026-05-03.md:2:8: error: hours "2;45" is not a length of time; write 2:45, 2.75 or 2 3/4
            1 error, 1 warning in 7 entries, no figure is told
            """),
        memory.run("tally", "-q"));
  }
}
