package ribband.ledger;

import java.time.YearMonth;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.Function;
import org.apache.commons.numbers.fraction.BigFraction;
import ribband.journal.Entry;
import ribband.journal.Phase;
import ribband.ledger.Cell.Blank;
import ribband.ledger.Cell.Count;
import ribband.ledger.Cell.Paid;
import ribband.ledger.Cell.Words;
import ribband.ledger.Cell.Worked;
import ribband.measure.Currency;
import ribband.measure.Hours;
import ribband.measure.Money;
import ribband.measure.Saying;
import ribband.measure.Week;

/** Lays a ledger out in rows and columns: one place for what is printed and what is published. */
public final class TallySheet {
  private final Ledger ledger;
  private final Currency currency;
  private final MoneyColumns money;

  private TallySheet(Ledger ledger, Currency currency, MoneyColumns money) {
    this.ledger = ledger;
    this.currency = currency;
    this.money = money;
  }

  public static Sheet of(Ledger ledger, Currency currency, By by, MoneyColumns money) {
    TallySheet tally = new TallySheet(ledger, currency, money);
    return switch (by) {
      case MONTH -> tally.periods(by, ledger.months(), TallySheet::month);
      case YEAR -> tally.periods(by, ledger.years(), year -> Words.of(year.toString()));
      case WEEK -> tally.periods(by, ledger.weeks(), TallySheet::week);
      case ENTRY -> tally.periods(by, ledger.entries(), TallySheet::entry);
      case PHASE -> tally.phases();
      case RECORD -> RecordsSheet.of(Records.of(ledger), currency, money);
    };
  }

  private static Words month(YearMonth month) {
    return new Words(month.toString(), Saying.month(month));
  }

  private static Words week(Week week) {
    return new Words(week.toString(), week + ", from " + Saying.shortDay(week.monday()));
  }

  private static Words entry(Entry entry) {
    return new Words(entry.address(), entry.date() + "  " + entry.title());
  }

  /** What a column shows of a line, and whether it is money. */
  private record Column<L>(String name, MoneyColumns shownWith, Function<L, Cell> cell) {
    static <L> Column<L> of(String name, Function<L, Cell> cell) {
      return new Column<>(name, MoneyColumns.HIDDEN, cell);
    }

    static <L> Column<L> ofMoney(String name, Function<L, Cell> cell) {
      return new Column<>(name, MoneyColumns.SHOWN, cell);
    }
  }

  private record PeriodLine(Words name, Sums sums, Optional<Sums> toDate, OptionalInt rank) {}

  private <P> Sheet periods(By by, List<Row<P>> rows, Function<P, Words> name) {
    List<Column<PeriodLine>> columns =
        List.of(
            Column.of(by.word(), PeriodLine::name),
            Column.of("sessions", line -> new Count(line.sums().sessions())),
            Column.of("hours", line -> new Worked(line.sums().totalHours())),
            Column.ofMoney("cost", line -> paid(line.sums().totalCost())),
            Column.of("hours_to_date", line -> worked(line.toDate().map(Sums::totalHours))),
            Column.ofMoney("cost_to_date", line -> paid(line.toDate().map(Sums::totalCost))),
            Column.of("rank_by_hours", TallySheet::rank));
    Sums carried = ledger.carried();
    Optional<PeriodLine> opening =
        carried.equals(Sums.NONE)
            ? Optional.empty()
            : Optional.of(
                new PeriodLine(
                    Words.of("carried in"), carried, Optional.of(carried), OptionalInt.empty()));
    PeriodLine total =
        new PeriodLine(Words.of("total"), ledger.whole(), Optional.empty(), OptionalInt.empty());
    return sheet(
        // spec: entry has no rank.
        by == By.ENTRY ? columns.subList(0, columns.size() - 1) : columns,
        opening,
        rows.stream()
            .map(
                row ->
                    new PeriodLine(
                        name.apply(row.period()),
                        row.sums(),
                        Optional.of(row.toDate()),
                        row.rank()))
            .toList(),
        total);
  }

  /** A period without work has a rank among the others in data files only. */
  private static Cell rank(PeriodLine line) {
    return line.rank().isPresent() && line.sums().totalHours().isZero()
        ? new Cell.Exact(BigFraction.of(line.rank().getAsInt()), "–")
        : count(line.rank());
  }

  private record PhaseLine(
      Words name,
      OptionalInt sessions,
      Hours hours,
      Money cost,
      Optional<Hours> hoursPlanned,
      Optional<Money> costPlanned) {}

  private Sheet phases() {
    List<Column<PhaseLine>> columns =
        List.of(
            Column.of("phase", PhaseLine::name),
            Column.of("sessions", line -> count(line.sessions())),
            Column.of("hours", line -> new Worked(line.hours())),
            Column.ofMoney("cost", line -> paid(line.cost())),
            Column.of("hours_planned", line -> worked(line.hoursPlanned())),
            Column.ofMoney("cost_planned", line -> paid(line.costPlanned())));
    List<PhaseLine> lines = ledger.phases().stream().map(TallySheet::phase).toList();
    return sheet(columns, Optional.empty(), lines, totalOf(lines));
  }

  private static PhaseLine phase(PhaseRow row) {
    Phase phase = row.phase();
    return new PhaseLine(
        new Words(phase.id(), phase.title()),
        OptionalInt.of(row.sessions()),
        row.hours(),
        row.cost(),
        phase.hours(),
        phase.cost());
  }

  private PhaseLine totalOf(List<PhaseLine> lines) {
    int sessions = ledger.phases().stream().mapToInt(PhaseRow::sessions).sum();
    // A session in two phases, or carried in, would leave a column that does not add up.
    boolean addUp = sessions == ledger.whole().sessions();
    return new PhaseLine(
        Words.of("total"),
        addUp ? OptionalInt.of(sessions) : OptionalInt.empty(),
        ledger.whole().totalHours(),
        ledger.whole().totalCost(),
        lines.stream().flatMap(line -> line.hoursPlanned().stream()).reduce(Hours::plus),
        lines.stream().flatMap(line -> line.costPlanned().stream()).reduce(Money::plus));
  }

  private <L> Sheet sheet(List<Column<L>> all, Optional<L> opening, List<L> lines, L total) {
    List<Column<L>> columns =
        all.stream()
            .filter(
                column -> money == MoneyColumns.SHOWN || column.shownWith() == MoneyColumns.HIDDEN)
            .toList();
    return new Sheet(
        columns.stream().map(Column::name).toList(),
        opening.map(line -> cells(columns, line)),
        lines.stream().map(line -> cells(columns, line)).toList(),
        Optional.of(cells(columns, total)));
  }

  private static <L> List<Cell> cells(List<Column<L>> columns, L line) {
    return columns.stream().map(column -> column.cell().apply(line)).toList();
  }

  private Cell paid(Money amount) {
    return new Paid(amount, currency);
  }

  private Cell paid(Optional<Money> amount) {
    return amount.map(this::paid).orElseGet(Blank::new);
  }

  private static Cell worked(Optional<Hours> hours) {
    return hours.<Cell>map(Worked::new).orElseGet(Blank::new);
  }

  private static Cell count(OptionalInt number) {
    return number.isPresent() ? new Count(number.getAsInt()) : new Blank();
  }
}
