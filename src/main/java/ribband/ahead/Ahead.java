package ribband.ahead;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.random.RandomGenerator;
import java.util.stream.Collectors;
import ribband.jobs.Chain;
import ribband.jobs.Evening;
import ribband.jobs.Goal;
import ribband.jobs.OpenJob;
import ribband.jobs.OpenJob.State;
import ribband.jobs.PunchList;
import ribband.joints.Bonds;
import ribband.journal.Journal;
import ribband.journal.PieceKind;
import ribband.ledger.Ledger;
import ribband.measure.Hours;
import ribband.measure.Name;
import ribband.nights.Nightly;
import ribband.nights.Nights;
import ribband.nights.Setting;
import ribband.pieces.PieceCount;
import ribband.plan.ColdMonths;
import ribband.plan.ColdMonths.ColdMonth;
import ribband.plan.Forecast;
import ribband.plan.HoursLeft;
import ribband.plan.PhaseStanding;
import ribband.plan.Standing;
import ribband.plan.StillLeft;
import ribband.plan.WeeksWorked;
import ribband.shop.Figure;
import ribband.stock.Stock;
import ribband.stock.Stock.Told;

/**
 * All that lies ahead of a build at one moment.
 *
 * @param journal its entries up to the day
 * @param asOf the day of the figures; later entries do not count
 * @param pieces by folded name of their kind
 * @param forecast of the hours left, at the builder's own pace
 * @param nightly what a night can bring of each kind with pieces left in an open phase, by folded
 *     name, as wished
 * @param setting the evening and the clamps, as wished
 * @param changes what the wish changes; empty where nothing is wished
 */
