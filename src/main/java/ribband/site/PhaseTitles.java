package ribband.site;

import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Stream;
import ribband.journal.Phase;
import ribband.ledger.PhaseRow;
import ribband.measure.Saying;

/** Gives each phase's page a title that no other page has. */
final class PhaseTitles {
  private PhaseTitles() {}

  /** Titles by the phases' ids: the phase's own; its id too where another page is called that. */
  static Map<String, String> of(Book book) {
    List<Phase> phases = book.ledger().phases().stream().map(PhaseRow::phase).toList();
    Set<String> others = new HashSet<>();
    // The first page goes by the boat's name.
    Stream.of(MainPage.values())
        .filter(page -> page != MainPage.BOAT)
        .forEach(page -> others.add(page.title()));
    book.ledger().months().forEach(month -> others.add(Saying.month(month.period())));
    Map<String, Integer> uses = new HashMap<>();
    phases.forEach(phase -> uses.merge(phase.title(), 1, Integer::sum));
    Map<String, String> titles = new TreeMap<>();
    for (Phase phase : phases) {
      boolean unique = uses.get(phase.title()) == 1 && !others.contains(phase.title());
      titles.put(phase.id(), unique ? phase.title() : phase.title() + ", phase " + phase.id());
    }
    return titles;
  }
}
