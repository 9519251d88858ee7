package ribband.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import ribband.cli.InMemory.Run;

/** The command as a builder runs it: what it tells, what it writes, what it leaves alone. */
class BringCommandTest {
  private static final String PAST =
      """
      Date,Hours,Stage,Cost,What
      2024-05-03,2:45,Lofting and moulds,"1,234.50",Lofted the stem
      2024-05-04,1 1/2,planking,,"# two lines
      - of words"
      2024-05-06,,planking,-12.00,
      """;

  @TempDir Path folder;

  private InMemory here() {
    return new InMemory(folder);
  }

  @BeforeEach
  void aJournal() throws IOException {
    here()
        .with(
            "boat/project.yaml",
            "name: Teal\ncurrency: USD\nphases:\n  - {id: lofting, title: Lofting and moulds}\n"
                + "  - planking\n")
        .with("boat/2025/2025-01-02-first.md", "---\nphase: lofting\nhours: 1\n---\nBegun.\n")
        .with("past.csv", PAST);
  }

  private List<String> files() throws IOException {
    try (Stream<Path> files = Files.walk(folder.resolve("boat"))) {
      return files
          .filter(Files::isRegularFile)
          .map(file -> folder.resolve("boat").relativize(file).toString())
          .sorted()
          .toList();
    }
  }

  private String text(String file) throws IOException {
    return Files.readString(folder.resolve("boat").resolve(file), StandardCharsets.UTF_8);
  }

  @Test
  void withoutWriteItTellsTheTotalsAndWritesNothing() throws IOException {
    assertEquals(
        new Run(
            0,
            """
            past.csv: 3 rows from 3 May 2024 through 6 May 2024
              took column A "Date" for the date, B "Hours" for the hours, C "Stage" for the
                phase, D "Cost" for the cost and E "What" for the note

                                 hours    hours  hours    cost       cost       cost
            phase               before  brought  after  before    brought      after
            ────────────────────────────────────────────────────────────────────────
            Lofting and moulds       1       2¾     3¾   $0.00  $1,234.50  $1,234.50
            Planking                 0       1½     1½   $0.00    −$12.00    −$12.00
            ────────────────────────────────────────────────────────────────────────
            total                    1       4¼     5¼   $0.00  $1,222.50  $1,222.50

            sessions: 1 before, 2 brought, 3 after

            3 entries:
              2024/2024-05-03-lofting.md
              2024/2024-05-04-planking.md
              2024/2024-05-06-planking.md
            nothing is written yet; add --write
            """,
            ""),
        here().run("bring", "past.csv", "boat"));
    assertEquals(List.of("2025/2025-01-02-first.md", "project.yaml"), files());
  }

  @Test
  void withWriteEachSessionIsAnEntry() throws IOException {
    Run run = here().run("bring", "past.csv", "boat", "--write");
    assertEquals(0, run.code(), run.err());
    assertTrue(
        run.out().endsWith("written, and the journal adds up to what stands above\n"), run.out());
    assertEquals(
        List.of(
            "2024/2024-05-03-lofting.md",
            "2024/2024-05-04-planking.md",
            "2024/2024-05-06-planking.md",
            "2025/2025-01-02-first.md",
            "project.yaml"),
        files());
    assertEquals(
        "---\nphase: lofting\nhours: 2:45\ncost: 1234.50\n---\nLofted the stem\n",
        text("2024/2024-05-03-lofting.md"));
    assertEquals(
        "---\nphase: planking\nhours: 1:30\n---\n\\# two lines\n\\- of words\n",
        text("2024/2024-05-04-planking.md"));
    assertEquals("---\nphase: planking\ncost: -12.00\n---\n", text("2024/2024-05-06-planking.md"));
    assertEquals(
        new Run(0, "4 entries, no errors, no warnings\n", ""), here().run("check", "boat"));
    Run again = here().run("bring", "past.csv", "boat", "--write", "-q");
    assertEquals(
        "3 sessions are in the journal already and are passed over\nthere is nothing to write\n",
        again.out().substring(again.out().indexOf("3 sessions are")));
    assertEquals(5, files().size());
  }

