package ribband.ledger;

import java.util.LinkedHashMap;
import java.util.Map;
import ribband.journal.Entry;
import ribband.measure.Hours;
import ribband.measure.Money;

/** What one entry adds to the ledger under a selection. */
record Line(Entry entry, Sums sums) {
  static Line of(Entry entry, Selection selection) {
    Map<String, Hours> hours = new LinkedHashMap<>();
    entry
        .hours()
        .forEach(
            (phase, worked) -> {
              if (selection.covers(phase)) {
                hours.put(phase, worked);
              }
            });
    Map<String, Money> cost = new LinkedHashMap<>();
    entry
        .cost()
        .forEach(
            (phase, paid) -> {
              if (selection.covers(phase)) {
                cost.put(phase, paid);
              }
            });
    return new Line(entry, new Sums(hours.isEmpty() ? 0 : 1, hours, cost));
  }

  /** Whether it has anything of the phase selected. */
  boolean counts() {
    return !sums.hours().isEmpty() || !sums.cost().isEmpty();
  }

  boolean isNight() {
    return sums.sessions() > 0;
  }
}
