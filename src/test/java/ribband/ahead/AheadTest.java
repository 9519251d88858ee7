package ribband.ahead;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.time.LocalDate;
import java.time.YearMonth;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import ribband.jobs.Evening;
import ribband.jobs.OpenJob;
import ribband.jobs.OpenJob.State;
import ribband.journal.Journal;
import ribband.measure.Hours;
import ribband.nights.EveningLength;
import ribband.pieces.Texts;
import ribband.plan.Forecast;
import ribband.stock.Stock;
import ribband.stock.Stock.Told;

/** The figures of a small journal, worked by hand. */
class AheadTest {
  @TempDir Path folder;

  /** Strakes took 4, 4, 3 and 4 hours: 15 for four; knees 2 for two; fairing is planned with 27. */
  @Test
  void hoursLeftAreThoseOfThePiecesAndOfThePlan() throws Exception {
    Ahead ahead = Skiff.ahead(folder, Wish.NONE);
    assertEquals(Optional.of(hours(15)), ahead.pieces().get("strakes").hoursLeft());
    assertEquals(Optional.of(hours(2)), ahead.pieces().get("knees").hoursLeft());
    assertEquals(Optional.of(hours(15 + 2 + 27)), ahead.left().total().value());
    assertEquals(List.of("Rigging"), ahead.left().leftOut());
  }

  /**
   * Weeks of 8 and of 5 hours, 44 left: done by the sixth in 7 of 64 futures, by the seventh in 99
   * of 128, by the eighth in 247 of 256. The first whole week ends on 29 March.
   */
  @Test
  void theDatesAreThoseOfTheFullEnumeration() throws Exception {
    Forecast forecast = Skiff.ahead(folder, Wish.NONE).forecast();
    assertEquals(Optional.of(LocalDate.of(2026, 5, 10)), forecast.p50().value());
    assertEquals(Optional.of(LocalDate.of(2026, 5, 17)), forecast.p80().value());
    assertEquals(Optional.of(LocalDate.of(2026, 5, 17)), forecast.p95().value());
  }

  @Test
  void theSameJournalGivesTheSameDatesAndTheSameFan() throws Exception {
    Ahead one = Skiff.ahead(folder, Wish.NONE);
    Ahead other = Skiff.ahead(folder, Wish.NONE);
    assertEquals(one.forecast(), other.forecast());
    assertEquals(one.fan(), other.fan());
    assertEquals(LocalDate.of(2026, 3, 17), one.fan().get(0).date());
    assertEquals(hours(44), one.fan().get(0).p50());
    assertEquals(LocalDate.of(2026, 5, 17), one.fan().get(one.fan().size() - 1).date());
    assertEquals(Hours.ZERO, one.fan().get(one.fan().size() - 1).p95());
  }

  @Test
  void jobsAreReadyHeldOrWaiting() throws Exception {
    Ahead ahead = Skiff.ahead(folder, Wish.NONE);
    assertEquals(List.of("shed"), ids(ahead, State.READY));
    assertEquals(List.of("trim"), ids(ahead, State.HELD));
    assertEquals(List.of("fair", "rig", "prime"), ids(ahead, State.WAITING));
  }

  private static List<String> ids(Ahead ahead, State state) {
    return ahead.jobs().in(state).stream().map(OpenJob::job).map(job -> job.id()).toList();
  }

  /** 27 hours of fairing in evenings of four are seven nights, and one is for the mast. */
  @Test
  void theLongestChainGoesThroughThePhase() throws Exception {
    Ahead ahead = Skiff.ahead(folder, Wish.NONE);
    assertEquals(8, ahead.chain().nights());
    assertEquals(
        List.of("fairing", "rig"),
        ahead.chain().links().stream().map(link -> link.goal().name()).toList());
  }

  /** The one set of clamps holds the last strake until the morning. */
  @Test
  void nothingThatIsHeldFitsTheEvening() throws Exception {
    Evening evening = Skiff.ahead(folder, Wish.NONE).evening().orElseThrow();
    assertEquals(hours(4), evening.length());
    assertEquals(List.of("knees", "shed"), whats(evening.together()));
    assertEquals(List.of(), evening.instead());
    assertEquals(List.of(), evening.tooLong());
    assertEquals(List.of(), evening.unknown());
  }

  @Test
  void moreClampsBringTheStrakesIntoTheEvening() throws Exception {
    Evening evening = Skiff.ahead(folder, Skiff.clamps(36)).evening().orElseThrow();
    assertEquals(List.of("strakes"), whats(evening.together()));
    assertEquals(List.of("knees", "shed"), whats(evening.instead()));
  }

  private static List<String> whats(List<Evening.Item> items) {
    return items.stream().map(item -> item.goal().name()).toList();
  }

  @Test
  void aWishStandsBeforeWhatIsUsual() throws Exception {
    Ahead ahead = Skiff.ahead(folder, Skiff.both(5, 36));
    assertEquals(EveningLength.given(hours(5)), ahead.setting().evening());
    assertEquals(OptionalInt.of(36), ahead.setting().clamps());
    assertEquals(hours(5), ahead.evening().orElseThrow().length());
    Ahead usual = Skiff.ahead(folder, Wish.NONE);
    assertEquals(EveningLength.From.USUAL, usual.setting().evening().from());
    assertEquals(OptionalInt.of(10), usual.setting().clamps());
    assertEquals(Optional.empty(), usual.changes());
    assertTrue(Wish.NONE.isNone());
  }