  @Test
  void sessionsThatTheJournalHasAreBroughtOnlyAsOftenAsTheyAreMissing() throws IOException {
    here()
        .with(
            "past.csv",
            "date,hours,phase\n2024-05-03,1,planking\n2024-05-03,1,planking\n"
                + "2024-05-03,1,planking\n")
        .with("boat/mine/2024-05-03 Planking.md", "---\nphase: planking\nhours: 60 min\n---\n");
    Run run = here().run("bring", "past.csv", "boat", "--write", "-q");
    assertEquals(0, run.code(), run.err());
    assertTrue(
        run.out()
            .contains(
                "1 session is in the journal already and is passed over\n"
                    + "2 entries:\n  2024/2024-05-03-planking-2.md\n"
                    + "  2024/2024-05-03-planking-3.md\n"),
        run.out());
    // No address is taken twice.
    assertEquals(0, here().run("check", "boat").code());
  }

  @Test
  void otherProgramsGetTheTotalsAlone() {
    Run csv = here().run("bring", "past.csv", "boat", "--format", "csv");
    assertEquals(
        """
        phase,hours_before,hours_brought,hours_after,cost_before,cost_brought,cost_after
        lofting,1,2.75,3.75,0.00,1234.50,1234.50
        planking,0,1.5,1.5,0.00,-12.00,-12.00
        """,
        csv.out());
    assertTrue(csv.err().endsWith("nothing is written yet; add --write\n"), csv.err());
    assertTrue(here().run("bring", "past.csv", "boat", "--format", "json").out().startsWith("[\n"));
  }

  @Test
  void errorsAreToldTogetherAndNothingIsWritten() throws IOException {
    here().with("past.csv", "date,hours,phase,cost\nsoon,2;45,planing,1\n2024-05-04,1,,\n");
    assertEquals(
        new Run(
            1,
            "",
            """
            past.csv:2:1: error: A2 (date) "soon" is not a date; write year-month-day, as 2026-03-14
            past.csv:2:2: error: B2 (hours) "2;45" is not a length of time; write 2:45, 2.75 or 2 3/4
            past.csv:2:3: error: C2 (phase) "planing" is not among the phases of project.yaml; did \
            you mean "planking"? Then say --phase "planing=planking"
            3 errors in past.csv, nothing was written
            """),
        here().run("bring", "past.csv", "boat", "--write"));
    assertEquals(2, files().size());
    here().with("past.csv", "date,hours\n" + "soon,1\n".repeat(130));
    String many = here().run("bring", "past.csv", "boat").err();
    assertEquals(102, many.lines().count());
    assertTrue(many.endsWith("and 30 more\n130 errors in past.csv, nothing was written\n"), many);
  }

  @Test
  void aJournalWithErrorsTellsNoTotals() throws IOException {
    here().with("boat/2025/2025-01-03-x.md", "---\nhours: 2;45\n---\n");
    Run run = here().run("bring", "past.csv", "boat", "--write");
    assertEquals(1, run.code());
    assertEquals("", run.out());
    assertTrue(run.err().endsWith("1 error in 2 entries, no figure is told\n"), run.err());
  }

