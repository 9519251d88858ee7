package ribband.ahead;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import ribband.journal.Journal;
import ribband.measure.Hours;
import ribband.pieces.Texts;

/**
 * Nights saved and new dates. Where every week before was the same there is nothing to draw: the
 * dates follow by division.
 */
class ChangesTest {
  /** Three nights of 2 h in each of two weeks; each night made one strake of 16. */
  private static final String[] STEADY = {
    night("02"), night("04"), night("06"), night("09"), night("11"), night("13")
  };

  private static final String PROJECT =
      """
      clamps: 10
      phases: [{id: planking, title: Planking}]
      adhesives: {epoxy: {rated at: 72 F, clamp time: 8 h}}
      pieces: {strakes: {total: 30, phase: planking, adhesive: epoxy, clamps: 10}}
      """;

  @TempDir Path folder;

  private static String night(String day) {
    return "2026-03-" + day + "\nphase: planking\nhours: 2\npieces: {strakes: 1}\n";
  }

  private Ahead steady(Wish wish) throws Exception {
    Journal journal = Texts.journal(folder, PROJECT, STEADY);
    return Skiff.at("2026-03-17T18:00", journal, wish);
  }

  private static void assertChange(
      Changes.Kind kind, long saved, LocalDate before, LocalDate after) {
    assertEquals(Optional.of(saved), kind.whatIf().nightsSaved().value());
    assertEquals(Optional.of(before), kind.before().value());
    assertEquals(Optional.of(after), kind.after().value());
  }

  /** 24 at one a night are 24 nights, eight weeks of three; at two a night 12, four weeks. */
  @Test
  void longerEveningsSaveNightsWhereTheClampsAllow() throws Exception {
    Changes changes = steady(Skiff.both(4, 20)).changes().orElseThrow();
    assertChange(changes.kinds().get(0), 12, LocalDate.of(2026, 5, 17), LocalDate.of(2026, 4, 19));
  }

  /** Ten clamps hold one strake: four hours bring no more of them. */
  @Test
  void longerEveningsSaveNothingWhereClampsBind() throws Exception {
    Changes changes = steady(Skiff.evening(4)).changes().orElseThrow();
    assertChange(changes.kinds().get(0), 0, LocalDate.of(2026, 5, 17), LocalDate.of(2026, 5, 17));
  }

  /** 48 hours left are eight weeks of six, and four of twelve: the boat's date goes by hours. */
  @Test
  void theBoatsDateIsThatOfNightsSoLong() throws Exception {
    Ahead ahead = steady(Skiff.evening(4));
    assertEquals(Optional.of(hours(48)), ahead.left().total().value());
    assertEquals(Optional.of(LocalDate.of(2026, 5, 17)), ahead.forecast().p50().value());
    assertEquals(
        Optional.of(LocalDate.of(2026, 4, 19)),
        ahead.changes().orElseThrow().launch().orElseThrow().p95().value());
  }

  @Test
  void clampsDoNotChangeTheBoatsDate() throws Exception {
    Changes changes = steady(Skiff.clamps(20)).changes().orElseThrow();
    assertEquals(Optional.empty(), changes.launch());
    assertEquals(Skiff.clamps(20), changes.wish());
  }

  @Test
  void shorterEveningsCostNights() throws Exception {
    Changes changes = steady(Skiff.evening(1)).changes().orElseThrow();
    assertChange(changes.kinds().get(0), -24, LocalDate.of(2026, 5, 17), LocalDate.of(2026, 7, 12));
  }

  @Test
  void withoutClampsNoneCanBeMade() throws Exception {
    Changes.Kind kind = steady(Skiff.clamps(9)).changes().orElseThrow().kinds().get(0);
    assertEquals("none can be made", kind.whatIf().nightsSaved().why());
    assertEquals("none can be made", kind.after().why());
    assertEquals(Optional.of(LocalDate.of(2026, 5, 17)), kind.before().value());
  }

  /** Weeks of two nights and of one: three nights by the third week in 7 of 8 futures. */
  @Test
  void nightsAreDrawnAsTheWeeksBroughtThem() throws Exception {
    List<Changes.Kind> kinds =
        Skiff.ahead(folder, Skiff.both(5, 36)).changes().orElseThrow().kinds();
    assertChange(kinds.get(0), 1, LocalDate.of(2026, 4, 12), LocalDate.of(2026, 4, 5));
    assertChange(kinds.get(1), 0, LocalDate.of(2026, 3, 29), LocalDate.of(2026, 3, 29));
  }

  private static Hours hours(long whole) {
    return Hours.ofMinutes(60 * whole);
  }
}
