package ribband.pieces;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import ribband.measure.Hours;

/** The second side goes by its own rate once it has three sessions; worked by hand. */
class SideRateTest {
  private static final String PROJECT =
      "pieces: {strakes: {total: 16, sides: [port, starboard], hours: 5}}\n";

  @TempDir Path folder;
  private final List<String> entries = new ArrayList<>();

  private SideRateTest night(String pieces, String hours) {
    entries.add(
        "2026-03-"
            + (entries.size() + 10)
            + "\nhours: "
            + hours
            + "\npieces: {strakes: {"
            + pieces
            + "}}");
    return this;
  }

  private PieceCount count() throws Exception {
    return Texts.strakes(
        folder, LocalDate.of(2026, 12, 31), PROJECT, entries.toArray(String[]::new));
  }

  private static String rate(PieceCount count, int side) {
    Rate rate = count.rate(count.sides().get(side)).orElseThrow();
    return rate.secondsEach() + " " + rate.basis();
  }

  /** Port: 8 in 8 x 4 h. Starboard: 2 in 2 x 1 h, then a third. */
  @Test
  void theThirdSessionCounts() throws Exception {
    for (int i = 1; i <= 8; i++) {
      night("port: 1", "4");
    }
    night("starboard: 1", "1").night("starboard: 1", "1");
    PieceCount two = count();
    // 34 h for 10, 12,240 s each; 6 left.
    assertEquals("14400 SIDE", rate(two, 0));
    assertEquals("12240 KIND", rate(two, 1));
    assertEquals(Optional.of(new Hours(6 * 12_240)), two.hoursLeft());
    night("starboard: 1", "1");
    PieceCount three = count();
    assertEquals("3600 SIDE", rate(three, 1));
    assertEquals(Optional.of(Hours.ofMinutes(5 * 60)), three.hoursLeft());
    assertEquals(Optional.of(Hours.ZERO), three.hoursLeft(three.sides().get(0)));
    assertEquals(Optional.of(Hours.ofMinutes(5 * 60)), three.hoursLeft(three.sides().get(1)));
  }

  @Test
  void sessionsWithoutHoursAreNotOfTheThree() throws Exception {
    night("starboard: 1", "1").night("starboard: 1", "3").night("starboard: 1", "0");
    PieceCount count = count();
    assertEquals(3, count.sides().get(1).sessions().all().size());
    assertEquals("7200 KIND", rate(count, 1));
  }

  @Test
  void beforeAnyItIsThePlan() throws Exception {
    night("port: 1", "0");
    PieceCount count = count();
    assertEquals("18000 PLANNED", rate(count, 1));
    assertEquals(Optional.of(Hours.ofMinutes(15 * 300)), count.hoursLeft());
  }

  /** 4 h for one to port and three to starboard: an hour each. */
  @Test
  void aNightOnBothSidesIsSplitByPieces() throws Exception {
    for (int i = 0; i < 3; i++) {
      night("port: 1, starboard: 2", "4:30");
    }
    night("port: 1, starboard: 0", "1:12");
    assertEquals(3, count().sides().get(1).sessions().all().size());
    entries.remove(3);
    night("port: 1, starboard: -1", "3").night("port: 2, starboard: -1", "2");
    PieceCount count = count();
    // 3 x 1:30 for three, and 2 h for two on the night that took one back.
    assertEquals("4680 SIDE", rate(count, 0));
    assertEquals("5400 SIDE", rate(count, 1));
    assertEquals(4, count.sides().get(0).sessions().all().size());
    // 2 left to port, 4 to starboard.
    assertEquals(Optional.of(new Hours(2 * 4680 + 4 * 5400)), count.hoursLeft());
  }

  /**
   * Two of no known side are done, so of the 12 that the sides have left only 10 are: port 5 at 1
   * h, starboard 7 at the whole rate of 7 h for 6, times 10/12.
   */
  @Test
  void whatNoSideWasToldOfIsTakenFromBoth() throws Exception {
    night("port: 1", "1").night("port: 1", "1").night("port: 1", "1").night("starboard: 1", "2");
    entries.add("2026-03-20\nhours: 2\npieces: {strakes: 2}");
    PieceCount count = count();
    assertEquals("4200 KIND", rate(count, 1));
    assertEquals(
        Optional.of(BigFraction.of(5 * 3600 + 7 * 4200).multiply(10).divide(12)),
        count.secondsLeft());
  }

  @Test
  void oneTakenBackOfNoKnownSideIsStillToMake() throws Exception {
    night("port: 8, starboard: 8", "16");
    entries.add("2026-03-20\npieces: {strakes: -1}");
    PieceCount count = count();
    assertEquals(1, count.left());
    assertEquals(Optional.of(Hours.ofMinutes(60)), count.hoursLeft());
  }
}