  @Test
  void wrongUsageIsToldInOneLine() throws IOException {
    wrong("ribband: gone.csv is not there; name a spreadsheet saved as CSV", "gone.csv", "boat");
    wrong("ribband: boat is no plain file; name a spreadsheet saved as CSV", "boat", "boat");
    wrong(
        "ribband: --carried prints a block to paste and writes no entries; leave out --write or"
            + " --carried",
        "past.csv",
        "boat",
        "--carried",
        "--write");
    wrong(
        "ribband: --column \"hurs=B\" names nothing that is brought; did you mean \"hours\"?",
        "past.csv",
        "boat",
        "--column",
        "hurs=B");
    wrong(
        "ribband: --column \"hours\" has nothing behind a =; write hours=B",
        "past.csv",
        "boat",
        "--column",
        "hours");
    wrong(
        "ribband: --column hours stands twice; keep one",
        "past.csv",
        "boat",
        "--column",
        "hours=B",
        "--column",
        "hours=C");
    wrong(
        "ribband: --phase \"hull=\" has nothing behind a =; write \"hull work=planking\"",
        "past.csv",
        "boat",
        "--phase",
        "hull=");
    wrong(
        "ribband: --dates \"european\" is no order of dates; write day-first or month-first",
        "past.csv",
        "boat",
        "--dates",
        "european");
    Run none = here().run("bring");
    assertEquals(
        "ribband: bring needs FILE.csv, the spreadsheet, saved as CSV\n"
            + "how to call it: ribband bring --help\n",
        none.err());
  }

  private void wrong(String line, String... arguments) {
    String[] all = Stream.concat(Stream.of("bring"), Stream.of(arguments)).toArray(String[]::new);
    assertEquals(new Run(2, "", line + "\n"), here().run(all));
  }

  @Test
  void phasesDatesAndColumnsMayBeSaid() throws IOException {
    here().with("past.csv", "when,x,phase\n3/4/2024,2,hull work\n3/5/2024,1,\n");
    Run run =
        here()
            .run(
                "bring",
                "past.csv",
                "boat",
                "--write",
                "-q",
                "--column",
                "hours=x",
                "--phase",
                "Hull Work=planking",
                "--phase",
                "=lofting",
                "--dates",
                "month-first");
    assertEquals(0, run.code(), run.err());
    assertEquals("---\nphase: planking\nhours: 2:00\n---\n", text("2024/2024-03-04-planking.md"));
    assertEquals("---\nphase: lofting\nhours: 1:00\n---\n", text("2024/2024-03-05-lofting.md"));
  }

  @Test
  void warningsAreOfSessionsWithoutPhaseToComeAndCarried() throws IOException {
    here()
        .with(
            "boat/project.yaml",
            "currency: USD\nphases: [lofting]\ncarried: {through: 2024-05-04, sessions: 1}\n")
        .with("past.csv", "date,hours,cost\n2024-05-04,1,\n2024-05-05,,3\n2026-06-02,1,\n");
    Run run = here().run("bring", "past.csv", "boat");
    assertEquals(0, run.code());
    assertEquals(
        """
        past.csv: warning: 3 sessions name no phase and will count under unsorted; give one to all \
        of them with --phase "=lofting"
        past.csv:2:1: warning: 1 session, the first of them of 2024-05-04, is within the carried \
        work, which goes through 2024-05-04; make sure that nothing is counted twice
        past.csv:4:1: warning: 1 session, the first of them of 2026-06-02, is in the future, today \
        is 2026-06-01; check the dates
        """,
        run.err());
    assertEquals("", here().run("bring", "past.csv", "boat", "-q").err());
  }

  @Test
  void aNoteThatNoJournalTakesIsToldWithItsRow() throws IOException {
    here().with("past.csv", "date,note\n2024-05-04," + "\\".repeat(20) + "\n");
    assertEquals(
        new Run(
            1,
            "",
            "past.csv:2:1: error: the note of row 2: 40 times \"\\\" in a row; at most 30 are read\n"
                + "1 error in past.csv, nothing was written\n"),
        here().run("bring", "past.csv", "boat"));
  }

  @Test
  void anEntryOfThatNameWithOtherFiguresIsNoneOfThese() throws IOException {
    here().with("past.csv", "entry,hours\n2025-01-02-first,2\n");
    assertEquals(
        new Run(
            1,
            "",
            "past.csv: warning: 1 session names no phase and will count under unsorted; give one to"
                + " all of them with --phase \"=lofting\"\n"
                + "past.csv:2:1: error: A2 (entry) \"2025-01-02-first\" is in the journal already,"
                + " with other hours or another cost; mend the one that is wrong, or give this one"
                + " another name\n"
                + "1 error in past.csv, nothing was written\n"),
        here().run("bring", "past.csv", "boat"));
  }

