package ribband.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import ribband.measure.Money;

class StandingTest {
  private static final String PHASES =
      """
      phases:
        - {id: planking, title: Planking, hours: 120, cost: 1400}
        - {id: fairing, title: Fairing, hours: 40}
        - {id: rigging, title: Rigging}
      """;
  private static final String STRAKES =
      "pieces:\n  strakes: {total: 16, phase: planking, hours: 5}\n";

  @TempDir private Path folder;

  private Complete complete(String project, String... entries) throws IOException {
    return Boats.standing(folder, project, entries).phases().get(0).complete();
  }

  private static Complete share(long part, long of, Complete.Basis basis) {
    return new Complete(Optional.of(BigFraction.of(part, of)), basis);
  }

  @Test
  void carriedHoursAndMoneyCount() throws IOException {
    Standing standing =
        Boats.standing(
            folder,
            PHASES + "carried: {hours: {planking: 44.5}, cost: {planking: 310.20}}",
            "2026-05-01\nphase: planking\nhours: 3:30\ncost: 9.80");
    PhaseStanding planking = standing.phases().get(0);
    assertEquals(Boats.hours(48), planking.hours());
    assertEquals(new Money(32_000), planking.cost());
    assertEquals(Optional.of(Boats.hours(120)), planking.planned());
    assertEquals(Optional.of(new Money(140_000)), planking.phase().cost());
    assertEquals(share(48, 120, Complete.Basis.ASSUMED), planking.complete());
  }

  @Test
  void piecesTellHowMuchIsDone() throws IOException {
    assertEquals(
        share(6, 16, Complete.Basis.PIECES),
        complete(
            PHASES + STRAKES,
            "2026-05-01\nphase: planking\nhours: 24\npieces: {strakes: 6}",
            "2026-05-02\ncomplete: {planking: 90%}"));
  }

  @Test
  void kindsWeighByTheirPlannedHoursWhereAllHaveThem() throws IOException {
    String both = PHASES + STRAKES + "  frames: {total: 10, phase: planking, hours: 2}\n";
    String one = PHASES + STRAKES + "  frames: {total: 10, phase: planking}\n";
    String none = PHASES + STRAKES + "  frames: {total: 10, phase: planking, hours: 0}\n";
    String entry = "2026-05-01\nphase: planking\nhours: 4\npieces: {strakes: 4, frames: 9}";
    assertEquals(share(4 * 5 + 9 * 2, 100, Complete.Basis.PIECES), complete(both, entry));
    assertEquals(share(13, 26, Complete.Basis.PIECES), complete(one, entry));
    assertEquals(share(13, 26, Complete.Basis.PIECES), complete(none, entry));
  }

  @Test
  void withoutPiecesTheLastNoteTells() throws IOException {
    assertEquals(
        share(1, 4, Complete.Basis.NOTED),
        complete(
            PHASES,
            "2026-04-01\nphase: planking\nhours: 4\ncomplete: {planking: 40%}",
            "2026-04-09\ncomplete: {planking: 25%}",
            "2026-05-07\ncomplete: {planking: 90%}"));
  }

  @Test
  void aLastNoteOfAllFinishesAPhaseWhateverItsPiecesSay() throws IOException {
    String made = "2026-05-01\nphase: planking\nhours: 4\npieces: {strakes: 14}";
    String done = "2026-05-02\ncomplete: {planking: 100%}";
    assertEquals(share(1, 1, Complete.Basis.NOTED), complete(PHASES + STRAKES, made, done));
    assertEquals(
        share(14, 16, Complete.Basis.PIECES),
        complete(PHASES + STRAKES, made, done, "2026-05-03\ncomplete: {planking: 90%}"));
  }

  @Test
  void withNeitherTheHoursAreAssumedToTell() throws IOException {
    assertEquals(
        share(1, 6, Complete.Basis.ASSUMED),
        complete(PHASES, "2026-05-01\nphase: planking\nhours: 20"));
    Complete over =
        complete(
            PHASES + "carried: {hours: {planking: 119}}", "2026-05-01\nphase: planking\nhours: 20");
    assertEquals(share(1, 1, Complete.Basis.ASSUMED), over);
    assertTrue(over.isWhole());
  }

  @Test
  void withoutAPlanNothingIsKnown() throws IOException {
    Standing standing = Boats.standing(folder, PHASES, "2026-05-01\nphase: rigging\nhours: 2");
    PhaseStanding rigging = standing.phases().get(2);
    assertEquals(Complete.UNKNOWN, rigging.complete());
    assertEquals(Optional.empty(), rigging.earned());
    assertFalse(rigging.isDone());
  }

  @Test
  void aPlanOfNoHoursIsNone() throws IOException {
    assertEquals(
        Complete.UNKNOWN,
        complete("phases:\n  - {id: planking, hours: 0}\n", "2026-05-03\nhours: 1"));
  }

  @Test
  void aNoteOnAPlanOfNoHoursGivesNoIndex() throws IOException {
    Standing standing =
        Boats.standing(
            folder,
            "phases:\n  - {id: planking, hours: 0}\n",
            "2026-05-03\nhours: 1\nphase: planking\ncomplete: {planking: 50%}");
    PhaseStanding planking = standing.phases().get(0);
    assertEquals(share(1, 2, Complete.Basis.NOTED), planking.complete());
    assertEquals(Optional.empty(), planking.earned());
    assertEquals(List.of(planking), standing.leftOut());
  }

  /** By the formulas on the sums: EV 45 + 10 of BAC 160, AC 60 + 8. */
  @Test
  void theWholeIsTheSumOfThePhasesWithAPlan() throws IOException {
    Standing standing =
        Boats.standing(
            folder,
            PHASES + STRAKES + "carried: {hours: {planking: 56, rigging: 7}, cost: {rigging: 5}}\n",
            "2026-05-01\nphase: planking\nhours: 4\ncost: 12\npieces: {strakes: 6}",
            "2026-05-02\nphase: fairing\nhours: 8\ncost: 3\ncomplete: {fairing: 25%}");
    EarnedValue whole = standing.whole().orElseThrow();
    assertEquals(Boats.hours(160), whole.bac());
    assertEquals(Boats.hours(68), whole.ac());
    assertEquals(BigFraction.of(55, 160), whole.complete());
    assertEquals(Optional.of(BigFraction.of(55, 68)), whole.cpi());
    assertEquals(
        List.of("Rigging"), standing.leftOut().stream().map(p -> p.phase().title()).toList());
    assertEquals(Optional.of(new Money(140_000)), standing.costPlanned());
    assertEquals(new Money(1200), standing.costInPlan());
    assertEquals(List.of(), standing.assumed());
  }

  @Test
  void whatIsUnsortedIsLeftOutByName() throws IOException {
    Standing standing =
        Boats.standing(
            folder, PHASES, "2026-05-01\nhours: 2", "2026-05-02\nphase: fairing\nhours: 2");
    assertEquals(
        List.of("Rigging", "Unsorted"),
        standing.leftOut().stream().map(p -> p.phase().title()).toList());
    assertEquals(
        List.of("Fairing"), standing.assumed().stream().map(p -> p.phase().title()).toList());
  }

  @Test
  void withoutAnyPlanThereIsNoWhole() throws IOException {
    Standing standing =
        Boats.standing(folder, "", "2026-05-01\nphase: planking\nhours: 2\ncost: 4");
    assertEquals(Optional.empty(), standing.whole());
    assertEquals(Optional.empty(), standing.costPlanned());
    assertEquals(Money.ZERO, standing.costInPlan());
    assertEquals(1, standing.leftOut().size());
  }
}
