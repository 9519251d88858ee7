package ribband.telling;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import ribband.journal.Journal;
import ribband.ledger.Purchases;
import ribband.ledger.Purchases.Spent;

/** Receipts are numbered as they are first needed, each file once. */
class ReceiptsTest {
  @TempDir private Path scratch;
  private Journal journal;
  private List<Spent> lines;
  private Receipts receipts;

  @BeforeEach
  void buy() throws IOException {
    journal =
        new Teal(scratch.resolve("journal"))
            .with("project.yaml", "name: Teal\ncurrency: USD\nphases: [planking]\n")
            .with("receipts/a.txt", "first by name")
            .with("receipts/z.txt", "first bought")
            .with("receipts/unnamed.txt", "of no purchase")
            .with("receipts/hidden.txt", "of a private purchase")
            .entry("2026-01-02-a", bought("z.txt", "gone.pdf", ""))
            .entry("2026-01-03-b", bought("hidden.txt") + "private: true\n")
            .entry("2026-01-04-c", bought("a.txt", "z.txt", "lost.pdf", "gone.pdf"))
            .journal();
    Purchases purchases = Purchases.withUnpriced(journal);
    lines = purchases.lines();
    receipts = Receipts.of(purchases, journal.folder());
  }

  private static String bought(String... receipts) {
    List<String> items = new ArrayList<>();
    for (String receipt : receipts) {
      String named = receipt.isEmpty() ? "" : ", receipt: receipts/" + receipt;
      items.add("{item: a thing, cost: 1.00" + named + "}");
    }
    return "phase: planking\nmaterials: {bought: [" + String.join(", ", items) + "]}\n";
  }

  /** Which of the journal's purchases these are, from 0. */
  private List<Integer> places(List<Spent> some) {
    return some.stream().map(lines::indexOf).toList();
  }

  @Test
  void oneNumberForEachFileInTheOrderOfThePurchases() {
    assertEquals(
        List.of(
            "receipts/z.txt: 001 at receipts/001-z.txt for [0, 4]",
            "receipts/a.txt: 002 at receipts/002-a.txt for [3]"),
        receipts.there().entrySet().stream()
            .map(file -> file.getKey() + ": " + said(file.getValue()))
            .toList());
    assertEquals(
        List.of("receipts/z.txt", "receipts/a.txt"),
        receipts.there().values().stream().map(Receipt::file).toList());
  }

  private String said(Receipt receipt) {
    return receipt.label() + " at " + receipt.path() + " for " + places(receipt.lines());
  }

  @Test
  void thoseThatAreNotThereAreNamedWithTheirPurchases() {
    assertEquals(
        List.of("receipts/gone.pdf for [1, 6]", "receipts/lost.pdf for [5]"),
        receipts.missing().entrySet().stream()
            .map(named -> named.getKey() + " for " + places(named.getValue()))
            .toList());
  }

  /** The last line is that of the private purchase. */
  @Test
  void aPurchaseHasItsReceiptUnlessItNamesNoneOrALostOne() {
    assertEquals(
        List.of("001", "", "", "002", "001", "", "", ""),
        lines.stream()
            .map(line -> receipts.of(line, journal.folder()).map(Receipt::label).orElse(""))
            .toList());
    assertEquals(
        List.of(false, true, false, false, false, true, true, false),
        lines.stream().map(line -> Receipts.isMissing(line, journal.folder())).toList());
  }
}
