package ribband.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class StockCommandTest {
  @TempDir Path folder;
  private InMemory ribband;

  @BeforeEach
  void layDown() throws IOException {
    ribband =
        new InMemory(folder)
            .with(
                "project.yaml",
                """
                name: Dunlin
                currency: USD
                phases: [planking]
                materials:
                  epoxy: {unit: fl oz, on hand: 10 fl oz, worth: 20, lead time: 7 days, never below: 4 fl oz}
                adhesives:
                  epoxy: {spread: 140 in2 per fl oz}
                pieces:
                  strakes: {total: 16, glue area: 1 in x 140 in, adhesive: epoxy}
                """)
            .with(
                "2026-03-14-garboard.md",
                """
                ---
                title: Garboards on
                phase: planking
                pieces: {strakes: 2}
                materials:
                  used: {epoxy: 2 1/2 fl oz, ring nails: 40}
                  left: {ring nails: 160}
                  bought: [{material: epoxy, amount: 2 of 1 pt, cost: 48, from: the chandlery, arrived: 2026-03-22}]
                ---
                """)
            .with(
                "2026-03-28-second.md",
                """
                ---
                title: Second strakes
                pieces: {strakes: 2}
                joints: [{adhesive: epoxy, area: 2 in x 140 in}]
                materials: {used: {plywood: 12 ft2}}
                ---
                """);
  }

  @Test
  void theShelfAndWhatToOrder() {
    assertEquals(
        new InMemory.Run(
            0,
            """
            Dunlin, materials as of 28 March 2026

            material     opening    bought      used    on hand   value
            ───────────────────────────────────────────────────────────
            epoxy       10 fl oz  32 fl oz  4½ fl oz  37½ fl oz  $59.81
            ring nails                 160        40        160   $0.00
            plywood                           12 ft²    unknown

            What is still needed
              epoxy: enough (12 fl oz for 11.7 ft² of pieces not yet made; 4 fl oz kept in
                reserve; 37½ fl oz on hand)
            """,
            ""),
        ribband.run("stock", "--today", "2026-03-28"));
  }

  @Test
  void whatHasNotComeIsOnOrder() {
    assertEquals(
        """
        Dunlin, materials as of 21 March 2026

        epoxy
        entry                                  what    amount   on hand   value
        ───────────────────────────────────────────────────────────────────────
        the start                there at the start  10 fl oz  10 fl oz  $20.00
        2026-03-14 Garboards on                used  2½ fl oz  7½ fl oz  $15.00
          on order: 32 fl oz, here on 22 March 2026
        """,
        ribband
            .run("stock", "--show", "moves", "--material", "Epoxy", "--today", "2026-03-21")
            .out());
  }

  @Test
  void theMovesAsData() {
    assertEquals(
        """
        material,date,move,amount,unit,worth,short,on_hand,value,entry
        epoxy,,opening,10,fl oz,20.00,0,10,20.00,
        epoxy,2026-03-14,used,2.5,fl oz,5.00,0,7.5,15.00,2026-03-14-garboard.md
        epoxy,2026-03-22,bought,32,fl oz,48.00,0,39.5,63.00,2026-03-14-garboard.md
        epoxy,2026-03-28,estimated,2,fl oz,3.19,0,37.5,59.81,2026-03-28-second.md
        ring nails,2026-03-14,used,40,,,0,,,2026-03-14-garboard.md
        ring nails,2026-03-14,found,160,,0.00,0,160,0.00,2026-03-14-garboard.md
        plywood,2026-03-28,used,12,ft2,,0,,,2026-03-28-second.md
        """,
        ribband.run("stock", "--show", "moves", "--format", "csv").out());
  }

  @Test
  void theShelfAsData() {
    assertEquals(
        """
        [
          {"material": "epoxy", "unit": "fl oz", "opening": 10, "bought": 32, "found": 0, "used": 2.5, "estimated": 2, "unrecorded": 0, "returned": 0, "short": 0, "on_hand": 37.5, "value": 59.81, "on_order": 0, "needed": 12, "never_below": 4, "lacking": 0, "packs": null, "pack": null, "runs_out": null, "order_by": null}
        ]
        """,
        ribband.run("stock", "--material", "epoxy", "--format", "json").out());
  }

  @Test
  void theKitsAndTheSpread() {
    assertEquals(
        """
        Dunlin, materials as of 1 June 2026

        epoxy
          10 fl oz there at the start, 5½ fl oz left: 1 joint, 4 strakes, 560 in², 2
            nights
          2 of 1 pt bought for $48.00 on 14 March 2026, here on 22 March 2026, not
            opened yet
        """,
        ribband.run("stock", "--show", "kits", "--material", "epoxy").out());
    assertEquals(
        """
        Dunlin, materials as of 1 June 2026

        epoxy
        entry                       area      used             spread
        ─────────────────────────────────────────────────────────────
        2026-03-14 Garboards on  280 in²  2½ fl oz  112 in² per fl oz
          measured 112 in² per fl oz over 1 entry, stated 140 in² per fl oz; the stated
            one counts until there are five

        """,
        ribband.run("stock", "--show", "spreads", "--material", "epoxy").out());
  }

  @Test
  void aMetricShopReadsMillilitres() throws IOException {
    ribband.with(
        "project.yaml",
        "name: Dunlin\nunits: metric\nmaterials: {epoxy: {on hand: 500 ml}}\n"
            + "adhesives: {epoxy: {spread: 60 cm2 per ml}}\n"
            + "pieces: {strakes: {total: 16, glue area: 25 mm x 3.6 m, adhesive: epoxy}}\n");
    ribband.with(
        "2026-03-14-garboard.md",
        "---\npieces: {strakes: 2}\nmaterials: {used: {epoxy: 1 1/2 fl oz}}\n---\n");
    assertEquals(
        """
        Dunlin, materials as of 28 March 2026

        material  opening  bought     used  on hand
        ───────────────────────────────────────────
        epoxy      500 ml            74 ml   426 ml
        plywood                    1.11 m²  unknown
        """,
        ribband
            .run("stock", "--today", "2026-03-28")
            .out()
            .replaceFirst("(?s)\nWhat is still needed.*", ""));
  }

  @Test
  void usingMoreThanThereIsIsTold() throws IOException {
    ribband.with(
        "2026-04-01-nails.md", "---\nmaterials: {used: {ring nails: 200, epoxy: 4 fl oz}}\n---\n");
    String told =
        "2026-04-01-nails.md:2:32: warning: of material \"ring nails\" 200 go, but only 160 are on"
            + " hand, 40 short; write what was bought, or what is left on the shelf\n";
    assertEquals(told + "1 warning in 3 entries\n", ribband.run("stock", "--format", "csv").err());
    assertEquals(
        new InMemory.Run(0, "3 entries, no errors, 1 warning\n", told), ribband.run("check"));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "--show | purse | --show \"purse\" cannot be shown; there are shelf, moves, kits,"
            + " spreads",
        "--show | kit | --show \"kit\" cannot be shown; did you mean \"kits\"?",
        "--material | epoxi | --material \"epoxi\" is not among the materials; did you mean \"epoxy\"?"
      })
  void aWrongChoiceIsTold(String option, String value, String told) {
    InMemory.Run run = ribband.run("stock", "-q", option, value);
    assertEquals(2, run.code());
    assertEquals("ribband: " + told + "\n", run.err().replaceFirst("(?s)\n\nType.*", "\n"));
  }
}