  /** What was written before the disk gave up stays, and the same command brings the rest. */
  @Test
  void aDiskThatFailsHalfWayLosesAndDoublesNothing() throws IOException {
    here()
        .with("past.csv", "date,hours,phase\n2023-12-31,1,planking\n2024-01-01,2,planking\n")
        .with("boat/2024", "a file in the way of a folder");
    Run run = here().run("bring", "past.csv", "boat", "--write");
    assertEquals(3, run.code(), run.err());
    assertTrue(
        run.err().startsWith("1 of 2 entries were written; the same command brings the rest\n"),
        run.err());
    assertFalse(run.out().contains("written, and"), run.out());
    Files.delete(folder.resolve("boat/2024"));
    Run rest = here().run("bring", "past.csv", "boat", "--write", "-q");
    assertEquals(0, rest.code(), rest.err());
    assertTrue(
        rest.out()
            .contains(
                "1 session is in the journal already and is passed over\n1 entry:\n"
                    + "  2024/2024-01-01-planking.md\n"),
        rest.out());
  }

  @Test
  void manyEntriesAreToldByTheFirstAndTheLast() throws IOException {
    StringBuilder csv = new StringBuilder("date,hours,phase\n");
    for (int day = 1; day <= 8; day++) {
      csv.append("2024-05-0").append(day).append(",1,planking\n");
    }
    here().with("past.csv", csv.toString());
    String out = here().run("bring", "past.csv", "boat", "-q").out();
    assertTrue(
        out.endsWith(
            """
            8 entries:
              2024/2024-05-01-planking.md
              2024/2024-05-02-planking.md
              2024/2024-05-03-planking.md
              and 2 more, to
              2024/2024-05-06-planking.md
              2024/2024-05-07-planking.md
              2024/2024-05-08-planking.md
            nothing is written yet; add --write
            """),
        out);
  }

  @Test
  void theCarriedBlockComesToTheTotalsTold() throws IOException {
    Run run = here().run("bring", "past.csv", "boat", "--carried");
    assertEquals(
        """
        carried:
          through: 2024-05-06
          sessions: 2
          hours: {lofting: 2:45, planking: 1:30}
          cost: {lofting: 1234.50, planking: -12.00}
        """,
        run.out());
    assertTrue(
        run.err()
            .endsWith(
                """
                total                    1       4¼     5¼   $0.00  $1,222.50  $1,222.50

                sessions: 1 before, 2 brought, 3 after

                in project.yaml, in place of any carried that is there:
                """),
        run.err());
    String project = text("project.yaml");
    here().with("boat/project.yaml", project + run.out());
    assertEquals(
        """
        phase,sessions,hours,cost,hours_planned,cost_planned
        lofting,1,3.75,1234.50,,
        planking,0,1.5,-12.00,,
        """,
        here().run("tally", "boat", "--by", "phase", "--format", "csv").out());
    // What is carried already stays in the block.
    here().with("more.csv", "date,hours,phase\n2024-04-30,0:10:01,planking\n");
    Run more = here().run("bring", "more.csv", "boat", "--carried", "-q");
    assertEquals(
        new Run(
            0,
            """
            # The 2 sessions that this project carries already are in these figures.
            carried:
              through: 2024-05-06
              sessions: 3
              hours: {lofting: 2:45, planking: 1.6669}
              cost: {lofting: 1234.50, planking: -12.00}
            """,
            ""),
        more);
  }

