package ribband.recap;

import java.time.LocalDate;
import java.time.Year;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.Optional;
import java.util.TreeMap;
import ribband.journal.Journal;
import ribband.journal.PieceKind;
import ribband.ledger.Ledger;
import ribband.ledger.Row;
import ribband.measure.Hours;
import ribband.measure.Money;
import ribband.measure.SaidMoney;
import ribband.measure.Saying;
import ribband.recap.Recap.Costs;
import ribband.recap.Recap.LongestNight;
import ribband.recap.Recap.PhaseShare;
import ribband.recap.Recap.PiecesMade;

/**
 * All months and years of a journal, told one by one as they are asked for. Private entries count
 * in every figure and stand in no word.
 */
public final class Recaps {
  private final Journal journal;
  private final Ledger ledger;
  private final SaidMoney money;
  private final RankWords<YearMonth> months;
  private final RankWords<Year> years;
  private final PiecesToDate pieces;
  private final NavigableMap<LocalDate, Hours> nights;

  private Recaps(Journal journal, Ledger ledger) {
    this.journal = journal;
    this.ledger = ledger;
    this.money = journal.project().saidMoney();
    this.months = new RankWords<>(ledger.months(), "month", MonthSentence::names);
    this.years =
        new RankWords<>(
            ledger.years(), "year", (some, told) -> some.stream().map(Year::toString).toList());
    this.pieces = new PiecesToDate(journal.project(), ledger);
    this.nights = new TreeMap<>(ledger.nights());
  }

  /**
   * Those of a whole journal.
   *
   * @param ledger of all its entries
   */
  public static Recaps of(Journal journal, Ledger ledger) {
    return new Recaps(journal, ledger);
  }

  /** Every month from the first entry's to the last one's. */
  public List<YearMonth> months() {
    return ledger.months().stream().map(Row::period).toList();
  }

  /** Every year from the first entry's to the last one's. */
  public List<Year> years() {
    return ledger.years().stream().map(Row::period).toList();
  }

  /** A month; empty before the first entry's and after the last one's. */
  public Optional<Recap> month(YearMonth month) {
    return row(ledger.months(), month)
        .map(row -> told(row, Saying.month(month), month.atDay(1), month.atEndOfMonth(), months));
  }

  /** A year; empty before the first entry's and after the last one's. */
  public Optional<Recap> year(Year year) {
    return row(ledger.years(), year)
        .map(
            row ->
                told(row, year.toString(), year.atDay(1), year.atMonth(12).atEndOfMonth(), years));
  }

  /**
   * What comes next at the end of a month or year, in the last one as of the last entry: up to
   * three short lines, such as {@code Trim the strake ends} and {@code Strakes: 2 of 16 left}. Jobs
   * of private entries are not among them.
   */
  public List<String> next(Recap recap) {
    return new NextWork(journal, pieces).asOf(end(recap.last()));
  }

  private LocalDate end(LocalDate last) {
    return journal.asOf().filter(asOf -> asOf.isBefore(last)).orElse(last);
  }

  private static <P> Optional<Row<P>> row(List<Row<P>> rows, P period) {
    return rows.stream().filter(row -> row.period().equals(period)).findFirst();
  }

  private <P extends Comparable<? super P>> Recap told(
      Row<P> row, String title, LocalDate first, LocalDate last, RankWords<P> ranks) {
    return new Recap(
        PlainName.of(journal.project().name()),
        title,
        first,
        last,
        Saying.hours(row.hours()),
        Saying.hourOrHours(row.hours()),
        Saying.hoursSpelledOut(row.hours()),
        Saying.counted(row.sums().sessions(), "session", "sessions"),
        Saying.counted(row.nights(), "night", "nights"),
        row.hours().isZero() ? "" : ranks.of(row),
        row.hours().isZero() ? "" : ranks.place(row),
        phases(row),
        costs(row),
        pieces(first, last),
        longest(first, last),
        Saying.hours(row.hoursToDate()),
        Saying.hourOrHours(row.hoursToDate()),
        Saying.hoursSpelledOut(row.hoursToDate()));
  }

  private List<PhaseShare> phases(Row<?> row) {
    return ledger.mostFirst(row).stream()
        .map(id -> share(id, row.sums().hoursOf(id), row.toDate().hoursOf(id)))
        .toList();
  }

  private PhaseShare share(String id, Hours worked, Hours toDate) {
    return new PhaseShare(
        PlainName.of(journal.phaseTitle(id)),
        Saying.hours(worked),
        worked.seconds(),
        Saying.hoursSpelledOut(worked),
        Saying.hours(toDate),
        Saying.hoursSpelledOut(toDate),
        worked.equals(toDate));
  }

  private Costs costs(Row<?> row) {
    Money toDate = row.costToDate();
    return new Costs(
        money.moved(row.cost()).orElse(""),
        row.cost().isZero() && toDate.isZero() ? "" : money.money(toDate));
  }

  private List<PiecesMade> pieces(LocalDate first, LocalDate last) {
    List<PiecesMade> made = new ArrayList<>();
    for (PieceKind kind : pieces.kinds()) {
      long some = pieces.made(kind, first, last);
      if (some != 0) {
        made.add(
            new PiecesMade(PlainName.of(kind.name()), some, pieces.done(kind, last), kind.total()));
      }
    }
    return made;
  }

  private Optional<LongestNight> longest(LocalDate first, LocalDate last) {
    return nights.subMap(first, true, last, true).entrySet().stream()
        // Of equals, min takes the first.
        .min(Map.Entry.<LocalDate, Hours>comparingByValue().reversed())
        .map(
            night ->
                new LongestNight(
                    Saying.dayInFull(night.getKey()), Saying.hoursSpelledOut(night.getValue())));
  }
}
