package ribband.ledger;

import java.time.LocalDate;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.List;
import ribband.ledger.Cell.Blank;
import ribband.ledger.Cell.Count;
import ribband.ledger.Cell.Paid;
import ribband.ledger.Cell.Words;
import ribband.ledger.Cell.Worked;
import ribband.ledger.Records.Stretch;
import ribband.measure.Currency;

/** Lays the records out, a row each; those that nothing holds are left out. */
final class RecordsSheet {
  private static final List<String> COLUMNS =
      List.of("record", "figure", "unit", "from", "to", "what");

  private final List<List<Cell>> rows = new ArrayList<>();

  private RecordsSheet() {}

  static Sheet of(Records records, Currency currency, MoneyColumns money) {
    RecordsSheet sheet = new RecordsSheet();
    sheet.add(records, currency, money);
    return Sheet.of(COLUMNS, sheet.rows);
  }

  private void add(Records records, Currency currency, MoneyColumns money) {
    records.runOfNights().ifPresent(run -> add("longest run of days", run, "days"));
    records.runOfWeeks().ifPresent(run -> add("longest run of weeks", run, "weeks"));
    records.gap().ifPresent(gap -> add("longest gap without work", gap, "days"));
    records.bestMonth().ifPresent(this::add);
    records
        .longestNight()
        .ifPresent(night -> add("longest night", new Worked(night.hours()), "hours", night.date()));
    if (money == MoneyColumns.SHOWN) {
      records
          .dearest()
          .ifPresent(
              bought ->
                  add(
                      "largest purchase",
                      new Paid(bought.amount(), currency),
                      currency.code(),
                      bought.entry().date(),
                      bought.entry().date(),
                      Words.of(bought.what())));
    }
    records
        .mostPieces()
        .ifPresent(
            made ->
                add(
                    "most pieces in a night",
                    new Count(made.count()),
                    "pieces",
                    made.date(),
                    made.date(),
                    Words.of(made.kind())));
  }

  private void add(String name, Stretch stretch, String unit) {
    add(name, new Count(stretch.length()), unit, stretch.from(), stretch.to(), new Blank());
  }

  private void add(Row<YearMonth> best) {
    YearMonth month = best.period();
    add(
        "best month",
        new Worked(best.hours()),
        "hours",
        month.atDay(1),
        month.atEndOfMonth(),
        Words.of(month.toString()));
  }

  private void add(String name, Cell figure, String unit, LocalDate day) {
    add(name, figure, unit, day, day, new Blank());
  }

  private void add(String name, Cell figure, String unit, LocalDate from, LocalDate to, Cell what) {
    rows.add(
        List.of(
            Words.of(name),
            figure,
            Words.of(unit),
            Words.of(from.toString()),
            Words.of(to.toString()),
            what));
  }
}
