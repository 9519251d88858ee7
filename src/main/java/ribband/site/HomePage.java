package ribband.site;

import java.time.YearMonth;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
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
   * @param last the last entry that may be shown; none or one
   * @param latest those before it
   * @param about the project's own words, made safe; may be empty
   */
  record View(
      HowFar far,
      List<ThisMonth> month,
      List<Notices.View> last,
      List<Notices.View> latest,
      List<PhaseLine> phases,
      List<MonthLine> months,
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

  /** A month in the list of all. */
  record MonthLine(
      String title,
      String href,
      String sessions,
      String hours,
      String hoursToDate,
      String cost,
      String costToDate,
      int rank) {}

  View view() {
    List<Leaf> newest = book.newestFirst();
    Notices notices = new Notices(book, Addresses.HOME);
    HoursCharts charts = new HoursCharts(book);
    return new View(
        HowFar.of(book),
        thisMonth().stream().toList(),
        notices.of(newest.stream().limit(1).toList(), true),
        notices.of(newest.stream().skip(1).limit(LATEST).toList(), false),
        phases(),
        months(),
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

  private Optional<ThisMonth> thisMonth() {
    List<Row<YearMonth>> months = book.ledger().months();
    if (months.isEmpty()) {
      return Optional.empty();
    }
    Row<YearMonth> month = months.get(months.size() - 1);
    String rank =
        month.hours().isZero()
            ? "no work yet"
            : new MonthSentence(book.ledger(), book.words()).rank(month);
    return Optional.of(
        new ThisMonth(
            Saying.month(month.period()),
            Addresses.href(Addresses.HOME, Addresses.month(month.period())),
            Saying.hours(month.hours()),
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
              row.hours().isZero() ? "–" : Saying.hours(row.hours()),
              Saying.share(row.hours().seconds(), whole.seconds()),
              phase.hours().map(Saying::hours).orElse(""),
              book.words().moneyOrDash(row.cost()),
              book.words().money(phase.cost())));
    }
    return lines;
  }

  private List<MonthLine> months() {
    List<MonthLine> lines = new ArrayList<>();
    for (Row<YearMonth> month : book.ledger().months()) {
      Money cost = month.cost();
      lines.add(
          0,
          new MonthLine(
              Saying.month(month.period()),
              Addresses.href(Addresses.HOME, Addresses.month(month.period())),
              Saying.count(month.sums().sessions()),
              month.hours().isZero() ? "–" : Saying.hours(month.hours()),
              Saying.hours(month.hoursToDate()),
              book.words().moneyOrDash(cost),
              book.words().money(month.costToDate()),
              month.rank().orElseThrow()));
    }
    return lines;
  }
}
