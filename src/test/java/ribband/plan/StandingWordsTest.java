package ribband.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import ribband.journal.Phase;
import ribband.measure.Hours;
import ribband.measure.Money;

class StandingWordsTest {
  @TempDir private Path folder;

  private static String words(String title, String planned, long worked, Complete complete) {
    Optional<Hours> plan = Optional.of(planned).filter(p -> !p.isEmpty()).map(Boats::hoursOf);
    Phase phase = new Phase("p", title, plan, Optional.empty());
    return StandingWords.of(new PhaseStanding(phase, Boats.hours(worked), Money.ZERO, complete));
  }

  private static Complete done(long hundredths, Complete.Basis basis) {
    return Complete.of(BigFraction.of(hundredths, 100), basis);
  }

  @ParameterizedTest
  @CsvSource({
    "50, 74, 'at this rate 148 hours in all, 28 over plan'",
    "50, 60, 'at this rate 120 hours in all, as planned'",
    "50, 54, 'at this rate 108 hours in all, 12 under plan'",
    "70, 100, 'at this rate 143 hours in all, 23 over plan'",
    "100, 131, 'done in 131 hours, 11 over plan'",
    "100, 108, 'done in 108 hours, 12 under plan'",
    "100, 120, 'done in 120 hours, as planned'",
    "100, 0, 'done, no hours noted'",
    "0, 12, '12 hours so far, none of it done yet'",
    "0, 0, no hours yet",
    "40, 0, no hours yet"
  })
  void aPhaseAgainstItsPlanOf120Hours(int hundredths, long worked, String words) {
    assertEquals(words, words("Planking", "120", worked, done(hundredths, Complete.Basis.NOTED)));
    assertEquals(words, words("Planking", "120", worked, done(hundredths, Complete.Basis.PIECES)));
  }

  @Test
  void aShortPhaseIsSaidInQuartersOfAnHour() {
    assertEquals(
        "at this rate 7¾ hours in all, 1¾ over plan",
        words("Knees", "6", 7, done(90, Complete.Basis.NOTED)));
    assertEquals(
        "at this rate 19¾ hours in all, 7¾ over plan",
        words("Knees", "12", 15, done(76, Complete.Basis.NOTED)));
    assertEquals(
        "at this rate 20 hours in all, 8 over plan",
        words("Knees", "12", 15, done(75, Complete.Basis.NOTED)));
  }

  @Test
  void aGuessSaysNothingAboutTheRate() {
    Complete guess = done(50, Complete.Basis.ASSUMED);
    assertEquals(
        "60 of 120 hours used, how far it stands is not noted",
        words("Planking", "120", 60, guess));
    Complete all = done(100, Complete.Basis.ASSUMED);
    assertEquals("131 hours so far, 11 over plan", words("Planking", "120", 131, all));
    assertEquals(
        "120 of 120 hours used, how far it stands is not noted",
        words("Planking", "120", 120, all));
    assertEquals("no hours yet", words("Planking", "120", 0, done(0, Complete.Basis.ASSUMED)));
  }

  @Test
  void withoutAPlanOnlyTheHoursAreSaid() {
    assertEquals("12 hours, no hours planned", words("Rigging", "", 12, Complete.UNKNOWN));
    assertEquals("no hours yet", words("Rigging", "", 0, Complete.UNKNOWN));
    assertEquals("done in 12 hours", words("Rigging", "", 12, done(100, Complete.Basis.NOTED)));
  }

  private String whole(String... entries) throws IOException {
    Standing standing =
        Boats.standing(
            folder,
            """
            phases:
              - {id: planking, hours: 20}
              - {id: fairing, hours: 20}
              - {id: rigging}
            """,
            entries);
    return StandingWords.ofWhole(standing);
  }

  @Test
  void theWholeIsSaidLikeAPhase() throws IOException {
    assertEquals(
        "at this rate 50 hours in all, 10 over plan",
        whole("2026-05-01\nphase: planking\nhours: 20\ncomplete: {planking: 80%}"));
    assertEquals(
        "done in 25 hours, 15 under plan",
        whole(
            "2026-05-01\nphase: planking\nhours: 20\ncomplete: {planking: 100%, fairing: 100%}",
            "2026-05-02\nphase: fairing\nhours: 5"));
  }

  @Test
  void aWholeOfGuessesSaysNothingAboutTheRate() throws IOException {
    assertEquals(
        "10 of 40 hours used, how far it stands is not noted",
        whole("2026-05-01\nphase: planking\nhours: 10"));
  }

  @Test
  void aWholeThatIsPartlyGuessedHasARateAndIsNeverDone() throws IOException {
    assertEquals(
        "at this rate 40 hours in all, as planned; part of it assumed by hours",
        whole(
            "2026-05-01\nphase: planking\nhours: 20\ncomplete: {planking: 100%}",
            "2026-05-02\nphase: fairing\nhours: 20"));
  }

  @Test
  void aGuessBesideHoursWithoutAPlanIsStillAGuess() throws IOException {
    assertEquals(
        "10 of 40 hours used, how far it stands is not noted",
        whole(
            "2026-05-01\nphase: planking\nhours: 10",
            "2026-05-02\nphase: rigging\nhours: 3\ncomplete: {rigging: 50%}"));
  }

  @Test
  void aWholeWithoutHoursOrPlanSaysSo() throws IOException {
    assertEquals("no hours yet", whole("2026-05-01\nphase: rigging\nhours: 10"));
  }

  @Test
  void aWholeWithoutAnyPlanSaysSo() throws IOException {
    Standing standing = Boats.standing(folder, "", "2026-05-01\nphase: planking\nhours: 2");
    assertEquals("no hours planned", StandingWords.ofWhole(standing));
  }

  @Test
  void indicesHaveTwoPlacesAndHoursASign() {
    assertEquals("0.89", StandingWords.index(Optional.of(BigFraction.of(25, 28))));
    assertEquals("1.00", StandingWords.index(Optional.of(BigFraction.ONE)));
    assertEquals("1.13", StandingWords.index(Optional.of(BigFraction.of(9, 8))));
    assertEquals("–", StandingWords.index(Optional.empty()));
    assertEquals("−12½", StandingWords.hours(BigFraction.of(-45_000)));
    assertEquals("12½", StandingWords.hours(BigFraction.of(45_000)));
    assertEquals("0", StandingWords.hours(BigFraction.of(-29)));
    assertEquals("0", StandingWords.hours(BigFraction.ZERO));
  }
}
