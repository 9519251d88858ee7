package ribband.pieces;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalLong;
import org.apache.commons.numbers.fraction.BigFraction;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import ribband.measure.Hours;

/** What is made and what is left of a kind; the figures are worked by hand. */
class PieceCountTest {
  private static final LocalDate LATE = LocalDate.of(2026, 12, 31);
  private static final String SIDES =
      "pieces: {strakes: {total: 16, sides: [port, starboard], hours: 5}}\n";
  private static final String PLAIN = "pieces: {strakes: {total: 19}}\n";

  @TempDir Path folder;

  private PieceCount strakes(String project, String... entries) throws Exception {
    return Texts.strakes(folder, LATE, project, entries);
  }

  private static String said(Side side) {
    return side.name() + " " + side.done() + " of " + side.total() + ", " + side.left() + " left";
  }

  @Test
  void kindsStandInTheProjectsOrder() throws Exception {
    Map<String, PieceCount> counts =
        PieceCount.of(
            Texts.journal(
                folder,
                "pieces: {strakes: {total: 16}, Floor Timbers: {total: 7}, frames: {total: 3}}\n",
                "2026-03-01\npieces: {floor-timbers: 2}"),
            LATE);
    assertEquals(List.of("strakes", "floor-timbers", "frames"), List.copyOf(counts.keySet()));
    assertEquals(5, counts.get("floor-timbers").left());
    assertEquals(0, counts.get("frames").done());
  }

  @Test
  void whatComesLaterDoesNotCount() throws Exception {
    PieceCount count =
        Texts.strakes(
            folder,
            LocalDate.of(2026, 3, 2),
            PLAIN,
            "2026-03-01\npieces: {strakes: 2}",
            "2026-03-02\npieces: {strakes: 3}",
            "2026-03-03\npieces: {strakes: 4}");
    assertEquals(5, count.done());
    assertEquals(14, count.left());
    assertEquals(2, count.nights());
    assertEquals(BigFraction.of(5, 19), count.share());
    assertEquals("26%", count.shareInWords());
  }

  @Test
  void sidesShareTheTotal() throws Exception {
    PieceCount count =
        strakes(
            SIDES,
            "2026-03-01\npieces: {strakes: {port: 2, starboard: 1}}",
            "2026-03-02\npieces: {strakes: 3}",
            "2026-03-03\npieces: {strakes: {port: -1}}");
    assertEquals(5, count.done());
    assertEquals(
        List.of("port 1 of 8, 7 left", "starboard 1 of 8, 7 left"),
        count.sides().stream().map(PieceCountTest::said).toList());
  }

  @Test
  void theOddOneBelongsToTheSideThatMadeIt() throws Exception {
    String odd = SIDES.replace("16", "3");
    assertEquals(
        List.of("port 1 of 2, 1 left", "starboard 1 of 1, 0 left"),
        strakes(odd, "2026-03-01\npieces: {strakes: {port: 1, starboard: 1}}").sides().stream()
            .map(PieceCountTest::said)
            .toList());
    assertEquals(
        List.of("port 1 of 1, 0 left", "starboard 2 of 2, 0 left"),
        strakes(odd, "2026-03-01\npieces: {strakes: {port: 1, starboard: 2}}").sides().stream()
            .map(PieceCountTest::said)
            .toList());
  }

  @Test
  void numbersAreToldWhereEveryOneIs() throws Exception {
    PieceCount count =
        strakes(
            SIDES,
            "2026-03-01\npieces: {strakes: {port: [3, 1], starboard: [2]}}",
            "2026-03-02\npieces: {strakes: {port: [-3], starboard: 1}}");
    assertEquals(Optional.of(new Numbered(List.of(1), 8)), count.sides().get(0).numbered());
    assertEquals(
        List.of(2, 3, 4, 5, 6, 7, 8), count.sides().get(0).numbered().orElseThrow().left());
    assertEquals(Optional.empty(), count.sides().get(1).numbered());
    assertEquals(Optional.empty(), count.numbered());
    assertEquals(3, count.done());
  }

