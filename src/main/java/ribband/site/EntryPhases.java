package ribband.site;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import ribband.journal.Entry;
import ribband.journal.Journal;
import ribband.journal.Phase;
import ribband.ledger.Ledger;
import ribband.measure.Hours;
import ribband.measure.Money;
import ribband.measure.SaidMoney;
import ribband.measure.Saying;

/** An entry's phases, and each one's part of its hours and money. */
public final class EntryPhases {
  private final Journal journal;
  private final Ledger ledger;
  private final SaidMoney words;

  public EntryPhases(Journal journal, Ledger ledger, SaidMoney words) {
    this.journal = journal;
    this.ledger = ledger;
    this.words = words;
  }

  /**
   * A phase's part of an entry.
   *
   * @param href from the entry's page to the phase's
   * @param hours said; may be empty
   * @param cost said; may be empty
   */
  public record Share(String phase, String href, String hours, String cost) {}

  /** The phases that an entry is of, in the project's order; never {@code unsorted}. */
  public List<Phase> of(Entry entry) {
    List<String> ids = entry.phases();
    return journal.phases().stream().filter(phase -> ids.contains(phase.id())).toList();
  }

  /** The parts that are not nothing, in the order of the phase rows. */
  public List<Share> shares(Entry entry) {
    String page = Addresses.entry(entry);
    List<Share> shares = new ArrayList<>();
    Map<String, Money> costs = entry.cost();
    for (String id : ledger.phaseIds()) {
      Hours hours = entry.hours().getOrDefault(id, Hours.ZERO);
      Money cost = costs.getOrDefault(id, Money.ZERO);
      boolean anything = !hours.isZero() || words.shown() && !cost.isZero();
      if (anything) {
        shares.add(
            new Share(
                journal.phaseTitle(id),
                Addresses.href(page, Addresses.phase(id)),
                hours.isZero() ? "" : Saying.hoursInColumn(hours),
                cost.isZero() ? "" : words.money(cost)));
      }
    }
    return shares;
  }
}