  @Test
  void carriedWorkIsWrittenByPhase() throws IOException {
    here().with("past.csv", "date,hours,phase\n2025-04-30,1,\n2025-05-01,2,planking\n");
    assertEquals(
        new Run(
            1,
            "",
            """
            past.csv: error: some of it names no phase, and carried work is written by phase; give \
            one to all of these with --phase "=lofting"
            project.yaml: warning: 1 entry, the first of them 2025/2025-01-02-first.md, would be \
            within the carried work, which would go through 2025-05-01; make sure that nothing is \
            counted twice
            1 error in past.csv, nothing was written
            """),
        here().run("bring", "past.csv", "boat", "--carried"));
    here().with("past.csv", "date,hours\n2024-04-30,1\n2024-05-01,2\n");
    assertEquals(
        "carried:\n  through: 2024-05-01\n  sessions: 2\n  hours: 3:00\n",
        here().run("bring", "past.csv", "boat", "--carried").out());
    here()
        .with("free/project.yaml", "name: Free\n")
        .with("past.csv", "date,hours,phase\n2024-04-30,1,\n2024-05-01,2,Hull Work\n");
    Run free = here().run("bring", "past.csv", "free", "--carried", "-q");
    assertEquals(
        "carried:\n  through: 2024-05-01\n  sessions: 2\n"
            + "  hours: {unsorted: 1:00, hull-work: 2:00}\n",
        free.out());
    here().with("free/project.yaml", "name: Free\n" + free.out());
    assertEquals(
        "phase,sessions,hours,cost,hours_planned,cost_planned\nhull-work,0,2,0,,\n"
            + "unsorted,0,1,0,,\n",
        here().run("tally", "free", "--by", "phase", "--format", "csv").out());
    here().with("past.csv", "date,hours,phase\n" + "2024-04-30,24,planking\n".repeat(417));
    assertTrue(
        here()
            .run("bring", "past.csv", "boat", "--carried", "-q")
            .err()
            .contains(
                "past.csv: error: it comes to more than 10,000 hours of one phase, which carried"
                    + " cannot say; check the hours\n"));
  }

  @Test
  void aJournalWithoutPhasesTakesThoseOfTheSheet() throws IOException {
    here()
        .with("free/project.yaml", "name: Free\n")
        .with("past.csv", "date,hours,phase\n2024-04-30,1,Hull Work\n2024-05-01,2,\n");
    Run run = here().run("bring", "past.csv", "free", "--write", "-q");
    assertEquals(
        """
                    hours    hours  hours
        phase      before  brought  after
        ─────────────────────────────────
        hull-work       0        1      1
        Unsorted        0        2      2
        ─────────────────────────────────
        total           0        3      3

        sessions: 0 before, 2 brought, 2 after

        2 entries:
          2024/2024-04-30-hull-work.md
          2024/2024-05-01.md
        written, and the journal adds up to what stands above
        """,
        run.out(),
        run.err());
  }

  /** Does something in the shop when the files are told, which is before they are written. */
  private Run runWhile(Meddling meddling) {
    StringWriter out =
        new StringWriter() {
          @Override
          public void write(String text, int from, int length) {
            super.write(text, from, length);
            if (text.equals("3 entries:")) {
              meddling.meddle();
            }
          }
        };
    StringWriter err = new StringWriter();
    int code =
        new Ribband(here().surroundings(out, err))
            .run("bring", "past.csv", "boat", "--write", "-q");
    return new Run(code, out.toString().replaceFirst("(?s).*planking.md\n", ""), err.toString());
  }

  private interface Meddling {
    void meddle();
  }

  private void put(String file, String text) {
    try {
      here().with(file, text);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  @Test
  void whatComesIntoTheJournalMeanwhileIsNoDefect() {
    String told = "written; the journal was changed meanwhile, so its totals are not those above\n";
    assertEquals(
        new Run(0, told, ""),
        runWhile(() -> put("boat/2025/2025-01-03.md", "---\nphase: planking\nhours: 2\n---\n")));
  }

  @Test
  void aProjectThatLosesAPhaseMeanwhileIsNoDefect() {
    assertEquals(
        new Run(
            3,
            "",
            "ribband: 2024/2024-05-04-planking.md was written, but the journal was changed meanwhile"
                + " and does not say the same; see ribband check\n"),
        runWhile(() -> put("boat/project.yaml", "currency: USD\nphases: [lofting]\n")));
  }
}
