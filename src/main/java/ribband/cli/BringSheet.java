package ribband.cli;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import ribband.journal.Journal;
import ribband.journal.Phase;
import ribband.ledger.Cell;
import ribband.ledger.Cell.Paid;
import ribband.ledger.Cell.Words;
import ribband.ledger.Cell.Worked;
import ribband.ledger.Sheet;
import ribband.ledger.Sums;
import ribband.measure.Currency;
import ribband.measure.Hours;
import ribband.measure.Money;

/** The totals before and after past sessions are brought, phase by phase. */
final class BringSheet {
  private final Currency currency;
  private final List<Sums> sums;

  private BringSheet(Currency currency, List<Sums> sums) {
    this.currency = currency;
    this.sums = sums;
  }

  static Sheet of(Journal journal, Sums before, Sums brought) {
    Currency currency = journal.project().currency();
    BringSheet sheet = new BringSheet(currency, List.of(before, brought, before.plus(brought)));
    List<String> columns =
        new ArrayList<>(List.of("phase", "hours_before", "hours_brought", "hours_after"));
    if (!currency.equals(Currency.NONE)) {
      columns.addAll(List.of("cost_before", "cost_brought", "cost_after"));
    }
    List<List<Cell>> rows = new ArrayList<>();
    titles(journal, brought)
        .forEach(
            (id, title) -> {
              List<Hours> hours = sheet.sums.stream().map(s -> s.hoursOf(id)).toList();
              List<Money> cost = sheet.sums.stream().map(s -> s.costOf(id)).toList();
              boolean any =
                  hours.stream().anyMatch(h -> !h.isZero())
                      || cost.stream().anyMatch(c -> !c.isZero());
              if (any) {
                rows.add(sheet.row(new Words(id, title), hours, cost));
              }
            });
    List<Cell> total =
        sheet.row(
            Words.of("total"),
            sheet.sums.stream().map(Sums::totalHours).toList(),
            sheet.sums.stream().map(Sums::totalCost).toList());
    return new Sheet(columns, Optional.empty(), rows, Optional.of(total));
  }

  /** Phases in their order, those that the sessions bring behind them, {@code unsorted} last. */
  private static Map<String, String> titles(Journal journal, Sums brought) {
    Map<String, String> titles = new LinkedHashMap<>();
    journal.phases().forEach(phase -> titles.put(phase.id(), phase.title()));
    brought.hours().keySet().forEach(id -> titles.putIfAbsent(id, id));
    brought.cost().keySet().forEach(id -> titles.putIfAbsent(id, id));
    titles.remove(Phase.UNSORTED.id());
    titles.put(Phase.UNSORTED.id(), Phase.UNSORTED.title());
    return titles;
  }

  private List<Cell> row(Words name, List<Hours> hours, List<Money> cost) {
    List<Cell> cells = new ArrayList<>(List.of(name));
    hours.forEach(worked -> cells.add(new Worked(worked)));
    if (!currency.equals(Currency.NONE)) {
      cost.forEach(paid -> cells.add(new Paid(paid, currency)));
    }
    return cells;
  }
}
