package ribband.pieces;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.math.BigInteger;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import ribband.measure.Hours;

/** Hours of a night that made several kinds; worked by hand. */
class SharedHoursTest {
  private static final String PHASES = "phases: [{id: planking}, {id: rig}]\n";

  @TempDir Path folder;

  private String hours(String pieces, String entry) throws Exception {
    Map<String, PieceCount> counts =
        PieceCount.of(
            Texts.journal(folder, PHASES + "pieces: {" + pieces + "}\n", "2026-03-01\n" + entry),
            LocalDate.of(2026, 3, 1));
    return counts.values().stream()
        .map(
            count ->
                count.kind().name()
                    + count.sessions().all().stream()
                        .map(session -> " " + session.hours().seconds())
                        .collect(Collectors.joining()))
        .collect(Collectors.joining(", "));
  }

  /** 1 x 5 h to 4 x 1/2 h is 5 to 2, of 3:30. */
  @Test
  void plannedHoursSplitThem() throws Exception {
    assertEquals(
        "strakes 9000, frames 3600",
        hours(
            "strakes: {total: 16, phase: planking, hours: 5}, frames: {total: 9, phase: planking,"
                + " hours: 1/2}",
            "hours: {planking: 3:30, rig: 1}\npieces: {strakes: 1, frames: 4}"));
  }

  /** 1 to 4, of 3:30; the odd seconds are not lost. */
  @Test
  void piecesSplitThemWhereOneHasNoPlan() throws Exception {
    assertEquals(
        "strakes 2520, frames 10080",
        hours(
            "strakes: {total: 16, phase: planking, hours: 5}, frames: {total: 9, phase: planking}",
            "hours: {planking: 3:30}\npieces: {strakes: 1, frames: 4}"));
  }

  @Test
  void piecesSplitThemWhereThePlanIsNothing() throws Exception {
    assertEquals(
        "strakes 1800, frames 1800",
        hours(
            "strakes: {total: 16, hours: 0}, frames: {total: 9, hours: 0}",
            "hours: {planking: 0:45, rig: 0:15}\npieces: {strakes: 1, frames: 1}"));
  }

  @Test
  void kindsOfOtherPhasesTakeNone() throws Exception {
    assertEquals(
        "strakes 7200, spars 3600, frames, doors",
        hours(
            "strakes: {total: 16, phase: planking}, spars: {total: 3, phase: rig},"
                + " frames: {total: 9, phase: planking}, doors: {total: 2, phase: planking}",
            "hours: {planking: 2, rig: 1}\npieces: {strakes: 1, spars: 1, frames: 0}"));
  }

  @Test
  void partsAddUpToTheWhole() {
    assertEquals(
        List.of(new Hours(33), new Hours(33), new Hours(34)),
        Shares.of(new Hours(100), LongStream.of(1, 1, 1).mapToObj(BigInteger::valueOf).toList()));
  }
}
