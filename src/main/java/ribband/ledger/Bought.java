package ribband.ledger;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import ribband.journal.Entry;
import ribband.journal.Journal;
import ribband.journal.Outlay;
import ribband.journal.Purchase;
import ribband.measure.Money;

/**
 * One purchase.
 *
 * @param entry where it is written
 * @param item empty where the entry tells a cost and names no item at all
 * @param amount above zero
 */
public record Bought(Entry entry, Optional<Purchase> item, Money amount) {
  public Bought {
    Objects.requireNonNull(entry);
    Objects.requireNonNull(item);
    Objects.requireNonNull(amount);
  }

  /** The item's name, or the entry's title for want of one. */
  public String what() {
    return item.map(Purchase::what).orElse(entry.title());
  }

  /** All purchases, the dearest first, the earliest first among equals. */
  static List<Bought> of(Journal journal, Selection selection) {
    List<Bought> bought = new ArrayList<>();
    for (Entry entry : journal.entries()) {
      if (!selection.covers(entry.date())) {
        continue;
      }
      boolean isItemized = entry.outlays().stream().anyMatch(o -> o.purchase().isPresent());
      for (Outlay outlay : entry.outlays()) {
        // What is left of a cost beside its items may be many small things: no purchase by itself.
        boolean isPurchase = outlay.purchase().isPresent() || !isItemized;
        boolean isPaid = outlay.amount().compareTo(Money.ZERO) > 0;
        if (isPurchase && isPaid && selection.covers(outlay.phase())) {
          bought.add(new Bought(entry, outlay.purchase(), outlay.amount()));
        }
      }
    }
    bought.sort(Comparator.comparing(Bought::amount).reversed());
    return bought;
  }
}
