package ribband.whole;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import ribband.cli.InMemory;

/** The materials page tells what stock tells, and no more than readers may hear. */
class MaterialsTest {
  private static final String PROJECT =
      """
      name: Teal
      currency: USD
      phases: [planking]
      site: {show money: %s}
      materials: {epoxy: {unit: fl oz, on hand: 10 fl oz, worth: 20, never below: 24 fl oz}}
      adhesives: {epoxy: {spread: 140 in2 per fl oz}}
      pieces: {strakes: {total: 16, glue area: 2 in x 140 in, adhesive: epoxy}}
      """;

  @TempDir Path folder;

  private Document page(String money) throws IOException {
    InMemory ribband =
        new InMemory(folder)
            .with("project.yaml", PROJECT.formatted(money))
            .with(
                "2026-03-14-first.md",
                """
                ---
                title: Garboards on
                phase: planking
                hours: 2
                pieces: {strakes: 2}
                materials:
                  used: {epoxy: 5 fl oz}
                  bought: [{material: epoxy, amount: 1 pt, cost: 31.41, from: the chandlery}]
                ---
                """)
            .with(
                "2026-03-20-quiet.md",
                """
                ---
                phase: planking
                private: true
                joints: [{name: Secret joint, adhesive: epoxy, area: 140 in2}]
                materials:
                  used: {secret wax: 1 oz}
                  bought: [{material: epoxy, amount: 2 pt, cost: 27.18}]
                ---
                """);
    InMemory.Run run = ribband.run("publish");
    assertEquals(0, run.code(), run.err());
    return Jsoup.parse(
        Files.readString(folder.resolve("site/materials.html"), StandardCharsets.UTF_8));
  }

  /** (20 + 31.41) x 21/26, and 27.18 more, x 52/53. */
  @Test
  void theShelfAddsUpWithPrivateNights() throws IOException {
    Document page = page("true");
    assertEquals(
        List.of("epoxy", "52 fl oz", "6 fl oz", "48 fl oz", "10 fl oz", "$67.41"),
        page.select("#shelf ~ .table tbody tr").get(0).children().eachText());
    assertEquals(1, page.select("#shelf ~ .table tbody tr").size());
    assertEquals(
        "epoxy: enough (28 fl oz for 27.2 ft² of pieces not yet made; 24 fl oz kept in reserve;"
            + " 52 fl oz on hand)",
        page.select(".needed li").text());
  }

  @Test
  void privateNightsAreNotTold() throws IOException {
    Document page = page("true");
    assertEquals(
        List.of(
            "10 fl oz there at the start, 4 fl oz left: 2 strakes, 560 in², 1 night",
            "1 pt bought for $31.41 on 14 March 2026, not opened yet",
            "1 more, not listed."),
        page.select(".kits").get(0).select("li").eachText());
    List<Element> moves = page.select(".moves tbody tr");
    assertEquals(
        List.of("–", "Not listed", "used, by estimate", "−1 fl oz", "52 fl oz", "$67.41"),
        moves.get(0).children().eachText());
    assertEquals("", moves.get(0).select("a").attr("href"));
    assertFalse(page.outerHtml().contains("ecret"));
    assertFalse(page.outerHtml().contains("27.18"));
    assertFalse(page.outerHtml().contains("32 fl oz came"));
  }

  @Test
  void hiddenMoneyStaysHidden() throws IOException {
    Document page = page("false");
    assertFalse(page.outerHtml().contains("$"));
    assertFalse(page.outerHtml().contains("31.41"));
    assertEquals(5, page.select("#shelf ~ .table thead th").size());
    assertEquals(
        "1 pt bought on 14 March 2026, not opened yet",
        page.select(".kits").get(0).select("li").get(1).text());
  }

  @Test
  void theCautionsStandUnderIt() throws IOException {
    String cautions = page("true").select(".cautions").text();
    assertTrue(cautions.contains("Resin and hardener irritate"));
    assertTrue(cautions.endsWith("The maker's data sheet and local rules govern."));
  }

  @Test
  void withoutMaterialsThereIsNoPageAndNoTab() throws IOException {
    new InMemory(folder)
        .with("project.yaml", "name: Teal\n")
        .with("2026-03-14.md", "---\nhours: 2\nphase: planking\n---\n")
        .run("publish");
    assertFalse(Files.exists(folder.resolve("site/materials.html")));
    assertFalse(
        Files.readString(folder.resolve("site/index.html"), StandardCharsets.UTF_8)
            .contains("materials.html"));
  }

  /** Slips of many figures are told as they stand, and stop nothing. */
  @Test
  void absurdAmountsStopNothing() throws IOException {
    InMemory ribband =
        new InMemory(folder)
            .with(
                "project.yaml",
                """
                name: Teal
                units: metric
                phases: [planking]
                materials: {skin: {unit: mm2, never below: 999999999 m2}}
                adhesives: {epoxy: {material: skin, spread: 0.000000001 mm2 per 999999999 gal}}
                pieces: {strakes: {total: 99999, glue area: 999999999 m2, adhesive: epoxy}}
                """);
    for (int i = 1; i < 8; i++) {
      ribband.with(
          "2026-03-0" + i + ".md",
          """
          ---
          phase: planking
          pieces: {strakes: %s}
          materials:
            used: {skin: 1 mm2}
            bought: [{material: skin, amount: 9999 of 999999999 m2}]
          ---
          """
              .formatted(i % 2 == 1 ? "99999" : "-99999"));
    }
    ribband.with(
        "2026-03-08.md",
        "---\nmaterials: {left: {skin: 1 mm2}, bought: [{material: skin, amount: 0.001 mm2}]}\n---\n");
    InMemory.Run run = ribband.run("publish", "-q");
    assertEquals(0, run.code(), run.err());
    for (String list : List.of("shelf", "moves", "kits", "spreads")) {
      assertEquals(0, ribband.run("stock", "--show", list).code());
      assertEquals(0, ribband.run("stock", "--show", list, "--format", "json").code());
    }
  }
}
