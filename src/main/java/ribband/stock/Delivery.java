package ribband.stock;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import ribband.journal.Entry;
import ribband.journal.Outlay;
import ribband.journal.Purchase;
import ribband.measure.Packs;
import ribband.measure.Quantity;

/**
 * An amount of a material bought, in stock from a day.
 *
 * @param material as spelled there
 */
record Delivery(Entry entry, Outlay outlay, String material, LocalDate day) {
  /** All that entries bought, in their order. */
  static List<Delivery> of(List<Entry> entries, StockWarnings warnings) {
    List<Delivery> deliveries = new ArrayList<>();
    for (Entry entry : entries) {
      for (Outlay outlay : entry.outlays()) {
        outlay.purchase().ifPresent(bought -> add(entry, outlay, bought, deliveries, warnings));
      }
    }
    return deliveries;
  }

  private static void add(
      Entry entry,
      Outlay outlay,
      Purchase bought,
      List<Delivery> deliveries,
      StockWarnings warnings) {
    if (bought.material().isEmpty()) {
      return;
    }
    String material = bought.material().get();
    if (bought.amount().isPresent()) {
      LocalDate day = bought.arrived().orElse(entry.date());
      deliveries.add(new Delivery(entry, outlay, material, day));
    } else if (!outlay.amount().isNegative()) {
      warnings.ofNoAmount(entry, material);
    }
  }

  Quantity amount() {
    return outlay.purchase().flatMap(Purchase::amount).map(Packs::total).orElseThrow();
  }

  /** Whether it came the night it was written down. */
  boolean isAtOnce() {
    return day.equals(entry.date());
  }
}
