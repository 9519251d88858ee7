package ribband.desk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.io.IOException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import ribband.journal.Journal;
import ribband.ledger.Ledger;
import ribband.ledger.Sums;
import ribband.measure.Hours;
import ribband.measure.Money;
import ribband.problem.Problem;
import ribband.problem.Problems;

/** Which past sessions become entries, what these hold, and what is told of the others. */
class BringingTest {
  private static final LocalDate TODAY = LocalDate.of(2026, 3, 14);

  @TempDir private Path folder;
  private Desk desk;
  private List<String> told = List.of();

  @BeforeEach
  void boat() throws IOException {
    desk =
        new Desk(folder)
            .with(
                "project.yaml",
                "name: Teal",
                "currency: USD",
                "phases: [{id: planking}, {id: fairing}, {id: 'no'}]");
  }

  private Bringing plan(String... rows) throws IOException {
    Problems problems = new Problems();
    Journal journal = desk.journal();
    Bringing bringing = Bringing.plan(journal, PastOf.sheet(journal, rows), TODAY, problems);
    told = problems.sorted().stream().map(Problem::toString).toList();
    return bringing;
  }

  private static List<String> files(Bringing bringing) {
    return bringing.entries().stream().map(entry -> entry.file().path()).toList();
  }

  @Test
  void eachSessionIsTheShortestEntryThatSaysIt() throws IOException {
    Bringing bringing =
        plan(
            "date,hours,phase,cost,note",
            "2026-03-01,2:05,planking,12.50,# glue",
            "2026-03-02,0:10,no,,",
            "2026-03-03,0.0003,planking,-2.00,",
            "2026-03-04,,planking,4.00,");
    assertEquals(
        """
        2026/2026-03-01-planking.md
        ---
        phase: planking
        hours: 2:05
        cost: 12.50
        ---
        \\# glue

        2026/2026-03-02-no.md
        ---
        phase: 'no'
        hours: 0:10
        ---

        2026/2026-03-03-planking.md
        ---
        phase: planking
        hours: 0.0003
        cost: -2.00
        ---

        2026/2026-03-04-planking.md
        ---
        phase: planking
        cost: 4.00
        ---

        """,
        String.join(
            "",
            bringing.entries().stream()
                .map(entry -> entry.file().path() + "\n" + entry.text() + "\n")
                .toList()));
    assertEquals(List.of(), told);
  }

  @Test
  void theTotalsAreThoseOfTheJournalAfterwards() throws IOException {
    desk.entry("2026/2026-02-01.md", "phase: fairing", "hours: 3", "cost: 1.00");
    String[] rows = {
      "date,hours,phase,cost",
      "2026-03-01,2,planking,12.50",
      "2026-03-01,1,planking,",
      "2026-03-02,,fairing,4.00",
      "2026-03-03,1,no,-0.50"
    };
    Bringing bringing = plan(rows);
    assertEquals(
        new Sums(1, Map.of("fairing", Hours.ofMinutes(180)), Map.of("fairing", new Money(100))),
        bringing.before());
    assertEquals(
        new Sums(
            3,
            Map.of("planking", Hours.ofMinutes(180), "no", Hours.ofMinutes(60)),
            Map.of("planking", new Money(1250), "fairing", new Money(400), "no", new Money(-50))),
        bringing.brought());
    List<Path> written = new ArrayList<>();
    bringing.write(folder, written::add);
    assertEquals(files(bringing).stream().map(folder::resolve).toList(), written);
    assertEquals(List.of(), desk.problems());
    assertEquals(Ledger.of(desk.journal()).whole(), bringing.after());
    Bringing again = plan(rows);
    assertEquals(List.of(), again.entries());
    assertEquals(4, again.already());
    assertEquals(Sums.NONE, again.brought());
  }

  /** A session is the same by day, hours and cost of its phase, and words; not by its file. */
  @Test
  void whatTheJournalHasIsPassedOverAsOftenAsItHasIt() throws IOException {
    String[] rows = {
      "date,hours,phase,cost,note",
      "2026-03-01,1,planking,5.00,fitted",
      "2026-03-01,1,planking,5.00,fitted",
      "2026-03-01,1,planking,5.00,fitted"
    };
    desk.with(
        "mine/2026-03-01 a.md",
        "---",
        "phase: planking",
        "hours: 60 min",
        "cost: 5",
        "materials: {bought: [{item: glue, cost: 3.00}]}",
        "---",
        "",
        "fitted");
    assertEquals(1, plan(rows).already());
    assertEquals(2, plan(rows).entries().size());
    desk.with(
        "mine/2026-03-01 b.md",
        "---",
        "hours: {planking: 1}",
        "cost: {planking: 5}",
        "---",
        "fitted");
    assertEquals(2, plan(rows).already());
    desk.with("mine/2026-03-01 c.md", "---", "hours: {fairing: 1}", "cost: 5", "---", "fitted")
        .with("mine/2026-03-01 d.md", "---", "phase: planking", "hours: 1", "---", "fitted")
        .with(
            "mine/2026-03-02 e.md",
            "---",
            "phase: planking",
            "hours: 1",
            "cost: 5",
            "---",
            "fitted")
        .with(
            "mine/2026-03-01 f.md",
            "---",
            "phase: planking",
            "hours: 1",
            "cost: 5",
            "---",
            "Fitted");
    assertEquals(2, plan(rows).already());
    assertEquals(1, plan(rows).entries().size());
  }

