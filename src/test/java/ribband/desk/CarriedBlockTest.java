package ribband.desk;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
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

/** The block that carries past sessions in, and that the project's own reader finds them in it. */
class CarriedBlockTest {
  private static final LocalDate TODAY = LocalDate.of(2026, 3, 14);
  private static final String PHASES = "phases: [{id: planking}, {id: fairing}, {id: 'no'}]\n";

  @TempDir private Path folder;
  private Desk desk;
  private List<String> told = List.of();

  @BeforeEach
  void boat() {
    desk = new Desk(folder);
  }

  private CarriedBlock block(String project, String... rows) throws IOException {
    desk.with("project.yaml", "currency: USD\n" + project);
    Problems problems = new Problems();
    Journal journal = desk.journal();
    CarriedBlock block = CarriedBlock.of(journal, PastOf.sheet(journal, rows), TODAY, problems);
    told = problems.sorted().stream().map(Problem::toString).toList();
    return block;
  }

  /** The journal with the block in place of what it carried adds up to what was told. */
  private void addsUp(String project, CarriedBlock block) throws IOException {
    assertEquals(List.of(), told);
    desk.with("project.yaml", "currency: USD\n" + project + block.yaml());
    assertEquals(List.of(), desk.problems());
    assertEquals(block.before().plus(block.brought()), Ledger.of(desk.journal()).whole());
  }

  @Test
  void aFirstBlockHasTheSessionsAlone() throws IOException {
    desk.entry("2026-02-01.md", "phase: planking", "hours: 2");
    CarriedBlock block =
        block(
            PHASES,
            "date,hours,phase,cost",
            "2024-05-04,1:05,no,2.50",
            "2024-05-03,2,planking,",
            "2024-05-01,0.5,planking,-1.00",
            "2024-05-02,,planking,3.00");
    assertEquals(
        """
        carried:
          through: 2024-05-04
          sessions: 3
          hours: {planking: 2:30, 'no': 1:05}
          cost: {planking: 2.00, 'no': 2.50}
        """,
        block.yaml());
    assertEquals(new Sums(1, Map.of("planking", Hours.ofMinutes(120)), Map.of()), block.before());
    assertEquals(
        new Sums(
            3,
            Map.of("planking", Hours.ofMinutes(150), "no", Hours.ofMinutes(65)),
            Map.of("planking", new Money(200), "no", new Money(250))),
        block.brought());
    addsUp(PHASES, block);
  }

  @Test
  void whatIsCarriedAlreadyStaysInIt() throws IOException {
    String had = "carried: {through: 2024-04-30, sessions: 1, hours: {planking: 2}}\n";
    assertEquals(
        """
        # The 1 session that this project carries already is in these figures.
        carried:
          through: 2024-05-04
          sessions: 2
          hours: {planking: 3:00}
        """,
        block(PHASES + had, "date,hours,phase", "2024-05-04,1,planking").yaml());
    String later =
        "carried: {through: 2024-06-30, sessions: 12, hours: {planking: 2}, cost: {fairing: 3}}\n";
    CarriedBlock block = block(PHASES + later, "date,hours,phase", "2024-05-04,1,fairing");
    assertEquals(
        """
        # The 12 sessions that this project carries already are in these figures.
        carried:
          through: 2024-06-30
          sessions: 13
          hours: {planking: 2:00, fairing: 1:00}
          cost: {fairing: 3.00}
        """,
        block.yaml());
    addsUp(PHASES, block);
  }

  @Test
  void figuresWithoutAPhaseStandAlone() throws IOException {
    CarriedBlock block = block("", "date,hours,cost", "2024-05-03,1,2.00", "2024-05-04,1:30,");
    assertEquals(
        """
        carried:
          through: 2024-05-04
          sessions: 2
          hours: 2:30
          cost: 2.00
        """,
        block.yaml());
    assertEquals(List.of(), told);
    assertEquals(
        "carried:\n  through: 2024-05-04\n  sessions: 0\n  cost: 2.00\n",
        block(PHASES, "date,cost", "2024-05-04,2.00").yaml());
    assertEquals(List.of(), told);
  }

  @Test
  void figuresWithAndWithoutAPhaseAreAnErrorWherePhasesAreListed() throws IOException {
    String why =
        "past.csv: error: some of it names no phase, and carried work is written by phase; give one"
            + " to all of these with --phase \"=planking\"";
    block(PHASES, "date,hours,phase", "2024-05-03,1,", "2024-05-04,1,planking");
    assertEquals(List.of(why), told);
    block(PHASES, "date,hours,phase,cost", "2024-05-03,,,1.00", "2024-05-04,1,planking,2.00");
    assertEquals(List.of(why), told);
    block(PHASES, "date,hours,phase,cost", "2024-05-03,,,1.00", "2024-05-04,1,planking,");
    assertEquals(List.of(), told);
    desk.entry("2026-02-01.md", "phase: planking", "hours: 2");
    block("", "date,hours,phase", "2024-05-03,1,", "2024-05-04,1,planking");
    assertEquals(List.of(), told);
  }

  @Test
  void tenThousandHoursOfAPhaseAreTheMost() throws IOException {
    String had = "carried: {through: 2024-04-30, sessions: 1, hours: {planking: 9999}}\n";
    block(PHASES + had, "date,hours,phase", "2024-05-03,1,planking", "2024-05-04,2,fairing");
    assertEquals(List.of(), told);
    block(PHASES + had, "date,hours,phase", "2024-05-03,1.0003,planking");
    assertEquals(
        List.of(
            "past.csv: error: it comes to more than 10,000 hours of one phase, which carried cannot"
                + " say; check the hours"),
        told);
  }

  @Test
  void entriesWithinItAndDaysToComeAreWarnedOf() throws IOException {
    desk.entry("2024-05-04.md", "phase: planking", "hours: 2")
        .entry("2024-05-05.md", "phase: planking", "hours: 2");
    block(PHASES, "date,hours,phase", "2024-05-04,1,planking");
    assertEquals(
        List.of(
            "project.yaml: warning: 1 entry, the first of them 2024-05-04.md, would be within the"
                + " carried work, which would go through 2024-05-04; make sure that nothing is"
                + " counted twice"),
        told);
    block(PHASES, "date,hours,phase", "2024-05-03,1,planking");
    assertEquals(List.of(), told);
    block(PHASES, "date,hours,phase", "2026-03-15,1,planking");
    assertEquals(
        List.of(
            "past.csv:2:1: warning: 1 session, the first of them of 2026-03-15, is in the future,"
                + " today is 2026-03-14; check the dates",
            "project.yaml: warning: 2 entries, the first of them 2024-05-04.md, would be within the"
                + " carried work, which would go through 2026-03-15; make sure that nothing is"
                + " counted twice"),
        told);
  }
}
