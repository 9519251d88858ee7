package ribband.telling;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static ribband.telling.Teal.usd;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import ribband.telling.SpendingTables.Line;
import ribband.telling.SpendingTables.ReceiptLine;

/** The tables of money and receipts, whole, against sums made by hand. */
class SpendingTablesTest {
  @TempDir private Path scratch;
  private Teal teal;

  @BeforeEach
  void lay() throws IOException {
    teal = new Teal(scratch.resolve("journal"));
    teal.with(
        "project.yaml",
        """
        name: Teal
        currency: USD
        units: us
        phases:
          - {id: moulds, title: Moulds and strongback}
          - {id: planking, title: Planking}
        carried: {cost: {moulds: 61.20}}
        """);
  }

  @Test
  void everyPurchaseHasItsLine() throws IOException {
    teal.with("receipts/0314 epoxy.txt", "paid")
        .entry(
            "2026-03-14-plank",
            """
            title: The first plank
            phase: planking
            cost: 100.00
            materials:
              bought:
                - {material: epoxy, amount: 2 of 1 qt, cost: 64.50, from: the chandlery,
                   receipt: receipts/0314 epoxy.txt}
                - {material: glass, amount: 3 yd, cost: 20.00, phase: moulds, receipt: lost.pdf}
                - {item: a lent clamp}
            """)
        .entry("2026-03-20-x", "phase: planking\ncost: 7.00\nprivate: true\n")
        .entry(
            "2026-03-21-y",
            """
            phase: planking
            private: true
            materials:
              bought: [{item: hidden, cost: 3.00, receipt: receipts/0314 epoxy.txt}]
            """);
    assertEquals(
        List.of(
            new Line(
                "",
                "Before",
                "From before this journal, not itemised",
                "",
                "",
                "Moulds and strongback",
                "",
                "",
                usd(6120)),
            new Line(
                "2026-03-14",
                "14 March 2026",
                "epoxy",
                "2 of 1 qt",
                "the chandlery",
                "Planking",
                "001",
                "receipts/001-0314-epoxy.txt",
                usd(6450)),
            new Line(
                "2026-03-14",
                "14 March 2026",
                "glass",
                "3 yd",
                "",
                "Moulds and strongback",
                "named, not found",
                "",
                usd(2000)),
            new Line(
                "2026-03-14", "14 March 2026", "a lent clamp", "", "", "Planking", "", "", usd(0)),
            new Line(
                "2026-03-14",
                "14 March 2026",
                "The first plank, not itemised",
                "",
                "",
                "Planking",
                "",
                "",
                usd(1550)),
            new Line("", "March 2026", "Not listed", "", "", "", "", "", usd(1000))),
        teal.spending().lines());
  }

  @Test
  void aReceiptHasTheDaysThingsAndSumOfItsPurchases() throws IOException {
    teal.with("receipts/b.txt", "paid")
        .entry(
            "2026-03-14-a",
            """
            phase: planking
            materials:
              bought:
                - {item: rivets, cost: 5.00, from: the yard, receipt: receipts/b.txt}
                - {item: roves, cost: 6.00, from: the yard, receipt: receipts/b.txt}
                - {item: paint, cost: 7.00, from: the mill, receipt: receipts/gone.txt}
            """)
        .entry(
            "2026-03-15-b",
            """
            phase: planking
            materials:
              bought:
                - {item: oil, cost: -0.50, from: the shed, receipt: receipts/b.txt}
                - {item: tar, cost: 2.25, receipt: receipts/gone.txt}
                - {item: pitch, cost: 1.00, from: a friend}
            """);
    assertEquals(
        List.of(
            new ReceiptLine(
                "001",
                "receipts/001-b.txt",
                "receipts/b.txt",
                "14 March 2026; 15 March 2026",
                "rivets; roves; oil",
                "the yard; the shed",
                usd(1050))),
        teal.spending().receipts());
    assertEquals(
        List.of(
            new ReceiptLine(
                "",
                "",
                "receipts/gone.txt",
                "14 March 2026; 15 March 2026",
                "paint; tar",
                "the mill",
                usd(925))),
        teal.spending().missing());
  }

  @Test
  void anUnpricedThingOfNoPhaseIsUnsortedInWords() throws IOException {
    teal.with("project.yaml", "name: Teal\ncurrency: USD\nphases: [planking]\n")
        .entry("2026-03-14-a", "materials: {bought: [{item: a lent clamp}]}\n");
    assertEquals(
        List.of(
            new Line(
                "2026-03-14", "14 March 2026", "a lent clamp", "", "", "Unsorted", "", "", usd(0))),
        teal.spending().lines());
  }
}