  @Test
  void numbersBeyondASidesShareTellNotWhichAreLeft() throws Exception {
    PieceCount count = strakes(SIDES, "2026-03-01\npieces: {strakes: {port: [8], starboard: [9]}}");
    assertEquals(
        List.of(1, 2, 3, 4, 5, 6, 7), count.sides().get(0).numbered().orElseThrow().left());
    assertEquals(Optional.empty(), count.sides().get(1).numbered());
  }

  @Test
  void aKindWithoutSidesIsNumberedWhole() throws Exception {
    String project = PLAIN.replace("19", "3");
    assertEquals(
        List.of(1, 3),
        strakes(project, "2026-03-01\npieces: {strakes: [2]}").numbered().orElseThrow().left());
    assertEquals(
        Optional.of(new Numbered(List.of(), 3)),
        strakes(project, "2026-03-01\npieces: {strakes: 0}").numbered());
    assertEquals(Optional.empty(), strakes(project, "2026-03-01\npieces: {strakes: 1}").numbered());
  }

  /** After a count was taken back, a number may come again; nobody knows which ones there are. */
  @Test
  void whatWasTakenBackByCountHidesTheNumbers() throws Exception {
    PieceCount count =
        strakes(
            PLAIN,
            "2026-03-01\npieces: {strakes: [1, 2]}",
            "2026-03-02\npieces: {strakes: -1}",
            "2026-03-03\npieces: {strakes: [2]}");
    assertEquals(2, count.done());
    assertEquals(Optional.empty(), count.numbered());
  }

  /** 15 left at 4 a night: 4 nights; with 1 March the first of them, 4 March is the last. */
  @Test
  void fifteenLeftAtFourANight() throws Exception {
    PieceCount count = strakes(PLAIN, "2026-02-28\nhours: 2\npieces: {strakes: 4}");
    assertEquals(15, count.left());
    assertEquals(OptionalLong.of(4), count.sessionsLeft());
    assertEquals(OptionalLong.of(4), count.nightsLeft());
    assertEquals(Optional.of(LocalDate.of(2026, 3, 4)), count.lastNight(LocalDate.of(2026, 3, 1)));
  }

  @Test
  void theMedianOfSessionsIsExact() throws Exception {
    String[] entries = {
      "2026-03-01\npieces: {strakes: 1}",
      "2026-03-02\npieces: {strakes: 5}",
      "2026-03-03\npieces: {strakes: 2}",
      "2026-03-04\npieces: {strakes: 3}",
      "2026-03-05\npieces: {strakes: -1}",
      "2026-03-06\nhours: 2"
    };
    PieceCount count = strakes(PLAIN, entries);
    assertEquals(4, count.sessions().all().size());
    assertEquals(Optional.of(BigFraction.of(5, 2)), count.sessions().median());
    // 9 left at 2 1/2: 3.6.
    assertEquals(OptionalLong.of(4), count.sessionsLeft());
    entries[4] = "2026-03-05\npieces: {strakes: 1}";
    assertEquals(Optional.of(BigFraction.of(2)), strakes(PLAIN, entries).sessions().median());
  }

  /**
   * Four nights of planking from the first that made one to the last, two of them made 2 in all:
   * two nights a piece, 17 left. The night before, and nights at other work, are not of the pace.
   */
  @Test
  void nightsThatFinishNoneAreOfThePace() throws Exception {
    String project =
        "phases: [{id: planking}, {id: rig}]\npieces: {strakes: {total: 19, phase: planking}}\n";
    PieceCount count =
        strakes(
            project,
            "2026-02-27\nhours: {planking: 3}",
            "2026-03-01\nhours: {planking: 1}",
            "2026-03-01-b\nhours: {planking: 2}\npieces: {strakes: 1}",
            "2026-03-01-c\nhours: {planking: 1}",
            "2026-03-02\nhours: {planking: 3}",
            "2026-03-03\nhours: {rig: 3}",
            "2026-03-04\nhours: {rig: 1}\npieces: {strakes: 1}",
            "2026-03-05\nhours: {planking: 0:30}");
    assertEquals(4, count.nights());
    assertEquals(OptionalLong.of(34), count.nightsLeft());
    assertEquals(Optional.of(BigFraction.of(7200)), count.sessions().secondsEach());
    assertEquals(1, count.sessions().timed());
  }

