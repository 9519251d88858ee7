package ribband.site;

import java.time.LocalDate;
import java.time.Year;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import ribband.chart.Chart;
import ribband.chart.YearOfNights;
import ribband.journal.Entry;
import ribband.ledger.Records;
import ribband.ledger.Records.Night;
import ribband.ledger.Row;
import ribband.measure.Saying;

/** The best months, the longest nights, the runs and the gaps. */
final class RecordsPage {
  private static final int LONGEST_NIGHTS = 10;

  private final Book book;
  private final Map<LocalDate, Entry> entryOfDay;
  private final ShownNights shown;
  private final EntryNames names;

  RecordsPage(Book book) {
    this.book = book;
    this.entryOfDay = book.firstEntryOfDay();
    this.shown = ShownNights.of(book);
    this.names = new EntryNames(book.album());
  }

  /** What the template shows. */
  record View(
      List<RecordFacts.Fact> facts,
      List<MonthLine> months,
      List<NightLine> nights,
      List<YearLine> years,
      List<Chart<YearOfNights>> nightsOfYears,
      boolean showsMoney) {}

  /** A month in the ranking. */
  record MonthLine(int rank, String month, String href, String hours, String nights, String cost) {}

  /**
   * A long night.
   *
   * @param date empty where private, as are the title and the link
   */
  record NightLine(String date, String day, String hours, String title, String href) {}

  /** A year. */
  record YearLine(String year, String sessions, String hours, String cost, String rank) {}

  View view() {
    return new View(
        new RecordFacts(book).all(),
        months(),
        nights(),
        years(),
        nightsOfYears(),
        book.showsMoney());
  }

  private List<MonthLine> months() {
    List<MonthLine> lines = new ArrayList<>();
    for (Row<YearMonth> month : Records.byRank(book.ledger().months())) {
      lines.add(
          new MonthLine(
              month.rank().orElseThrow(),
              Saying.month(month.period()),
              monthHref(month.period()),
              Saying.hoursInColumn(month.hours()),
              Saying.count(month.nights()),
              book.words().moneyOrDash(month.cost())));
    }
    return lines;
  }

  private List<NightLine> nights() {
    List<NightLine> lines = new ArrayList<>();
    for (Night night : book.records().nights().stream().limit(LONGEST_NIGHTS).toList()) {
      Optional<Entry> entry = Optional.of(night.date()).filter(shown::has).map(entryOfDay::get);
      // spec: records show no title and no link of a private entry.
      lines.add(
          new NightLine(
              entry.map(e -> e.date().toString()).orElse(""),
              entry.map(e -> Saying.day(e.date())).orElse("not shown"),
              Saying.hoursInColumn(night.hours()),
              entry.map(names::of).orElse(""),
              entry.map(RecordsPage::href).orElse("")));
    }
    return lines;
  }

  private List<YearLine> years() {
    List<YearLine> lines = new ArrayList<>();
    for (Row<Year> year : book.ledger().years()) {
      lines.add(
          new YearLine(
              year.period().toString(),
              Saying.count(year.sums().sessions()),
              Saying.hoursInColumn(year.hours()),
              book.words().moneyOrDash(year.cost()),
              year.hours().isZero() ? "–" : Saying.count(year.rank().orElseThrow())));
    }
    return lines;
  }

  /** The newest year first. */
  private List<Chart<YearOfNights>> nightsOfYears() {
    NightCharts charts = new NightCharts(book);
    List<Chart<YearOfNights>> years = new ArrayList<>();
    for (Row<Year> year : book.ledger().years()) {
      years.add(0, charts.of(year.period(), Addresses.RECORDS));
    }
    return years;
  }

  static String monthHref(YearMonth month) {
    return Addresses.href(Addresses.RECORDS, Addresses.month(month));
  }

  static String href(Entry entry) {
    return Addresses.href(Addresses.RECORDS, Addresses.entry(entry));
  }
}
