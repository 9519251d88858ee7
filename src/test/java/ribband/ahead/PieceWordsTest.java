package ribband.ahead;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Path;
import java.time.LocalDate;
import org.apache.commons.numbers.fraction.BigFraction;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import ribband.pieces.PieceCount;
import ribband.pieces.Texts;

class PieceWordsTest {
  private static final LocalDate TONIGHT = LocalDate.of(2026, 3, 10);
  private static final String SIDED =
      "phases: [planking]\n"
          + "pieces: {strakes: {total: 16, phase: planking, sides: [port, starboard], hours: 5}}\n";
  private static final String PLAIN = "pieces: {strakes: {total: 12}}\n";

  @TempDir Path folder;

  private PieceCount strakes(String project, String... entries) throws Exception {
    return PieceCount.of(Texts.journal(folder, project, entries), TONIGHT).get("strakes");
  }

  private static String night(int day, String hours, String made) {
    return "2026-03-0"
        + day
        + "\nhours: {planking: "
        + hours
        + "}\npieces: {strakes: "
        + made
        + "}";
  }

  @Test
  void whatIsLeftIsToldByNumberWhereItIsKnown() throws Exception {
    PieceCount count =
        strakes(SIDED, night(1, "2", "{port: [1, 2, 5], starboard: [1, 2, 3, 4, 5, 6, 7]}"));
    assertEquals(
        "10 of 16 made, 6 left: port number 3, 4 and 6 to 8; starboard number 8",
        PieceWords.count(count));
  }

  @Test
  void runsOfTwoAreNoSpanAndRunsOfThreeAre() throws Exception {
    PieceCount count = strakes(PLAIN, "2026-03-01\npieces: {strakes: [3, 6, 7, 11]}");
    assertEquals(
        "4 of 12 made, 8 left: number 1, 2, 4, 5, 8 to 10 and 12", PieceWords.count(count));
  }

  @Test
  void whatIsLeftIsCountedWhereNumbersAreNotTold() throws Exception {
    PieceCount count = strakes(SIDED, night(1, "2", "{port: 8, starboard: 3}"));
    assertEquals("11 of 16 made, 5 left: port done; starboard 5", PieceWords.count(count));
  }

  /** 16 less 8 are 8, and 5 and 5 less 2 are 8 again. */
  @Test
  void piecesOfNoSideTakeFromWhatTheSidesHaveLeft() throws Exception {
    PieceCount count =
        strakes(SIDED, night(1, "2", "{port: 3, starboard: [1, 2, 3]}"), night(2, "2", "2"));
    assertEquals(
        "8 of 16 made, 8 left: port 5; starboard number 4 to 8; less 2 made with no side told",
        PieceWords.count(count));
  }

  @Test
  void piecesTakenBackFromNoSideAddToWhatTheSidesHaveLeft() throws Exception {
    PieceCount count =
        strakes(SIDED, night(1, "2", "{port: 8, starboard: 3}"), night(2, "2", "-1"));
    assertEquals(
        "10 of 16 made, 6 left: port done; starboard 5; and 1 taken back with no side told",
        PieceWords.count(count));
  }

  @Test
  void ofNoneMadeAllAreLeft() throws Exception {
    assertEquals("0 of 16 made, 16 left: port 8; starboard 8", PieceWords.count(strakes(SIDED)));
    assertEquals("0 of 12 made, 12 left", PieceWords.count(strakes(PLAIN)));
  }

  @Test
  void ofAllMadeNoneIsNamed() throws Exception {
    PieceCount count = strakes(SIDED, night(1, "2", "{port: 8, starboard: 8}"));
    assertEquals("all 16 made", PieceWords.count(count));
    assertEquals("", PieceWords.pace(count, TONIGHT));
  }

  /** Nights of 1, 2 and one of none in three: 13 left are 9 sessions of 1½, and 13 nights. */
  @Test
  void thePaceCountsTheNightsThatMadeNone() throws Exception {
    PieceCount count =
        strakes(
            SIDED,
            night(1, "2", "{port: 1}"),
            night(2, "2", "{port: 2}"),
            "2026-03-03\nhours: {planking: 2}");
    assertEquals(
        "1½ a session, 9 sessions left; at the pace so far 13 nights left, the last on 22 March"
            + " 2026 if every night from 10 March 2026 is worked",
        PieceWords.pace(count, TONIGHT));
  }

  @Test
  void ofNoneMadeThereIsNoPace() throws Exception {
    assertEquals("", PieceWords.pace(strakes(SIDED), TONIGHT));
  }

  /** One made and one taken back are a session, and none done. */
  @Test
  void takenBackToNoneThereIsNoNight() throws Exception {
    PieceCount count =
        strakes(PLAIN, "2026-03-01\npieces: {strakes: 1}", "2026-03-02\npieces: {strakes: -1}");
    assertEquals("1 a session, 12 sessions left", PieceWords.pace(count, TONIGHT));
  }

  @Test
  void oneSessionAndOneNightAreNotSeveral() throws Exception {
    PieceCount count = strakes(PLAIN, "2026-03-01\npieces: {strakes: 11}");
    assertEquals(
        "11 a session, 1 session left; at the pace so far 1 night left, the last on 10 March 2026"
            + " if every night from 10 March 2026 is worked",
        PieceWords.pace(count, TONIGHT));
  }

  /** Port took 4 h each in three sessions; starboard 6 h in one, and goes by all: 18 h for 4. */
  @Test
  void aSideOfThreeSessionsHasItsOwnRate() throws Exception {
    PieceCount count =
        strakes(
            SIDED,
            night(1, "4", "{port: 1}"),
            night(2, "4", "{port: 1}"),
            night(3, "4", "{port: 1}"),
            night(4, "6", "{starboard: 1}"));
    assertEquals(
        "4½ hours each, 5 hours planned, port 4 hours by its own rate", PieceWords.rate(count));
  }

  @Test
  void rateBeforeTheFirstIsThePlans() throws Exception {
    assertEquals("5 hours each planned", PieceWords.rate(strakes(SIDED)));
    assertEquals("", PieceWords.rate(strakes(PLAIN)));
  }

  @Test
  void numbersAreGlyphsOrTwoPlaces() {
    assertEquals("1½", PieceWords.number(BigFraction.of(3, 2)));
    assertEquals("2.33", PieceWords.number(BigFraction.of(7, 3)));
    assertEquals("3", PieceWords.number(BigFraction.of(3)));
  }
}
