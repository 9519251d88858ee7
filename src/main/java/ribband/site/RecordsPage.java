package ribband.site;

import java.time.LocalDate;
import java.time.Year;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import ribband.album.Leaf;
import ribband.chart.Chart;
import ribband.chart.YearOfNights;
import ribband.journal.Entry;
import ribband.ledger.Made;
import ribband.ledger.PerHour;
import ribband.ledger.Records;
import ribband.ledger.Records.Night;
import ribband.ledger.Records.Stretch;
import ribband.ledger.Row;
import ribband.measure.Hours;
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
      List<Fact> facts,
      List<MonthLine> months,
      List<NightLine> nights,
      List<YearLine> years,
      List<Chart<YearOfNights>> nightsOfYears,
      boolean showsMoney) {}

  /** One record in big letters. */
  record Fact(String name, String figure, String words, String href) {}

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
    return new View(facts(), months(), nights(), years(), nightsOfYears(), book.showsMoney());
  }

  private List<Fact> facts() {
    Records records = book.records();
    List<Fact> facts = new ArrayList<>();
    records
        .bestMonth()
        .ifPresent(
            month ->
                facts.add(
                    new Fact(
                        "Best month",
                        Saying.hoursInColumn(month.hours()),
                        Saying.hourOrHours(month.hours()) + " in " + Saying.month(month.period()),
                        monthHref(month.period()))));
    records
        .longestNight()
        .ifPresent(
            night ->
                facts.add(
                    new Fact(
                        "Longest night",
                        Saying.hoursInColumn(night.hours()),
                        Saying.hourOrHours(night.hours()) + onDay(night.date()),
                        entryHref(night.date()))));
    stretch(records.runOfNights(), "Longest run", "night in a row", "nights in a row")
        .ifPresent(facts::add);
    stretch(records.runOfWeeks(), "Longest run of weeks", "week in a row", "weeks in a row")
        .ifPresent(facts::add);
    stretch(records.gap(), "Longest gap", "day without work", "days without work")
        .ifPresent(facts::add);
    mostPieces().ifPresent(facts::add);
    averageNight().ifPresent(facts::add);
    dearest().ifPresent(facts::add);
    if (book.showsMoney() && !book.ledger().whole().totalCost().isNegative()) {
      PerHour.of(book.ledger().whole().totalCost(), book.ledger().whole().totalHours())
          .ifPresent(
              each ->
                  facts.add(
                      new Fact(
                          "Money",
                          book.words().money(each),
                          "for each hour of work",
                          Addresses.href(Addresses.RECORDS, Addresses.MONEY))));
    }
    return facts;
  }

  private Optional<Fact> stretch(
      Optional<Stretch> stretch, String name, String one, String several) {
    return stretch.map(
        s ->
            new Fact(
                name,
                Saying.count(s.length()),
                (s.length() == 1 ? one : several) + ", " + days(s),
                ""));
  }

  /** Private nights hold their record, without a day. */
  private String onDay(LocalDate date) {
    return shown.has(date) ? " on " + Saying.day(date) : " in one night";
  }

  /** By month alone where a private night is in it or ends it. */
  private String days(Stretch stretch) {
    boolean told =
        book.ledger().nights().keySet().stream()
            .filter(day -> !day.isBefore(stretch.from().minusDays(1)))
            .filter(day -> !day.isAfter(stretch.to().plusDays(1)))
            .allMatch(shown::has);
    Function<LocalDate, String> say = told ? Saying::day : day -> Saying.month(YearMonth.from(day));
    String from = say.apply(stretch.from());
    String to = say.apply(stretch.to());
    return from.equals(to) ? from : from + " to " + to;
  }

  private Optional<Fact> mostPieces() {
    return book.records()
        .mostPieces()
        .map(
            made -> {
              Optional<Entry> told =
                  book.album().shown().stream()
                      .map(Leaf::entry)
                      .filter(entry -> tellsOf(entry, made))
                      .findFirst();
              return new Fact(
                  "Most pieces in a night",
                  Saying.count(made.count()),
                  made.kind() + told.map(e -> " on " + Saying.day(made.date())).orElse(""),
                  told.map(RecordsPage::href).orElse(""));
            });
  }

  private static boolean tellsOf(Entry entry, Made made) {
    return entry.date().equals(made.date())
        && entry.pieces().stream().anyMatch(work -> work.kind().equals(made.kind()));
  }

  /** spec: of what private entries bought readers hear one sum a month, and no single price. */
  private Optional<Fact> dearest() {
    return book.records().bought().stream()
        .filter(bought -> book.showsMoney() && bought.entry().isPublic())
        .findFirst()
        .map(
            bought ->
                new Fact(
                    "Largest purchase",
                    book.words().money(bought.amount()),
                    bought.what() + ", on " + Saying.day(bought.entry().date()),
                    href(bought.entry())));
  }

  private Optional<Fact> averageNight() {
    int nights = book.ledger().nights().size();
    if (nights == 0) {
      return Optional.empty();
    }
    long seconds = Hours.sum(book.ledger().nights().values()).seconds();
    Hours mean = new Hours((seconds + nights / 2) / nights);
    return Optional.of(
        new Fact(
            "A night, on average",
            Saying.hoursInColumn(mean),
            Saying.hourOrHours(mean) + ", over " + Saying.counted(nights, "night", "nights"),
            ""));
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

  private static String monthHref(YearMonth month) {
    return Addresses.href(Addresses.RECORDS, Addresses.month(month));
  }

  private String entryHref(LocalDate date) {
    return Optional.of(date)
        .filter(shown::has)
        .map(entryOfDay::get)
        .map(RecordsPage::href)
        .orElse("");
  }

  private static String href(Entry entry) {
    return Addresses.href(Addresses.RECORDS, Addresses.entry(entry));
  }
}
