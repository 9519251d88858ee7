package ribband.site;

import java.time.Year;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import ribband.album.Leaf;
import ribband.chart.Chart;
import ribband.chart.MonthRows;
import ribband.chart.PhaseBars;
import ribband.chart.RunningCurve;
import ribband.chart.YearOfNights;
import ribband.journal.Phase;
import ribband.ledger.PhaseRow;
import ribband.ledger.Row;
import ribband.measure.Hours;
import ribband.measure.Money;
import ribband.measure.Saying;
import ribband.recap.BestPicture;
import ribband.recap.MonthSentence;

/** The first page: how far she is, what this month brought, what last night looked like. */
final class HomePage {
  private static final int LATEST = 6;

  private final Book book;

  HomePage(Book book) {
    this.book = book;
  }

  /**
   * What the template shows.
   *
   * @param far how far she is
   * @param month the month of the last entry; none for an empty journal
   * @param lead the best picture of the newest month that has one; none or one
   * @param last the last entry that may be shown; none or one
   * @param latest those before it
   * @param planned hours of all phases that have a plan; empty for none
   * @param costPlanned money of all that have a plan of it; empty for none or hidden
   * @param about the project's own words, made safe; may be empty
   */
  record View(
      HowFar far,
      List<ThisMonth> month,
      List<Prints.View> lead,
      List<Notices.View> last,
      List<Notices.View> latest,
      List<PhaseLine> phases,
      String sessions,
      String planned,
      String costPlanned,
      List<YearLines> years,
      List<Chart<RunningCurve>> runningHours,
      List<Chart<MonthRows>> monthsChart,
      List<Chart<PhaseBars>> phasesChart,
      List<Chart<YearOfNights>> year,
      boolean showsMoney,
      String monthsCsv,
      String phasesCsv,
      String about) {}

  /** The month of the last entry. */
  record ThisMonth(
      String title,
      String href,
      String hours,
      String unit,
      String nights,
      String money,
      String rank) {}

  /** A phase beside its plan. */
  record PhaseLine(
      String title,
      String href,
      String sessions,
      String hours,
      String share,
      String plan,
      String cost,
      String costPlan) {}

  /** A year's months, and what they come to. */
  record YearLines(
      String title, String sessions, String hours, String cost, List<MonthLine> months) {}

  /** A month in the list of all. */
  record MonthLine(
      String title,
      String href,
      String sessions,
      String hours,
      String hoursToDate,
      String cost,
      String costToDate,
      String rank) {}

  View view() {
    List<Leaf> newest = book.newestFirst();
    Notices notices = new Notices(book, Addresses.HOME);
    HoursCharts charts = new HoursCharts(book);
    return new View(
        HowFar.of(book),
        thisMonth().stream().toList(),
        lead(newest).stream().toList(),
        notices.of(newest.stream().limit(1).toList(), false),
        notices.of(newest.stream().skip(1).limit(LATEST).toList(), false),
        phases(),
        Saying.count(book.ledger().whole().sessions()),
        planned(),
        costPlanned(),
        years(),
        charts.running(),
        charts.months(),
        charts.phases(),
        lastYear(),
        book.showsMoney(),
        Addresses.MONTHS_CSV,
        Addresses.PHASES_CSV,
        book.album().about().orElse(""));
  }

  private List<Chart<YearOfNights>> lastYear() {
    return book.ledger().years().stream()
        .reduce((first, second) -> second)
        .map(row -> new NightCharts(book).of(row.period(), Addresses.HOME))
        .stream()
        .toList();
  }

  private Optional<Prints.View> lead(List<Leaf> newest) {
    return newest.stream()
        .filter(leaf -> !leaf.shots().isEmpty())
        .map(leaf -> YearMonth.from(leaf.entry().date()))
        .findFirst()
        .flatMap(month -> BestPicture.of(book.album(), book.ledger(), month))
        .map(new Prints(Addresses.HOME)::lead);
  }

  private Optional<ThisMonth> thisMonth() {
    List<Row<YearMonth>> months = book.ledger().months();
    if (months.isEmpty()) {
      return Optional.empty();
    }
    Row<YearMonth> month = months.get(months.size() - 1);
    String rank =
        month.hours().isZero()
            ? "no work yet"
            : new MonthSentence(book.journal(), book.ledger(), book.words()).briefRank(month);
    return Optional.of(
        new ThisMonth(
            Saying.month(month.period()),
            Addresses.href(Addresses.HOME, Addresses.month(month.period())),
            Saying.hoursInColumn(month.hours()),
            Saying.hourOrHours(month.hours()),
            Saying.counted(month.nights(), "night", "nights"),
            book.words().moved(month.cost()).orElse(""),
            rank));
  }

  private List<PhaseLine> phases() {
    List<PhaseLine> lines = new ArrayList<>();
    Hours whole = book.ledger().whole().totalHours();
    for (PhaseRow row : book.ledger().phases()) {
      Phase phase = row.phase();
      lines.add(
          new PhaseLine(
              phase.title(),
              Addresses.href(Addresses.HOME, Addresses.phase(phase.id())),
              Saying.count(row.sessions()),
              row.hours().isZero() ? "–" : Saying.hoursInColumn(row.hours()),
              Saying.share(row.hours().seconds(), whole.seconds()),
              phase.hours().map(Saying::hoursInColumn).orElse(""),
              book.words().moneyOrDash(row.cost()),
              book.words().money(phase.cost())));
    }
    return lines;
  }

  private String planned() {
    List<Hours> plans = plans().flatMap(phase -> phase.hours().stream()).toList();
    return plans.isEmpty() ? "" : Saying.hoursInColumn(Hours.sum(plans));
  }

  private String costPlanned() {
    List<Money> plans = plans().flatMap(phase -> phase.cost().stream()).toList();
    return plans.isEmpty() ? "" : book.words().money(Money.sum(plans));
  }

  private Stream<Phase> plans() {
    return book.ledger().phases().stream().map(PhaseRow::phase);
  }

  /** The newest year first, and so its months. */
  private List<YearLines> years() {
    List<YearLines> years = new ArrayList<>();
    for (Row<Year> year : book.ledger().years()) {
      List<MonthLine> months = new ArrayList<>();
      book.ledger().months().stream()
          .filter(month -> Year.from(month.period()).equals(year.period()))
          .forEach(month -> months.add(0, line(month)));
      years.add(
          0,
          new YearLines(
              year.period().toString(),
              Saying.count(year.sums().sessions()),
              hours(year),
              book.words().moneyOrDash(year.cost()),
              months));
    }
    return years;
  }

  private MonthLine line(Row<YearMonth> month) {
    return new MonthLine(
        Saying.month(month.period()),
        Addresses.href(Addresses.HOME, Addresses.month(month.period())),
        Saying.count(month.sums().sessions()),
        hours(month),
        Saying.hoursInColumn(month.hoursToDate()),
        book.words().moneyOrDash(month.cost()),
        book.words().money(month.costToDate()),
        month.hours().isZero() ? "–" : Saying.count(month.rank().orElseThrow()));
  }

  private static String hours(Row<?> row) {
    return row.hours().isZero() ? "–" : Saying.hoursInColumn(row.hours());
  }
}
