package ribband.ledger;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import ribband.measure.Money;

class PurchasesTest {
  @TempDir Path folder;

  @Test
  void everyAmountStandsOnceAndPrivateOnesOnceAMonth() throws IOException {
    Journals.write(
        folder,
        "project.yaml",
        "currency: USD\nphases: [planking, fairing]\ncarried: {cost: {planking: 10}}\n");
    Journals.entry(
        folder,
        "2026-01-02",
        """
        phase: planking
        cost: 30
        materials:
          bought:
            - {item: screws, from: the chandlery, cost: 20}
            - {item: sandpaper, from: the mill, cost: 4, phase: fairing}""");
    Journals.entry(folder, "2026-01-03", "phase: planking\ncost: 7\nprivate: true");
    Journals.entry(folder, "2026-01-20", "phase: fairing\ncost: 1\nprivate: true");
    Journals.entry(folder, "2026-01-31", "phase: fairing\ncost: -2");
    Journals.entry(folder, "2026-02-01", "phase: fairing\ncost: 5\nprivate: true");
    Purchases purchases = Purchases.of(Journals.read(folder));
    assertEquals(
        List.of(
            "- CARRIED planking  1000 1000",
            "2026-01-02 ITEM planking screws 2000 3000",
            "2026-01-02 ITEM fairing sandpaper 400 3400",
            "2026-01-02 REST planking  600 4000",
            "2026-01-31 REST fairing  -200 3800",
            "2026-01-31 PRIVATE   800 4600",
            "2026-02-28 PRIVATE   500 5100"),
        purchases.lines().stream().map(PurchasesTest::line).toList());
    assertEquals(
        List.of(
            Map.entry("the chandlery", new Money(2000)),
            Map.entry("the mill", new Money(400)),
            Map.entry("", new Money(2700))),
        List.copyOf(purchases.bySupplier().entrySet()));
  }

  @Test
  void whatCostNothingIsNoLine() throws IOException {
    Journals.write(folder, "project.yaml", "currency: USD\nphases: [planking]\n");
    Journals.entry(folder, "2026-01-02", "phase: planking\ncost: 0");
    Journals.entry(folder, "2026-01-03", "phase: planking\ncost: 7\nprivate: true");
    Journals.entry(folder, "2026-01-04", "phase: planking\ncost: -7\nprivate: true");
    assertEquals(List.of(), Purchases.of(Journals.read(folder)).lines());
  }

  private static String line(Purchases.Spent spent) {
    return spent.date().map(Object::toString).orElse("-")
        + " "
        + spent.kind()
        + " "
        + spent.phase().orElse("")
        + " "
        + spent.what().map(what -> what.what()).orElse("")
        + " "
        + spent.amount().minor()
        + " "
        + spent.running().minor();
  }
}
