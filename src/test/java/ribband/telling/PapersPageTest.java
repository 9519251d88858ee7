package ribband.telling;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static ribband.telling.Teal.unpaid;
import static ribband.telling.Teal.usd;
import static ribband.telling.Teal.worked;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import ribband.photo.PictureFacts;
import ribband.telling.PapersPage.Picture;
import ribband.telling.PapersPage.View;

/** What the page shows, and that it shows nothing where there is nothing. */
class PapersPageTest {
  @TempDir private Path scratch;
  private Teal teal;

  @BeforeEach
  void lay() {
    teal = new Teal(scratch.resolve("journal"));
  }

  @Test
  void aJournalWithNothingInItShowsNothing() throws IOException {
    teal.with("project.yaml", "name: Teal\n");
    assertEquals(
        new View(
            false,
            List.of(
                new WorkTables.Fact("Nights with hours", "0"),
                new WorkTables.Fact("Sessions", "0"),
                new WorkTables.Fact("Hours in all", "0 hours")),
            "",
            worked(0),
            "0 hours",
            unpaid(),
            List.of(),
            new WorkTables.Planned("", ""),
            List.of(),
            List.of(),
            List.of(),
            List.of(),
            List.of(),
            false,
            "",
            List.of(),
            List.of()),
        teal.view());
  }

  @Test
  void everySectionHasItsTable() throws IOException {
    teal.with(
            "project.yaml",
            """
            name: Teal
            currency: USD
            units: us
            phases: [planking]
            adhesives: {epoxy: {material: epoxy, clamp time: 8 h, spread: 140 in2 per fl oz}}
            """)
        .with("receipts/a.txt", "paid")
        .entry(
            "2026-03-14-a",
            """
            phase: planking
            hours: 2
            materials:
              bought:
                - {material: epoxy, amount: 1 qt, cost: 30.00, receipt: receipts/a.txt}
                - {item: rivets, cost: 4.00, receipt: receipts/gone.txt}
            joints: [{name: Scarf, adhesive: epoxy, clamped at: 20:00, area: 10 in x 28 in}]
            """)
        .entry("2026-03-15-b", "phase: planking\nhours: 1\ncost: 5.00\nprivate: true\n");
    View view = teal.view();
    assertEquals(
        new View(
            true,
            teal.work().dates(),
            "1 entry of the journal is private: counted in every figure here, and told in no word,"
                + " picture or receipt.",
            worked(180),
            "3 hours",
            usd(3900),
            teal.work().phases(),
            new WorkTables.Planned("", ""),
            teal.work().months(),
            teal.spending().lines(),
            teal.spending().receipts(),
            teal.spending().missing(),
            List.of(new ShopTables.Material("epoxy", "2 fl oz", "2 fl oz", "30 fl oz")),
            true,
            "",
            teal.shop().glue(),
            List.of()),
        view);
    assertEquals(
        List.of(1, 1, 3, 1, 1, 1),
        List.of(
            view.phases().size(),
            view.months().size(),
            view.purchases().size(),
            view.receipts().size(),
            view.missing().size(),
            view.glue().size()));
  }

  @Test
  void whatWasUsedAsWrittenIsNoEstimate() throws IOException {
    teal.with("project.yaml", "name: Teal\nphases: [planking]\n")
        .entry("2026-03-14-a", "phase: planking\nhours: 2\nmaterials: {used: {nails: 40}}\n")
        .entry("2026-03-15-b", "private: true\nmaterials: {used: {tar: 40 ml}}\n")
        .entry("2026-03-16-c", "private: true\n");
    View view = teal.view();
    assertEquals(
        List.of(
            List.of(new ShopTables.Material("nails", "40", "", "unknown")),
            false,
            "1 more, not listed.",
            "2 entries of the journal are private: counted in every figure here, and told in no"
                + " word, picture or receipt."),
        List.of(view.materials(), view.estimated(), view.otherMaterials(), view.unlisted()));
  }

  @Test
  void picturesAreShownInTheirLargestPrint() throws IOException {
    teal.with("project.yaml", "name: Teal\nphases: [planking]\n")
        .picture("a.png", 500)
        .picture("b.png", 2000)
        .entry(
            "2026-03-14-a",
            "title: A plank\nphase: planking\nhours: 2\nphotos: [{file: a.png, caption: Hung}]\n")
        .entry("2026-04-14-b", "title: Another\nphase: planking\nhours: 1\nphotos: [b.png]\n");
    List<PictureFacts> facts = teal.papers().pictures();
    assertEquals(
        List.of(
            new Picture(
                Papers.printPath(facts.get(0)),
                500,
                200,
                "Hung",
                "March 2026 · Planking",
                "Hung",
                "14 March 2026"),
            new Picture(
                Papers.printPath(facts.get(1)),
                1600,
                160,
                "Photograph of 14 April 2026, Another",
                "April 2026",
                "",
                "14 April 2026")),
        teal.view().pictures());
  }
}
