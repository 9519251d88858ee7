package ribband.ledger;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.YearMonth;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import ribband.journal.Journal;

/** Which entries, phases and carried work a ledger counts under a selection. */
class SelectionTest {
  private static final Optional<LocalDate> ANY_DAY = Optional.empty();
  private static final Optional<String> ANY_PHASE = Optional.empty();

  @TempDir Path folder;
  private Journal journal;

  @BeforeEach
  void writeAJournal() throws IOException {
    Journals.write(
        folder,
        "project.yaml",
        """
        currency: USD
        phases: [lofting, planking, fairing]
        carried:
          through: 2025-12-31
          sessions: 4
          hours: {lofting: 6, planking: 10}
          cost: {lofting: 50, planking: 70}
        """);
    Journals.entry(folder, "2026-01-10", "hours: {planking: 2, fairing: 1}");
    Journals.entry(folder, "2026-01-11", "phase: planking\ncost: 30");
    Journals.entry(folder, "2026-01-12", "phase: fairing\nhours: 0\ntitle: Sharpened");
    Journals.entry(folder, "2026-02-13", "phase: fairing\nhours: 4\ncost: 5");
    journal = Journals.read(folder);
  }

  private Ledger ledger(Optional<LocalDate> from, Optional<LocalDate> to, Optional<String> phase) {
    return Ledger.of(journal, new Selection(from, to, phase));
  }

  private static Optional<LocalDate> day(String day) {
    return Optional.of(LocalDate.parse(day));
  }

  private static List<String> days(Ledger ledger) {
    return ledger.entries().stream().map(row -> row.period().date().toString()).toList();
  }

  /** The whole of a ledger in a line: sessions, hours, money. */
  private static String whole(Ledger ledger) {
    Sums whole = ledger.whole();
    return whole.sessions()
        + " "
        + whole.totalHours().decimal()
        + " "
        + whole.totalCost().minor() / 100;
  }

  @Test
  void withNoneAllEntriesAndCarriedWorkCount() {
    Ledger all = Ledger.of(journal);
    assertEquals(List.of("2026-01-10", "2026-01-11", "2026-01-12", "2026-02-13"), days(all));
    assertEquals("6 23 155", whole(all));
    assertEquals(4, all.carried().sessions());
  }

  @Test
  void bothEndsAreCountedAndCarriedWorkIsLeftOut() {
    Ledger from = ledger(day("2026-01-11"), ANY_DAY, ANY_PHASE);
    assertEquals(List.of("2026-01-11", "2026-01-12", "2026-02-13"), days(from));
    assertEquals("1 4 35", whole(from));
    assertEquals(Sums.NONE, from.carried());
    Ledger to = ledger(ANY_DAY, day("2026-01-11"), ANY_PHASE);
    assertEquals(List.of("2026-01-10", "2026-01-11"), days(to));
    assertEquals("1 3 30", whole(to));
    assertEquals(Sums.NONE, to.carried());
    Ledger one = ledger(day("2026-01-12"), day("2026-01-12"), ANY_PHASE);
    assertEquals(List.of("2026-01-12"), days(one));
    assertEquals("0 0 0", whole(one));
  }

  /** An entry with money of the phase and no hours counts too; carried sessions cannot be told. */
  @Test
  void aPhaseCountsItsOwnShareAlone() {
    Ledger planking = ledger(ANY_DAY, ANY_DAY, Optional.of("planking"));
    assertEquals(List.of("2026-01-10", "2026-01-11"), days(planking));
    assertEquals("1 12 100", whole(planking));
    assertEquals(0, planking.carried().sessions());
    assertEquals(Set.of("planking"), planking.phaseIds());
    assertEquals(1, planking.phases().get(0).sessions());
    Ledger lofting = ledger(ANY_DAY, ANY_DAY, Optional.of("lofting"));
    assertEquals(List.of(), days(lofting));
    assertEquals("0 6 50", whole(lofting));
  }

  @Test
  void phaseRowsStandInTheOrderOfTheProjectZeroRowsToo() {
    Ledger all = Ledger.of(journal);
    assertEquals(List.of("lofting", "planking", "fairing"), List.copyOf(all.phaseIds()));
    assertEquals(
        List.of("lofting 0 6", "planking 1 12", "fairing 2 5"),
        all.phases().stream()
            .map(row -> row.phase().id() + " " + row.sessions() + " " + row.hours().decimal())
            .toList());
  }

  @Test
  void anEntryWithoutHoursIsNoNight() {
    Ledger all = Ledger.of(journal);
    assertEquals(List.of(1, 0, 0, 1), all.entries().stream().map(Row::nights).toList());
    assertEquals(List.of(1, 1), all.months().stream().map(Row::nights).toList());
  }

  @Test
  void aMonthWithoutAnEntryStandsBetweenOthersAndTakesItsRank() throws IOException {
    Journals.entry(folder, "2026-05-01", "phase: fairing\nhours: 3");
    Ledger all = Ledger.of(Journals.read(folder));
    assertEquals(
        List.of("2026-01 2", "2026-02 1", "2026-03 4", "2026-04 4", "2026-05 2"),
        all.months().stream()
            .map(month -> month.period() + " " + month.rank().orElseThrow())
            .toList());
    assertEquals(
        List.of(YearMonth.of(2026, 2), YearMonth.of(2026, 1), YearMonth.of(2026, 5)),
        Records.byRank(all.months()).stream().map(Row::period).toList());
  }
}
