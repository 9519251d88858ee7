package ribband.plan;

import java.time.LocalDate;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.random.RandomGenerator;
import ribband.journal.Away;
import ribband.measure.Hours;
import ribband.shop.Figure;

/**
 * When the hours left will be worked off, by draws from the builder's own weeks.
 *
 * @param left what is left on the as-of date
 * @param past the weeks that were drawn from
 * @param away days on which no work will be done
 * @param p50 the Sunday by which half of the draws are done, or why there is none
 * @param p80 the Sunday by which 80 of 100 are
 * @param p95 the Sunday by which 95 of 100 are
 */
public record Forecast(
    LocalDate asOf,
    Figure<Hours> left,
    WeeksWorked past,
    List<Away> away,
    Figure<LocalDate> p50,
    Figure<LocalDate> p80,
    Figure<LocalDate> p95) {
  /** How many futures are drawn. */
  public static final int DRAWS = 10_000;

  public static final String NOTHING_LEFT = "nothing left by the plan";
  public static final String NO_PACE = "no pace to go by";
  public static final String TOO_FAR = "more than " + WeeksAhead.YEARS + " years";

  public Forecast {
    Objects.requireNonNull(asOf);
    Objects.requireNonNull(left);
    Objects.requireNonNull(past);
    away = List.copyOf(away);
    Objects.requireNonNull(p50);
    Objects.requireNonNull(p80);
    Objects.requireNonNull(p95);
  }

  /**
   * spec: 10,000 bootstrap draws, percentiles by nearest rank, each the Sunday of its week.
   *
   * @param past another history asks what it would change
   * @param random of a fixed seed, so that the same journal gives the same dates
   */
  public static Forecast of(
      Figure<Hours> left,
      WeeksWorked past,
      List<Away> away,
      LocalDate asOf,
      RandomGenerator random) {
    Optional<String> none = none(left, past);
    if (none.isPresent()) {
      Figure<LocalDate> never = Figure.unknown(none.get());
      return new Forecast(asOf, left, past, away, never, never, never);
    }
    WeeksAhead ahead = WeeksAhead.of(away, asOf);
    long seconds = left.value().orElseThrow().seconds();
    long[] weeks = Bootstrap.weeks(past.seconds(), seconds, DRAWS, ahead.cap(), random);
    return new Forecast(
        asOf,
        left,
        past,
        away,
        sunday(weeks, 50, ahead),
        sunday(weeks, 80, ahead),
        sunday(weeks, 95, ahead));
  }

  private static Optional<String> none(Figure<Hours> left, WeeksWorked past) {
    if (left.value().isEmpty()) {
      return Optional.of(left.why());
    }
    if (left.value().get().isZero()) {
      return Optional.of(NOTHING_LEFT);
    }
    boolean isIdle = past.weeks().stream().allMatch(week -> week.hours().isZero());
    return isIdle ? Optional.of(NO_PACE) : Optional.empty();
  }

  private static Figure<LocalDate> sunday(long[] weeks, int percent, WeeksAhead ahead) {
    long week = NearestRank.of(weeks, percent);
    return week > ahead.cap() ? Figure.unknown(TOO_FAR) : Figure.of(ahead.sunday(week));
  }
}
