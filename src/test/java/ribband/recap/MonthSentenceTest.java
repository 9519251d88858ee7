package ribband.recap;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Path;
import java.time.YearMonth;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import ribband.journal.Journal;
import ribband.ledger.Journals;
import ribband.ledger.Ledger;
import ribband.measure.SaidMoney;

/** A month in one sentence, with money and where it is hidden. */
class MonthSentenceTest {
  @TempDir Path folder;

  private void project(String more) throws IOException {
    Journals.write(
        folder,
        "project.yaml",
        "currency: GBP\nphases: [moulds, {id: planking, title: Planks on}, rigging]\n" + more);
  }

  private void entry(String name, String keys) throws IOException {
    Journals.entry(folder, name, keys);
  }

  private String said(String month, boolean shown) throws IOException {
    Journal journal = Journals.read(folder);
    Ledger ledger = Ledger.of(journal);
    MonthSentence sentence =
        new MonthSentence(journal, ledger, new SaidMoney(journal.project().currency(), shown));
    YearMonth told = YearMonth.parse(month);
    return sentence.of(
        ledger.months().stream()
            .filter(row -> row.period().equals(told))
            .findFirst()
            .orElseThrow());
  }

  private String said(String month) throws IOException {
    return said(month, true);
  }

  @Test
  void thePhaseThatTookMostStandsFirst() throws IOException {
    project("");
    entry("2026-01-02", "hours: {moulds: 1, planking: 3, rigging: 2}\ncost: {moulds: 40.50}");
    assertEquals(
        "6 hours in January 2026, over 1 night, the first month with work, and £40.50 went out:"
            + " Planks on took its first 3; Rigging took its first 2; Moulds took its first 1, and"
            + " the whole boat stands at 6 hours and £40.50.",
        said("2026-01"));
  }

  @Test
  void ofEqualHoursTheProjectsFirstPhaseStandsFirst() throws IOException {
    project("");
    entry("2026-01-02", "hours: {rigging: 2, planking: 2, moulds: 2}");
    assertEquals(
        "6 hours in January 2026, over 1 night, the first month with work: Moulds took its first 2;"
            + " Planks on took its first 2; Rigging took its first 2, and the whole boat stands at 6"
            + " hours.",
        said("2026-01"));
  }

  @Test
  void aPhaseWorkedOnBeforeIsToldWithWhereItStands() throws IOException {
    project("");
    entry("2026-01-02", "hours: {moulds: 5, planking: 1}");
    entry("2026-02-03", "hours: {moulds: 1/4, planking: 2}");
    entry("2026-02-04", "hours: {rigging: 1}");
    assertEquals(
        "3¼ hours in February 2026, over 2 nights, second of 2 months with work (January beats it):"
            + " Planks on took 2 and now stands at 3; Rigging took its first 1; Moulds took ¼ and now"
            + " stands at 5¼, and the whole boat stands at 9¼ hours.",
        said("2026-02"));
  }

  @Test
  void aMonthWithoutWorkTellsWhereTheBoatStands() throws IOException {
    project("");
    entry("2026-01-02", "hours: 2\nphase: moulds\ncost: {moulds: 7.50}");
    entry("2026-02-03", "cost: {moulds: -2.50}");
    entry("2026-03-03", "title: Looked at her");
    assertEquals(
        "No work on the boat in February 2026, and £2.50 came back; the whole boat stands at 2 hours"
            + " and £5.00.",
        said("2026-02"));
    assertEquals(
        "No work on the boat in March 2026; the whole boat stands at 2 hours and £5.00.",
        said("2026-03"));
  }

  @Test
  void hiddenMoneyIsNeitherMovedNorToDate() throws IOException {
    project("");
    entry("2026-01-02", "hours: 2\nphase: moulds\ncost: {moulds: 7.50}");
    entry("2026-02-03", "cost: {moulds: 1}");
    assertEquals(
        "2 hours in January 2026, over 1 night, the first month with work: Moulds took its first 2,"
            + " and the whole boat stands at 2 hours.",
        said("2026-01", false));
    assertEquals(
        "No work on the boat in February 2026; the whole boat stands at 2 hours.",
        said("2026-02", false));
  }

  @Test
  void moneyThatIsAllBackIsNotToldToDate() throws IOException {
    project("");
    entry("2026-01-02", "hours: 2\nphase: moulds\ncost: {moulds: 7.50}");
    entry("2026-02-03", "cost: {moulds: -7.50}");
    assertEquals(
        "No work on the boat in February 2026, and £7.50 came back; the whole boat stands at 2"
            + " hours.",
        said("2026-02"));
  }

  @Test
  void workCarriedInStandsInWhatIsToDate() throws IOException {
    project(
        "carried: {through: 2025-12-31, sessions: 4, hours: {planking: 10}, cost: {planking: 100}}\n");
    entry("2026-01-02", "hours: 2:45\nphase: planking\ncost: 0.50");
    assertEquals(
        "2¾ hours in January 2026, over 1 night, the first month in this journal, and £0.50 went out:"
            + " Planks on took 2¾ and now stands at 12¾, and the whole boat stands at 12¾ hours and"
            + " £100.50.",
        said("2026-01"));
  }

  @Test
  void hoursWithoutAPhaseAreUnsorted() throws IOException {
    project("");
    entry("2026-01-02", "hours: 26 min");
    assertEquals(
        "26 minutes in January 2026, over 1 night, the first month with work: Unsorted took its"
            + " first 0:26, and the whole boat stands at 26 minutes.",
        said("2026-01"));
  }

  @Test
  void fourMonthsThatBeatItAreNamedAndTheOthersCounted() throws IOException {
    project("");
    for (int month = 1; month <= 6; month++) {
      entry("2025-0" + month + "-02", "hours: " + (9 - month) + "\nphase: moulds");
    }
    assertEquals(
        "4 hours in May 2025, over 1 night, 5th of 6 months with work (January, February, March and"
            + " April beat it): Moulds took 4 and now stands at 30, and the whole boat stands at 30"
            + " hours.",
        said("2025-05"));
    assertEquals(
        "3 hours in June 2025, over 1 night, 6th of 6 months with work (January, February, March,"
            + " April and one more beat it): Moulds took 3 and now stands at 33, and the whole boat"
            + " stands at 33 hours.",
        said("2025-06"));
  }

  @Test
  void monthsOfAnotherYearAreNamedWithIt() throws IOException {
    project("");
    entry("2025-12-02", "hours: 1\nphase: moulds");
    entry("2026-01-02", "hours: 1\nphase: moulds");
    entry("2026-02-02", "hours: 2\nphase: moulds");
    entry("2026-03-02", "hours: 1\nphase: moulds");
    assertEquals(
        "1 hour in January 2026, over 1 night, second of 4 months with work, level with December"
            + " 2025 and March 2026 (February beats it): Moulds took 1 and now stands at 2, and the"
            + " whole boat stands at 2 hours.",
        said("2026-01"));
  }
}