public record Ahead(
    Journal journal,
    LocalDate asOf,
    Map<String, PieceCount> pieces,
    Standing standing,
    HoursLeft left,
    Forecast forecast,
    PunchList jobs,
    Chain chain,
    Map<String, Nightly> nightly,
    Setting setting,
    Optional<Changes> changes) {
  /** Any number would do; the same one gives the same dates. */
  private static final long SEED = 1;

  /**
   * Looks ahead.
   *
   * @param stock as of the same day
   * @param now tells what is still in clamps, and which night is tonight
   * @param told readers are not told of jobs that only private entries note
   */
  public static Ahead of(
      Journal all, Stock stock, LocalDate asOf, Instant now, Wish wish, Told told) {
    Journal journal = upTo(asOf, all);
    Ledger ledger = Ledger.of(journal);
    Map<String, PieceCount> pieces = PieceCount.of(journal, asOf);
    Standing standing = Standing.of(journal, ledger, pieces, asOf);
    HoursLeft left = HoursLeft.of(standing);
    WeeksWorked weeks = WeeksWorked.of(ledger.nights(), journal.project().away(), asOf);
    Forecast forecast = forecast(left.total(), weeks, journal, asOf);
    Bonds bonds = Bonds.of(journal, now);
    PunchList jobs = PunchList.of(journal, asOf, bonds, told);
    Nights nights = Nights.of(pieces, stock, bonds, told);
    Setting usual = Setting.usual(ledger.nights(), journal.project(), asOf);
    Setting setting = wish.over(usual);
    Map<String, PieceCount> open = open(pieces, standing);
    Map<String, Nightly> nightly = nightly(open, nights, setting);
    Optional<Changes> changes =
        wish.isNone()
            ? Optional.empty()
            : Optional.of(Changes.of(wish, forecast, nightly(open, nights, usual), nightly));
    return new Ahead(
        journal,
        asOf,
        pieces,
        standing,
        left,
        forecast,
        jobs,
        Chain.longest(jobs, kinds(open), Lastings.of(pieces, nightly, standing, left, setting)),
        nightly,
        setting,
        changes);
  }

  /**
   * As the site tells it: on the evening of the last entry's day, when its glue is still wet.
   *
   * @param stock as of that day
   */
  public static Ahead forReaders(Journal journal, Stock stock) {
    LocalDate asOf = journal.asOf().orElse(LocalDate.EPOCH);
    Instant night = asOf.plusDays(1).atStartOfDay(journal.project().zone()).toInstant();
    return of(journal, stock, asOf, night, Wish.NONE, Told.TO_READERS);
  }

  private static Journal upTo(LocalDate asOf, Journal journal) {
    return new Journal(
        journal.folder(),
        journal.project(),
        journal.phases(),
        journal.entries().stream().filter(entry -> !entry.date().isAfter(asOf)).toList());
  }

  static Forecast forecast(Figure<Hours> left, WeeksWorked weeks, Journal journal, LocalDate asOf) {
    return Forecast.of(left, weeks, journal.project().away(), asOf, seeded());
  }

  static Forecast again(Forecast forecast, Figure<Hours> left, WeeksWorked weeks) {
    return Forecast.of(left, weeks, forecast.away(), forecast.asOf(), seeded());
  }

  private static RandomGenerator seeded() {
    return new Random(SEED);
  }

  /** Kinds with pieces left, but for those of phases that {@code complete} calls finished. */
  private static Map<String, PieceCount> open(Map<String, PieceCount> pieces, Standing standing) {
    Set<String> finished =
        standing.phases().stream()
            .filter(PhaseStanding::isDone)
            .map(phase -> Name.fold(phase.phase().id()))
            .collect(Collectors.toSet());
    Map<String, PieceCount> open = new LinkedHashMap<>();
    pieces.forEach(
        (fold, count) -> {
          boolean over =
              count.kind().phase().map(Name::fold).filter(finished::contains).isPresent();
          if (count.left() > 0 && !over) {
            open.put(fold, count);
          }
        });
    return open;
  }

  private static Map<String, Nightly> nightly(
      Map<String, PieceCount> open, Nights nights, Setting setting) {
    Map<String, Nightly> nightly = new LinkedHashMap<>();
    open.forEach((fold, count) -> nightly.put(fold, nights.of(count, setting)));
    return nightly;
  }

  private static Map<String, PieceKind> kinds(Map<String, PieceCount> open) {
    Map<String, PieceKind> kinds = new LinkedHashMap<>();
    open.forEach((fold, count) -> kinds.put(fold, count.kind()));
    return kinds;
  }

  /** With every night as long as the evening wished, where one is. */
  public Forecast launch() {
    return changes.flatMap(Changes::launch).orElse(forecast);
  }

  /** What fits the evening; empty where nobody knows how long one is. */
  public Optional<Evening> evening() {
    List<Evening.Offer> offers = new ArrayList<>();
    for (Nightly kind : nightly.values()) {
      if (kind.most() > 0) {
        String name = kind.count().kind().name();
        offers.add(
            new Evening.Offer(new Goal(Goal.Kind.PIECES, name), name, kind.most(), kind.each()));
      }
    }
    return setting
        .evening()
        .hours()
        .map(length -> Evening.of(length, jobs.in(State.READY), offers, chain));
  }

  /** The first night to come: tonight, or tomorrow where tonight's work is written already. */
  public LocalDate nextNight() {
    boolean isWorked =
        journal.entries().stream()
            .anyMatch(entry -> entry.date().equals(asOf) && !entry.totalHours().isZero());
    return isWorked ? asOf.plusDays(1) : asOf;
  }

  /** What is still left on the days up to launch, for a chart; empty where there is no date. */
  public List<StillLeft> fan() {
    return StillLeft.of(forecast, seeded());
  }

  /** What it is too cold for this month of a job that waits for nothing; empty where nothing. */
  public Optional<ColdWork> coldFor(OpenJob job) {
    return job.state() == State.WAITING
        ? Optional.empty()
        : ColdWork.of(journal.project(), job.job(), asOf);
  }

  /** Months up to launch in which the shop is too cold for an adhesive. */
  public List<ColdMonth> cold() {
    return forecast
        .p95()
        .value()
        .map(end -> ColdMonths.of(journal.project(), asOf, end))
        .orElse(List.of());
  }

  public ZoneId zone() {
    return journal.project().zone();
  }
}
