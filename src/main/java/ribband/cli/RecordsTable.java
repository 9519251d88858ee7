package ribband.cli;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import ribband.ledger.Records;
import ribband.ledger.Records.Stretch;
import ribband.measure.Currency;
import ribband.measure.Saying;
import ribband.problem.Paragraph;

/** Says records for a terminal, a line each. */
final class RecordsTable {
  private static final String GAP = "  ";

  private final List<Line> lines = new ArrayList<>();

  private record Line(String name, String words) {}

  private RecordsTable() {}

  /**
   * Writes them.
   *
   * @return whether there was anything to write
   */
  static boolean write(Records records, Currency currency, Appendable out) throws IOException {
    RecordsTable table = new RecordsTable();
    table.add(records, currency);
    int width = table.lines.stream().mapToInt(line -> line.name().length()).max().orElse(0);
    for (Line line : table.lines) {
      String head = line.name() + " ".repeat(width - line.name().length()) + GAP;
      out.append(Paragraph.of(head, head.length(), line.words()));
    }
    return !table.lines.isEmpty();
  }

  private void add(Records records, Currency currency) {
    records.runOfNights().ifPresent(run -> add("longest run of days", run, "day", "days"));
    records.runOfWeeks().ifPresent(run -> add("longest run of weeks", run, "week", "weeks"));
    records.gap().ifPresent(gap -> add("longest gap without work", gap, "day", "days"));
    records
        .bestMonth()
        .ifPresent(
            month ->
                add(
                    "best month",
                    Saying.hoursInWords(month.hours()),
                    Saying.month(month.period())));
    records
        .longestNight()
        .ifPresent(
            night ->
                add("longest night", Saying.hoursInWords(night.hours()), Saying.day(night.date())));
    records
        .dearest()
        .ifPresent(
            bought ->
                add(
                    "largest purchase",
                    Saying.money(bought.amount(), currency),
                    bought.what(),
                    Saying.day(bought.entry().date())));
    records
        .mostPieces()
        .ifPresent(
            made ->
                add(
                    "most pieces in a night",
                    Saying.count(made.count()) + " " + made.kind(),
                    Saying.day(made.date())));
  }

  private void add(String name, Stretch stretch, String one, String several) {
    String days =
        stretch.from().equals(stretch.to())
            ? Saying.day(stretch.from())
            : Saying.day(stretch.from()) + " to " + Saying.day(stretch.to());
    add(name, Saying.counted(stretch.length(), one, several), days);
  }

  private void add(String name, String... words) {
    lines.add(new Line(name, String.join(", ", words)));
  }
}
