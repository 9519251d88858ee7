package ribband.nights;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Clamps that are still on; worked by hand. */
class HeldClampsTest {
  private static final String PROJECT =
      """
      adhesives: {epoxy: {rated at: 72 F, clamp time: 8 h, coldest: 50 F}, tar: {}}
      pieces: {strakes: {total: 16, adhesive: epoxy, clamps: 10, hours: 1}, frames: {total: 9, clamps: 2}, spars: {total: 4}}
      clamps: 24
      """;

  @TempDir Path folder;

  private List<String> held(String now, String project, String... entries) throws Exception {
    return Shop.WORDS.held(Shop.at(folder, now, project, entries).nights().held());
  }

  private static String joint(String keys) {
    return "joints: [{name: Garboard, " + keys + "}]";
  }

  private static String night(String joints) {
    return "2026-03-14\npieces: {strakes: 2, spars: 1}\n" + joints;
  }

  /** At 54 F 8 h are 16: clamped at 21:00, off at 13:00. */
  @Test
  void untilTheJointLetsThemGo() throws Exception {
    String entry = night(joint("adhesive: epoxy, clamped at: 21:00, temperature: 54 F"));
    assertEquals(
        List.of("20 on strakes until 13:00 on 15 March 2026"),
        held("2026-03-15T12:59", PROJECT, entry));
    assertEquals(List.of(), held("2026-03-15T13:00", PROJECT, entry));
  }

  @Test
  void theLongestOfItsJointsHoldsThem() throws Exception {
    assertEquals(
        List.of("20 on strakes until 13:00 on 15 March 2026"),
        held(
            "2026-03-15T08:00",
            PROJECT,
            night(
                "joints: [{adhesive: epoxy, clamped at: 21:00, temperature: 54 F}, {adhesive: epoxy,"
                    + " clamped at: 22:00, temperature: 72 F}, {adhesive: epoxy}]")));
  }

  /** Without a time they went on at midnight at the latest; as rated they are off at 08:00. */
  @Test
  void withoutATimeItIsTheEndOfItsDay() throws Exception {
    List<String> eight = List.of("20 on strakes until 08:00 on 15 March 2026 at the latest");
    assertEquals(eight, held("2026-03-15T07:59", PROJECT, night("hours: 2")));
    assertEquals(List.of(), held("2026-03-15T08:00", PROJECT, night("hours: 2")));
    assertEquals(eight, held("2026-03-15T07:00", PROJECT, night(joint("adhesive: epoxy"))));
    assertEquals(
        List.of("20 on strakes until 16:00 on 15 March 2026 at the latest"),
        held("2026-03-15T07:00", PROJECT, night(joint("temperature: 54 F"))));
    assertEquals(
        List.of("20 on strakes until 16:00 on 15 March 2026 at the latest"),
        held("2026-03-15T07:00", PROJECT + "shop temperatures: {mar: 54 F}\n", night("hours: 1")));
  }

  @Test
  void tooColdTheyMayBeOnForAWeek() throws Exception {
    List<String> cold = List.of("20 on strakes, glued too cold to tell until when");
    String entry = night(joint("adhesive: epoxy, clamped at: 21:00, temperature: 40 F"));
    assertEquals(cold, held("2026-03-21T23:59", PROJECT, entry));
    assertEquals(List.of(), held("2026-03-22T00:00", PROJECT, entry));
    assertEquals(
        cold,
        held("2026-03-21T23:59", PROJECT + "shop temperatures: {mar: 40 F}\n", night("hours: 1")));
  }

  @Test
  void whatNothingTellsOfIsFree() throws Exception {
    assertEquals(
        List.of(), held("2026-03-14T23:00", PROJECT, "2026-03-14\npieces: {frames: 3, spars: 2}"));
    assertEquals(
        List.of(),
        held("2026-03-14T23:00", PROJECT, night(joint("adhesive: tar, clamped at: 21:00"))));
  }

  @Test
  void allKindsTogetherByDate() throws Exception {
    String glue = joint("adhesive: epoxy, clamped at: 21:00");
    Shop shop =
        Shop.at(
            folder,
            "2026-03-14T22:00",
            PROJECT,
            "2026-03-13\npieces: {frames: 3}\n" + glue.replace("21:00", "2026-03-14 20:00"),
            "2026-03-14\npieces: {strakes: 1, frames: 1}\n" + glue);
    assertEquals(
        List.of(
            "6 on frames until 04:00 on 15 March 2026",
            "10 on strakes until 05:00 on 15 March 2026",
            "2 on frames until 05:00 on 15 March 2026"),
        Shop.WORDS.held(shop.nights().held()));
    assertEquals(18, shop.nights().held().number());
    Nightly night = shop.strakes(Shop.with(36, 300));
    assertEquals(18, night.clamping().value().orElseThrow().free());
    assertEquals(1, night.most());
    assertEquals(0, shop.strakes(Shop.with(12, 300)).clamping().value().orElseThrow().free());
  }
}
