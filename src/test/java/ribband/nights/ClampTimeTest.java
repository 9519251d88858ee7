package ribband.nights;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import ribband.measure.Saying;

/** At which temperature clamps are reckoned; worked by hand, every 18 F colder twice as long. */
class ClampTimeTest {
  private static final String PROJECT =
      """
      adhesives: {epoxy: {rated at: 72 F, clamp time: 8 h}, slow: {rated at: 72 F, clamp time: 20 h}, tar: {}}
      pieces: {strakes: {total: 16, adhesive: epoxy, clamps: 10}, frames: {total: 9, clamps: 2}}
      shop temperatures: {jan: 36 F, mar: 54 F}
      """;

  @TempDir Path folder;

  private String time(String kind, String project, String... entries) throws Exception {
    Shop shop = Shop.at(folder, "2026-03-20T19:00", project, entries);
    ClampTime time = shop.nights().of(shop.counts().get(kind), Shop.with(24, 60)).clampTime();
    return time.warm().from().word()
        + ", "
        + time.lasts().value().map(Saying::span).orElse(time.lasts().why());
  }

  private static String glued(String day, String joints) {
    return day + "\npieces: {strakes: 1, frames: 1}\njoints: [" + joints + "]";
  }

  @Test
  void theJointsOfTheLatestNightThatMadeSomeAndGlued() throws Exception {
    assertEquals(
        "entry, 16 h",
        time(
            "strakes",
            PROJECT,
            glued("2026-03-01", "{adhesive: epoxy, temperature: 72 F}"),
            glued("2026-03-02", "{adhesive: epoxy, temperature: 54 F}, {adhesive: epoxy}"),
            "2026-03-03\npieces: {strakes: 1}",
            "2026-03-04\njoints: [{adhesive: epoxy, temperature: 90 F}]"));
  }

  @Test
  void elseTheMonthsMeanOfTheNight() throws Exception {
    assertEquals(
        "month, 16 h",
        time(
            "strakes",
            PROJECT,
            glued("2026-01-01", "{adhesive: epoxy, temperature: 72 F}"),
            glued("2026-01-02", "{adhesive: epoxy}")));
  }

  @Test
  void elseAsRated() throws Exception {
    assertEquals(
        "rated, 8 h", time("strakes", PROJECT.replace(", mar: 54 F", ""), "2026-03-01\nhours: 1"));
  }

  @Test
  void theKindsAdhesiveElseTheJoints() throws Exception {
    String entry = glued("2026-03-01", "{adhesive: slow, temperature: 72 F}");
    assertEquals("entry, 8 h", time("strakes", PROJECT, entry));
    assertEquals("entry, 20 h", time("frames", PROJECT, entry));
    assertEquals("month, no adhesive is named", time("frames", PROJECT, "2026-03-01\nhours: 1"));
    assertEquals(
        "entry, tar has no \"clamp time\" in project.yaml",
        time("frames", PROJECT, glued("2026-03-01", "{adhesive: tar, temperature: 72 F}")));
  }
}