  @Test
  void withoutAPhaseAllHoursAreItsOwn() throws Exception {
    PieceCount count =
        strakes(
            "phases: [{id: planking}, {id: rig}]\n" + PLAIN,
            "2026-03-01\nhours: {planking: 1, rig: 2}\npieces: {strakes: 2}",
            "2026-03-02\nhours: {rig: 2}");
    assertEquals(new Hours(5400), count.rate().orElseThrow().each());
    assertEquals(Rate.Basis.KIND, count.rate().orElseThrow().basis());
    assertEquals(2, count.nights());
  }

  @Test
  void nothingIsKnownBeforeTheFirst() throws Exception {
    PieceCount count = strakes(PLAIN, "2026-03-01\nhours: 2");
    assertEquals(0, count.nights());
    assertEquals(Optional.empty(), count.sessions().median());
    assertEquals(OptionalLong.empty(), count.sessionsLeft());
    assertEquals(OptionalLong.empty(), count.nightsLeft());
    assertEquals(Optional.empty(), count.lastNight(LATE));
    assertEquals(Optional.empty(), count.rate());
    assertEquals(Optional.empty(), count.hoursLeft());
    assertEquals("0%", count.shareInWords());
  }

  @Test
  void whatWasAllScrappedHasNoPace() throws Exception {
    PieceCount count =
        strakes(
            PLAIN,
            "2026-03-01\nhours: 2\npieces: {strakes: 1}",
            "2026-03-02\npieces: {strakes: -1}");
    assertEquals(OptionalLong.empty(), count.nightsLeft());
    assertEquals(OptionalLong.of(19), count.sessionsLeft());
  }

  @Test
  void plannedHoursHoldUntilOneIsMade() throws Exception {
    PieceCount planned = strakes(SIDES, "2026-03-01\nhours: 2");
    assertEquals(Optional.of(Hours.ofMinutes(16 * 5 * 60)), planned.hoursLeft());
    assertEquals(Rate.Basis.PLANNED, planned.rate().orElseThrow().basis());
    PieceCount made = strakes(SIDES, "2026-03-01\nhours: 2\npieces: {strakes: 1}");
    assertEquals(Optional.of(Hours.ofMinutes(15 * 2 * 60)), made.hoursLeft());
  }

  @Test
  void whatIsDoneHasNothingLeft() throws Exception {
    PieceCount count =
        strakes(
            PLAIN.replace("19", "2"), "2026-03-01\npieces: {strakes: 2}", "2026-03-02\nhours: 1");
    assertEquals(OptionalLong.of(0), count.sessionsLeft());
    assertEquals(OptionalLong.of(0), count.nightsLeft());
    assertEquals(Optional.empty(), count.lastNight(LATE));
    assertEquals(Optional.of(Hours.ZERO), count.hoursLeft());
    assertEquals("100%", count.shareInWords());
  }

  @Test
  void hoursLeftAreRoundedOnce() throws Exception {
    PieceCount count =
        strakes(PLAIN.replace("19", "4"), "2026-03-01\nhours: 1h01\npieces: {strakes: 3}");
    assertEquals(Optional.of(BigFraction.of(1220)), count.secondsLeft());
    count = strakes(PLAIN.replace("19", "9"), "2026-03-01\nhours: 0h10\npieces: {strakes: 7}");
    assertEquals(Optional.of(BigFraction.of(1200, 7)), count.secondsLeft());
    assertEquals(Optional.of(new Hours(171)), count.hoursLeft());
    assertEquals(new Hours(86), count.rate().orElseThrow().each());
  }

  @Test
  void aSessionKnowsItsEntry() throws Exception {
    PieceCount count =
        strakes(SIDES, "2026-03-01\nhours: 3\npieces: {strakes: {port: 2, starboard: 1}}");
    Session session = count.sessions().all().get(0);
    assertEquals("2026-03-01", session.entry().address());
    assertEquals(3, session.pieces());
    assertEquals(Hours.ofMinutes(180), session.hours());
    Session port = count.sides().get(0).sessions().all().get(0);
    assertEquals(2, port.pieces());
    assertEquals(Hours.ofMinutes(120), port.hours());
    assertTrue(port.entry() == session.entry());
  }
}
