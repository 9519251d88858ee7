package ribband.telling;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import ribband.telling.ShopTables.Glue;
import ribband.telling.ShopTables.Material;

/** The tables of materials, joints and coats, whole. */
class ShopTablesTest {
  @TempDir private Path scratch;
  private Teal teal;

  @BeforeEach
  void lay() throws IOException {
    teal = new Teal(scratch.resolve("journal"));
    teal.with(
        "project.yaml",
        """
        name: Teal
        units: us
        time zone: America/Chicago
        phases: [planking]
        materials:
          epoxy: {unit: fl oz, on hand: 20 fl oz}
          glass: {unit: yd, on hand: 5 yd}
        adhesives:
          epoxy: {material: epoxy, clamp time: 8 h, recoat: 3 h to 24 h, full cure: 7 days,
                  spread: 140 in2 per fl oz}
        shop temperatures: {mar: 41 F}
        """);
  }

  @Test
  void materialsThatWentInWithWhatWasEstimatedAndWhatIsLeft() throws IOException {
    teal.entry(
            "2026-03-14-a",
            """
            phase: planking
            hours: 1
            materials: {used: {epoxy: 2 fl oz, ring nails: 40}}
            """)
        .entry(
            "2026-03-15-b",
            """
            phase: planking
            hours: 1
            joints: [{name: Scarf, adhesive: epoxy, area: 10 in x 42 in}]
            """)
        .entry(
            "2026-03-16-c",
            "phase: planking\nhours: 1\nprivate: true\nmaterials: {used: {epoxy: 1 fl oz}}\n");
    assertEquals(
        List.of(
            new Material("epoxy", "6 fl oz", "3 fl oz", "14 fl oz"),
            new Material("ring nails", "40", "", "unknown")),
        teal.shop().materials());
    assertEquals("", teal.shop().otherMaterials());
  }

  @Test
  void materialsThatOnlyPrivateEntriesNameAreCountedAlone() throws IOException {
    teal.entry(
        "2026-03-16-c",
        """
        phase: planking
        hours: 1
        private: true
        materials:
          used: {shellac: 1 fl oz, tar: 2 fl oz}
          bought: [{material: pitch, amount: 1 qt}]
        """);
    assertEquals(List.of(), teal.shop().materials());
    assertEquals("2 more, not listed.", teal.shop().otherMaterials());
  }

  @Test
  void jointsAndCoatsWithTheTemperatureAndWhereItIsFrom() throws IOException {
    teal.entry(
            "2026-03-14-a",
            """
            phase: planking
            hours: 1
            joints:
              - {name: Garboard scarf, adhesive: epoxy, clamped at: 20:40, temperature: 61 F}
              - {name: Breasthook, clamped at: 20:50}
            coats:
              - {what: Inside, adhesive: epoxy, at: 23:59, temperature: 64 F}
            """)
        .entry(
            "2026-03-15-b",
            "phase: planking\nhours: 1\nprivate: true\njoints: [{name: Secret, clamped at: 20:00}]\n")
        .entry(
            "2026-04-01-c",
            "phase: planking\nhours: 1\ncoats: [{what: Outside, adhesive: epoxy, at: 23:00}]\n");
    assertEquals(
        List.of(
            glue("2026-03-14", "14 March 2026", "joint", "Garboard scarf", "epoxy", "61 °F"),
            glue(
                "2026-03-14",
                "14 March 2026",
                "joint",
                "Breasthook",
                "",
                "41 °F, the month's mean"),
            glue("2026-03-14", "14 March 2026", "coat", "Inside", "epoxy", "64 °F"),
            glue("2026-04-01", "1 April 2026", "coat", "Outside", "epoxy", "not written down")),
        teal.shop().glue());
  }

  private static Glue glue(
      String date, String day, String kind, String what, String with, String temperature) {
    return new Glue(date, day, kind, what, with, temperature);
  }

  @Test
  void aJournalWithoutEntriesHasNeitherMaterialsNorGlue() throws IOException {
    assertEquals(List.of(), teal.shop().materials());
    assertEquals("", teal.shop().otherMaterials());
    assertEquals(List.of(), teal.shop().glue());
  }
}
