package ribband.ahead;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;
import ribband.ledger.Cell;
import ribband.ledger.Sheet;
import ribband.measure.Currency;
import ribband.measure.Money;
import ribband.plan.EarnedValue;
import ribband.plan.PhaseStanding;
import ribband.plan.Standing;
import ribband.plan.StandingWords;

/**
 * Plan against actual for other programs: hours decimal, an empty cell where a figure is undefined.
 */
public final class PlanSheet {
  private static final int SECONDS = 3600;

  private static final List<String> COLUMNS =
      List.of(
          "phase",
          "hours_planned",
          "hours",
          "complete",
          "complete_from",
          "ev",
          "ac",
          "cv",
          "cpi",
          "eac",
          "etc",
          "vac",
          "tcpi",
          "cost_planned",
          "cost");

  private final Currency currency;

  private PlanSheet(Currency currency) {
    this.currency = currency;
  }

  /** A row for each phase, and one for all with planned hours, {@code whole}. */
  public static Sheet of(Standing standing, Currency currency) {
    PlanSheet sheet = new PlanSheet(currency);
    List<List<Cell>> rows = new ArrayList<>();
    standing.phases().forEach(phase -> rows.add(sheet.row(phase)));
    standing.whole().ifPresent(whole -> rows.add(sheet.row(whole, standing)));
    return Sheet.of(COLUMNS, rows);
  }

  /** The same without the figures that {@code EarnedValue} has names for: as a screen is wide. */
  public static Sheet narrow(Standing standing, Currency currency) {
    Sheet whole = of(standing, currency);
    int from = COLUMNS.indexOf("ev");
    int to = COLUMNS.indexOf("tcpi") + 1;
    return Sheet.of(
        without(COLUMNS, from, to),
        whole.rows().stream().map(row -> without(row, from, to)).toList());
  }

  private static <T> List<T> without(List<T> row, int from, int to) {
    List<T> kept = new ArrayList<>(row);
    kept.subList(from, to).clear();
    return kept;
  }

  private List<Cell> row(PhaseStanding phase) {
    List<Cell> row = new ArrayList<>();
    row.add(Cell.Words.of(phase.phase().id()));
    row.add(phase.planned().<Cell>map(Cell.Worked::new).orElseGet(Cell.Blank::new));
    row.add(new Cell.Worked(phase.hours()));
    row.add(share(phase.complete().share()));
    row.add(Cell.Words.of(phase.complete().basis().name().toLowerCase(Locale.ROOT)));
    row.addAll(values(phase.earned()));
    row.add(money(phase.phase().cost()));
    row.add(money(Optional.of(phase.cost())));
    return row;
  }

  private List<Cell> row(EarnedValue whole, Standing standing) {
    List<Cell> row = new ArrayList<>();
    row.add(Cell.Words.of("whole"));
    row.add(new Cell.Worked(whole.bac()));
    row.add(new Cell.Worked(whole.ac()));
    row.add(share(Optional.of(whole.complete())));
    row.add(new Cell.Blank());
    row.addAll(values(Optional.of(whole)));
    row.add(money(standing.costPlanned()));
    row.add(money(standing.costPlanned().map(planned -> standing.costInPlan())));
    return row;
  }

  private static List<Cell> values(Optional<EarnedValue> earned) {
    return List.of(
        hours(earned.map(EarnedValue::ev)),
        hours(earned.map(e -> BigFraction.of(e.ac().seconds()))),
        hours(earned.map(EarnedValue::cv)),
        number(earned.flatMap(EarnedValue::cpi)),
        hours(earned.flatMap(EarnedValue::eac)),
        hours(earned.flatMap(EarnedValue::etc)),
        hours(earned.flatMap(EarnedValue::vac)),
        number(earned.flatMap(EarnedValue::tcpi)));
  }

  private static Cell hours(Optional<BigFraction> seconds) {
    return number(seconds.map(s -> s.divide(SECONDS)));
  }

  private static Cell share(Optional<BigFraction> share) {
    return share
        .<Cell>map(s -> new Cell.Exact(s, StandingWords.share(s)))
        .orElseGet(Cell.Blank::new);
  }

  private static Cell number(Optional<BigFraction> value) {
    return value.<Cell>map(Cell.Exact::of).orElseGet(Cell.Blank::new);
  }

  private Cell money(Optional<Money> money) {
    return currency.equals(Currency.NONE)
        ? new Cell.Blank()
        : money.<Cell>map(m -> new Cell.Paid(m, currency)).orElseGet(Cell.Blank::new);
  }
}