  @Test
  void theNextNightIsTonightUntilItsWorkIsWritten() throws Exception {
    Journal journal = Skiff.journal(folder);
    assertEquals(
        LocalDate.of(2026, 3, 18), Skiff.at("2026-03-17T22:00", journal, Wish.NONE).nextNight());
    assertEquals(
        LocalDate.of(2026, 3, 16), Skiff.at("2026-03-16T22:00", journal, Wish.NONE).nextNight());
  }

  /** Told without hours: nothing says that the night is over. */
  @Test
  void aNightWithoutHoursIsStillToCome() throws Exception {
    Journal journal = Texts.journal(folder, "phases: [planking]\n", "2026-03-17\nhours: 0\n");
    assertEquals(
        LocalDate.of(2026, 3, 17), Skiff.at("2026-03-17T22:00", journal, Wish.NONE).nextNight());
  }

  @Test
  void laterEntriesDoNotCount() throws Exception {
    Ahead ahead = Skiff.at("2026-03-05T18:00", Skiff.journal(folder), Wish.NONE);
    assertEquals(2, ahead.journal().entries().size());
    assertEquals(6, ahead.pieces().get("strakes").left());
    assertEquals(LocalDate.of(2026, 3, 5), ahead.asOf());
    assertEquals(List.of("shed"), ids(ahead, State.READY));
    assertEquals(List.of(), ids(ahead, State.HELD));
    assertEquals(Optional.empty(), ahead.forecast().p50().value());
    assertEquals(Forecast.NO_PACE, ahead.forecast().p50().why());
    assertEquals(List.of(), ahead.fan());
    assertEquals(List.of(), ahead.cold());
  }

  /** Readers are told of the last entry's night, just over. */
  @Test
  void readersAreToldOfTheLastNight() throws Exception {
    Journal journal = Skiff.journal(folder);
    Stock stock = Stock.of(journal, LocalDate.of(2026, 3, 17), Told.TO_READERS);
    Ahead ahead = Ahead.forReaders(journal, stock);
    assertEquals(LocalDate.of(2026, 3, 17), ahead.asOf());
    assertEquals(List.of("trim"), ids(ahead, State.HELD));
    assertEquals(Skiff.ahead(folder, Wish.NONE).forecast(), ahead.forecast());
    assertEquals("America/Chicago", ahead.zone().getId());
  }

  @Test
  void monthsUpToLaunchThatAreTooColdAreNamed() throws Exception {
    String temperatures =
        "shop temperatures: {January: 40 F, February: 45 F, March: 48 F, April: 49 F, May: 60 F,"
            + " June: 70 F, July: 72 F, August: 72 F, September: 68 F, October: 60 F,"
            + " November: 50 F, December: 42 F}\n";
    Journal journal = Texts.journal(folder, Skiff.PROJECT + temperatures, Skiff.NIGHTS);
    Ahead ahead = Skiff.at("2026-03-17T22:00", journal, Wish.NONE);
    assertEquals(
        List.of(YearMonth.of(2026, 3), YearMonth.of(2026, 4)),
        ahead.cold().stream().map(cold -> cold.month()).toList());
  }

  @Test
  void kindsThatAreAllMadeAreNotForTheNightsToCome() throws Exception {
    Journal journal =
        Texts.journal(
            folder,
            "phases: [planking]\npieces: {knees: {total: 2, phase: planking}, ribs: {total: 1}}\n",
            "2026-03-02\nphase: planking\nhours: 2\npieces: {knees: 2, ribs: 1}\n");
    Ahead ahead = Skiff.at("2026-03-17T22:00", journal, Wish.NONE);
    assertEquals(Map.of(), ahead.nightly());
    assertEquals(0, ahead.chain().nights());
    assertEquals(List.of(), ahead.evening().orElseThrow().together());
    assertEquals(Forecast.NOTHING_LEFT, ahead.forecast().p50().why());
  }

  @Test
  void aPhaseNotedAsFinishedHasNoMorePiecesToMake() throws Exception {
    String project =
        "phases: [planking, fairing]\npieces: {strakes: {total: 16, phase: planking}, moulds: {total: 2}}\n";
    String night = "2026-03-02\nphase: planking\nhours: 2\npieces: {strakes: 4}\n";
    Journal open = Texts.journal(folder, project, night);
    assertEquals(
        Set.of("strakes", "moulds"),
        Skiff.at("2026-03-17T22:00", open, Wish.NONE).nightly().keySet());
    Journal over = Texts.journal(folder, project, night + "complete: {Planking: 100%}\n");
    Ahead ahead = Skiff.at("2026-03-17T22:00", over, Wish.NONE);
    assertEquals(Set.of("moulds"), ahead.nightly().keySet());
    assertEquals(
        List.of("moulds"), ahead.chain().links().stream().map(l -> l.goal().name()).toList());
  }

  @Test
  void anEmptyJournalLooksAheadToNothing() throws Exception {
    Journal journal = Texts.journal(folder, "");
    Ahead ahead = Ahead.forReaders(journal, Stock.of(journal, LocalDate.EPOCH, Told.TO_READERS));
    assertEquals(LocalDate.EPOCH, ahead.asOf());
    assertEquals(Optional.empty(), ahead.evening());
    assertEquals(0, ahead.chain().nights());
    assertEquals("no phase has planned hours", ahead.forecast().p50().why());
  }

  private static Hours hours(long whole) {
    return Hours.ofMinutes(60 * whole);
  }
}
