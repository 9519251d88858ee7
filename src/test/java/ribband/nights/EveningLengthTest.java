package ribband.nights;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Optional;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import ribband.journal.Journal;
import ribband.ledger.Ledger;
import ribband.measure.Hours;
import ribband.pieces.Texts;

/** The builder's usual evening; worked by hand. */
class EveningLengthTest {
  private static final LocalDate NIGHT = LocalDate.of(2026, 7, 1);

  @TempDir Path folder;

  private EveningLength usual(String... entries) throws Exception {
    return EveningLength.usual(Ledger.of(Texts.journal(folder, "", entries)).nights(), NIGHT);
  }

  private static EveningLength minutes(long minutes) {
    return new EveningLength(Optional.of(Hours.ofMinutes(minutes)), EveningLength.From.USUAL);
  }

  @Test
  void theMiddleNight() throws Exception {
    assertEquals(
        minutes(150),
        usual(
            "2026-06-01\nhours: 1",
            "2026-06-01-late\nhours: 1:30",
            "2026-06-02\nhours: 0",
            "2026-06-03\nhours: 6",
            "2026-06-04\nhours: 2",
            "2026-07-02\nhours: 1"));
  }

  @Test
  void theMeanOfTheMiddleTwoToTheSecond() throws Exception {
    assertEquals(minutes(135), usual("2026-06-01\nhours: 2", "2026-07-01\nhours: 2.5"));
    assertEquals(
        new Hours(4),
        usual("2026-06-01\nhours: 0.0008", "2026-07-01\nhours: 0.0011").hours().orElseThrow());
  }

  /** 26 weeks before 1 July is 31 December: the first day that counts is the next. */
  @Test
  void onlyTheLast26WeeksWhereThereAreAny() throws Exception {
    assertEquals(
        minutes(240),
        usual("2025-12-30\nhours: 1", "2025-12-31\nhours: 1", "2026-01-01\nhours: 4"));
  }

  @Test
  void elseAllOfThem() throws Exception {
    assertEquals(minutes(90), usual("2025-12-30\nhours: 1", "2025-12-31\nhours: 2"));
  }

  @Test
  void withoutHoursItIsUnknown() throws Exception {
    assertEquals(
        new EveningLength(Optional.empty(), EveningLength.From.UNKNOWN),
        usual("2026-06-01\nhours: 0"));
  }

  @Test
  void theSettingTakesTheProjectsClamps() throws Exception {
    Journal journal = Texts.journal(folder, "clamps: 24\n", "2026-06-01\nhours: 2");
    Setting usual = Setting.usual(Ledger.of(journal).nights(), journal.project(), NIGHT);
    assertEquals(new Setting(minutes(120), OptionalInt.of(24)), usual);
    assertEquals(
        new Setting(EveningLength.given(Hours.ofMinutes(150)), OptionalInt.of(36)),
        usual.withClamps(36).withEvening(Hours.ofMinutes(150)));
  }
}
