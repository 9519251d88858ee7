package ribband.site;

import java.math.BigInteger;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import ribband.album.Leaf;
import ribband.chart.Chart;
import ribband.chart.PhaseBars;
import ribband.chart.RunningCurve;
import ribband.chart.StackedMonths;
import ribband.chart.YearOfNights;
import ribband.journal.Phase;
import ribband.ledger.Ledger;
import ribband.ledger.PhaseRow;
import ribband.ledger.Row;
import ribband.measure.Hours;
import ribband.measure.Money;
import ribband.measure.Saying;
import ribband.prose.Mention;
import ribband.prose.Print;
import ribband.prose.Prose;
import ribband.prose.Surroundings;

/** The first page: how far she is, what this month brought, what last night looked like. */
final class HomePage {
  private static final int LATEST = 6;

  private final Book book;
  private final Prose prose;

  HomePage(Book book, Prose prose) {
    this.book = book;
    this.prose = prose;
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
      Far far,
      List<ThisMonth> month,
      List<Notices.View> last,
      List<Notices.View> latest,
      List<PhaseLine> phases,
      List<MonthLine> months,
      List<Chart<RunningCurve>> runningHours,
      List<Chart<StackedMonths>> monthsChart,
      List<Chart<PhaseBars>> phasesChart,
      List<Chart<YearOfNights>> year,
      boolean showsMoney,
      String monthsCsv,
      String phasesCsv,
      String about) {}

  /**
   * How far she is.
   *
   * @param planned of all phases that have a plan; empty without one
   * @param progress 0 to 1000, thousandths of the plan worked; -1 without a plan
   * @param mark where that is along the drawn hull, 40 to 960
   * @param said the same in words, for who cannot see the hull
   * @param since when she was begun, in words; may be empty
   */
  record Far(
      String hours,
      String sessions,
      String money,
      String planned,
      String share,
      int progress,
      int mark,
      String said,
      String since) {}

  /** The month of the last entry. */
  record ThisMonth(
      String title, String href, String hours, String nights, String money, String rank) {}

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
    Charts charts = new Charts(book);
    return new View(
        far(),
        thisMonth().stream().toList(),
        notices.of(newest.stream().limit(1).toList(), true),
        notices.of(newest.stream().skip(1).limit(LATEST).toList(), false),
        phases(),
        months(),
        charts.runningHours(),
        charts.months(),
        charts.phaseHours(),
        lastYear(charts),
        book.showsMoney(),
        Addresses.MONTHS_CSV,
        Addresses.PHASES_CSV,
        book.album().about().map(words -> prose.html(words, plainLinks())).orElse(""));
  }

  private List<Chart<YearOfNights>> lastYear(Charts charts) {
    return book.ledger().years().stream()
        .reduce((first, second) -> second)
        .map(row -> charts.year(row.period(), Addresses.HOME))
        .stream()
        .toList();
  }

  private Far far() {
    Ledger ledger = book.ledger();
    Hours hours = ledger.whole().totalHours();
    Hours planned = planned(ledger.phases());
    Hours worked = workedAgainstPlan(ledger.phases());
    boolean isPlanned = !planned.isZero();
    int progress = isPlanned ? thousandths(worked, planned) : -1;
    return new Far(
        Saying.hours(hours),
        Saying.counted(ledger.whole().sessions(), "session", "sessions"),
        book.showsMoney() ? book.words().money(ledger.whole().totalCost()) : "",
        isPlanned ? Saying.hours(planned) : "",
        isPlanned ? Saying.share(worked.seconds(), planned.seconds()) : "",
        progress,
        40 + progress * 920 / 1000,
        Saying.share(worked.seconds(), planned.seconds()) + " of the planned hours are worked",
        book.journal().project().started().map(day -> "Begun " + Saying.day(day)).orElse(""));
  }

  private static Hours planned(List<PhaseRow> phases) {
    return Hours.sum(phases.stream().flatMap(row -> row.phase().hours().stream()).toList());
  }

  /** Hours beyond a phase's plan bring the boat no nearer to the water. */
  private static Hours workedAgainstPlan(List<PhaseRow> phases) {
    List<Hours> worked = new ArrayList<>();
    for (PhaseRow row : phases) {
      Optional<Hours> plan = row.phase().hours();
      plan.ifPresent(p -> worked.add(p.compareTo(row.hours()) < 0 ? p : row.hours()));
    }
    return Hours.sum(worked);
  }

  private static int thousandths(Hours part, Hours whole) {
    return BigInteger.valueOf(part.seconds())
        .multiply(BigInteger.valueOf(1000))
        .divide(BigInteger.valueOf(whole.seconds()))
        .min(BigInteger.valueOf(1000))
        .intValue();
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

  /** The words about the boat stand outside the entries: their relative links stay text. */
  private static Surroundings plainLinks() {
    return new Surroundings() {
      @Override
      public Optional<String> href(Mention link) {
        return Optional.empty();
      }

      @Override
      public Optional<Print> print(Mention picture) {
        return Optional.empty();
      }
    };
  }
}