  @Test
  void moneyThatCameBackWholeIsNoCost() throws IOException {
    desk.entry(
        "2026-03-01.md",
        "phase: planking",
        "hours: 1",
        "cost: 0",
        "materials: {bought: [{item: glue, cost: 3.00}, {item: glue back, cost: -3.00}]}");
    assertEquals(1, plan("date,hours,phase", "2026-03-01,1,planking").already());
  }

  @Test
  void aNamedSessionIsThatEntryOrAnError() throws IOException {
    desk.entry("mine/2026-03-01 Stem.md", "phase: planking", "hours: 1", "cost: 5.00");
    Bringing same = plan("entry,hours,phase,cost", "2026-03-01-stem,1,fairing,5");
    assertEquals(List.of(), told);
    assertEquals(1, same.already());
    assertEquals(List.of(), same.entries());
    String why =
        "past.csv:2:1: error: A2 (entry) \"2026-03-01-stem\" is in the journal already, with other"
            + " hours or another cost; mend the one that is wrong, or give this one another name";
    assertEquals(0, plan("entry,hours,phase,cost", "2026-03-01-stem,2,planking,5").already());
    assertEquals(List.of(why), told);
    assertEquals(
        List.of(), plan("entry,hours,phase,cost", "2026-03-01-stem,1,planking,6").entries());
    assertEquals(List.of(why), told);
    assertEquals(
        List.of("mine/2026-03-01-keel.md"),
        files(plan("entry,hours,phase", "2026-03-01-keel,1,planking")));
    assertEquals(List.of(), told);
  }

  @Test
  void aNoteThatNoEntryTakesIsAnError() throws IOException {
    Bringing bringing =
        plan(
            "date,hours,phase,note",
            "2026-03-01,1,planking,fine",
            "2026-03-02,1,planking," + "[".repeat(2_001));
    assertEquals(List.of("2026/2026-03-01-planking.md"), files(bringing));
    assertEquals(
        List.of(
            "past.csv:3:1: error: the note of row 3: more than 2000 times \"[\" in one paragraph;"
                + " part it by empty lines"),
        told);
  }

  @Test
  void whatCountsElsewhereOrNowhereIsWarnedOf() throws IOException {
    desk.with(
        "project.yaml",
        "currency: USD",
        "phases: [{id: fairing}, {id: planking}]",
        "carried: {through: 2026-02-01, sessions: 1}");
    plan(
        "date,hours,phase,cost,note",
        "2026-02-01,1,planking,,",
        "2026-02-02,1,,,",
        "2026-02-03,,,1.00,",
        "2026-02-04,,,,words alone",
        "2026-02-05,,,2.00,",
        "2026-03-14,1,planking,,",
        "2026-03-15,1,planking,,");
    assertEquals(
        List.of(
            "past.csv: warning: 3 sessions name no phase and will count under unsorted; give one to"
                + " all of them with --phase \"=fairing\"",
            "past.csv:2:1: warning: 1 session, the first of them of 2026-02-01, is within the"
                + " carried work, which goes through 2026-02-01; make sure that nothing is counted"
                + " twice",
            "past.csv:8:1: warning: 1 session, the first of them of 2026-03-15, is in the future,"
                + " today is 2026-03-14; check the dates"),
        told);
    plan(
        "date,hours,phase",
        "2026-01-31,1,planking",
        "2026-02-01,1,planking",
        "2026-02-05,1,",
        "2026-03-15,1,planking",
        "2026-03-16,1,planking");
    assertEquals(
        List.of(
            "past.csv: warning: 1 session names no phase and will count under unsorted; give one to"
                + " all of them with --phase \"=fairing\"",
            "past.csv:2:1: warning: 2 sessions, the first of them of 2026-01-31, are within the"
                + " carried work, which goes through 2026-02-01; make sure that nothing is counted"
                + " twice",
            "past.csv:5:1: warning: 2 sessions, the first of them of 2026-03-15, are in the future,"
                + " today is 2026-03-14; check the dates"),
        told);
  }

  @Test
  void namesAreGivenOnce() throws IOException {
    desk.with("notes/2026-03-01-planking", "x")
        .with("pictures/2026-03-01-planking-2.tar.gz", "x")
        .with("pictures/2026-03-01-planking-3.jpg", "x")
        .entry("2026/2026-03-01_Planking 4.md", "title: x");
    assertEquals(
        List.of(
            "2026/2026-03-01-planking-2.md",
            "2026/2026-03-01-planking-5.md",
            "2026/2026-03-01.md",
            "2026/2026-03-01-2.md"),
        files(
            plan(
                "date,hours,phase",
                "2026-03-01,1,planking",
                "2026-03-01,1,planking",
                "2026-03-01,1,",
                "2026-03-01,2,")));
    NewNames names = new NewNames(desk.journal());
    NewEntry keel = names.named(TODAY, "2026-03-14-Keel");
    assertEquals("2026/2026-03-14-Keel.md", keel.path());
    assertEquals(
        "taken: 2026-03-14-keel",
        assertThrows(IllegalArgumentException.class, () -> names.named(TODAY, "2026-03-14-keel"))
            .getMessage());
  }

  @Test
  void aFileThatHasComeSinceStaysAndThoseBeforeItAreWritten() throws IOException {
    Bringing bringing = plan("date,hours", "2026-03-01,1", "2026-03-02,1", "2026-03-03,1");
    desk.with("2026/2026-03-02.md", "mine");
    List<Path> written = new ArrayList<>();
    assertThrows(FileAlreadyExistsException.class, () -> bringing.write(folder, written::add));
    assertEquals(List.of(folder.resolve("2026/2026-03-01.md")), written);
    assertEquals("mine\n", desk.text("2026/2026-03-02.md"));
  }
}
