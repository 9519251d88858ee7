package ribband.telling;

import java.time.LocalDate;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import ribband.journal.Carried;
import ribband.journal.Entry;
import ribband.journal.Journal;
import ribband.ledger.Cell;
import ribband.ledger.Ledger;
import ribband.ledger.PhaseRow;
import ribband.ledger.Row;
import ribband.ledger.Sums;
import ribband.ledger.WholePlan;
import ribband.measure.Currency;
import ribband.measure.Money;
import ribband.measure.Saying;

/** When and how long the boat was worked on, as the papers have it. */
final class WorkTables {
  private static final String PARTLY = "not all planned";

  private final Journal journal;
  private final Ledger ledger;
  private final Currency currency;

  WorkTables(Journal journal, Ledger ledger) {
    this.journal = journal;
    this.ledger = ledger;
    this.currency = journal.project().currency();
  }

  /** A thing known of the build. */
  record Fact(String term, String words) {}

  /**
   * A phase.
   *
   * @param hoursPlanned empty where there is no plan
   * @param costPlanned likewise
   */
  record PhaseLine(
      String title, ColumnHours hours, String hoursPlanned, Cell cost, String costPlanned) {}

  /** The plans of all phases together; empty where none has one. */
  record Planned(String hours, String cost) {}

  /**
   * A month, or what was before the first.
   *
   * @param iso for machines; empty for what was before
   */
  record MonthLine(
      String iso,
      String title,
      Cell sessions,
      ColumnHours hours,
      Cell cost,
      ColumnHours hoursToDate,
      Cell costToDate) {}

  List<Fact> dates() {
    List<Fact> facts = new ArrayList<>();
    journal.project().started().ifPresent(day -> facts.add(new Fact("Begun", Saying.day(day))));
    List<LocalDate> nights = List.copyOf(ledger.nights().keySet());
    if (!nights.isEmpty()) {
      facts.add(new Fact("First night with hours", night(nights.get(0))));
      facts.add(new Fact("Last night with hours", night(nights.get(nights.size() - 1))));
    }
    facts.add(new Fact("Nights with hours", Saying.count(nights.size())));
    facts.add(new Fact("Sessions", sessions()));
    facts.add(new Fact("Hours in all", Saying.hoursInWords(ledger.whole().totalHours())));
    if (!currency.equals(Currency.NONE)) {
      facts.add(new Fact("Spent in all", money(ledger.whole().totalCost())));
    }
    carried().ifPresent(words -> facts.add(new Fact("Of it before this journal", words)));
    return facts;
  }

  /** The day of a private night is not told, only its month. */
  private String night(LocalDate day) {
    Set<LocalDate> told =
        journal.entries().stream()
            .filter(entry -> entry.isPublic() && !entry.hours().isEmpty())
            .map(Entry::date)
            .collect(Collectors.toSet());
    return told.contains(day) ? Saying.day(day) : Saying.month(YearMonth.from(day));
  }

  private String sessions() {
    int before = ledger.carried().sessions();
    return Saying.count(ledger.whole().sessions())
        + (before == 0 ? "" : ", " + Saying.count(before) + " of them before this journal");
  }

  private Optional<String> carried() {
    Carried carried = journal.project().carried();
    if (carried.equals(Carried.NOTHING)) {
      return Optional.empty();
    }
    List<String> parts = new ArrayList<>();
    parts.add(Saying.hoursInWords(ledger.carried().totalHours()));
    if (!currency.equals(Currency.NONE)) {
      parts.add(money(ledger.carried().totalCost()));
    }
    String through = carried.through().map(day -> ", through " + Saying.day(day)).orElse("");
    return Optional.of(Saying.list(parts) + through);
  }

  List<PhaseLine> phases() {
    return ledger.phases().stream().map(this::phase).toList();
  }

  Planned planned() {
    WholePlan plan = WholePlan.of(ledger.phases());
    return new Planned(
        plan.hours().map(Saying::hoursInColumn).orElse(plan.partHours() ? PARTLY : ""),
        plan.cost().map(this::money).orElse(plan.partCost() ? PARTLY : ""));
  }

  private PhaseLine phase(PhaseRow row) {
    return new PhaseLine(
        row.phase().title(),
        ColumnHours.of(row.hours()),
        row.phase().hours().map(Saying::hoursInColumn).orElse(""),
        new Cell.Paid(row.cost(), currency),
        row.phase().cost().map(this::money).orElse(""));
  }

  List<MonthLine> months() {
    List<MonthLine> lines = new ArrayList<>();
    Sums before = ledger.carried();
    if (!before.equals(Sums.NONE)) {
      lines.add(line("", "Before this journal", before, before));
    }
    for (Row<YearMonth> month : ledger.months()) {
      YearMonth period = month.period();
      lines.add(line(period.toString(), Saying.month(period), month.sums(), month.toDate()));
    }
    return lines;
  }

  private MonthLine line(String iso, String title, Sums sums, Sums toDate) {
    return new MonthLine(
        iso,
        title,
        new Cell.Count(sums.sessions()),
        ColumnHours.of(sums.totalHours()),
        new Cell.Paid(sums.totalCost(), currency),
        ColumnHours.of(toDate.totalHours()),
        new Cell.Paid(toDate.totalCost(), currency));
  }

  private String money(Money money) {
    return Saying.money(money, currency);
  }
}
