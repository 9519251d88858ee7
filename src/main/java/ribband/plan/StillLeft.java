package ribband.plan;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.random.RandomGenerator;
import java.util.stream.IntStream;
import ribband.measure.Hours;

/**
 * The hours still left at the end of one day ahead, over all draws.
 *
 * @param p5 as few as they are in 5 of 100 draws
 * @param p50 as few as they are in half of them
 * @param p95 as few as they are in 95 of 100
 */
public record StillLeft(LocalDate date, Hours p5, Hours p20, Hours p50, Hours p80, Hours p95) {
  /** As many weeks as a drawing can tell apart. */
  private static final int MOST = 60;

  /**
   * From the as-of date to the Sunday by which 95 of 100 draws are done: weeks thinned evenly to at
   * most 60, those of P50 and P80, and the Sunday before a week where weeks away come before it.
   * Empty where the forecast has no such Sunday.
   *
   * @param random of the seed that the forecast was drawn with: then these are its very draws
   */
  public static List<StillLeft> of(Forecast forecast, RandomGenerator random) {
    if (forecast.p95().value().isEmpty()) {
      return List.of();
    }
    WeeksAhead ahead = WeeksAhead.of(forecast.away(), forecast.asOf());
    int[] weeks =
        shown(
            ahead.week(forecast.p50().value().orElseThrow()),
            ahead.week(forecast.p80().value().orElseThrow()),
            ahead.week(forecast.p95().value().get()));
    long[][] left = draw(forecast, ahead, weeks, random);
    Hours all = forecast.left().value().orElseThrow();
    List<StillLeft> days = new ArrayList<>();
    days.add(new StillLeft(forecast.asOf(), all, all, all, all, all));
    for (int i = 0; i < weeks.length; i++) {
      LocalDate sunday = ahead.sunday(weeks[i]);
      addRest(days, sunday, weeks[i] - (i == 0 ? 0 : weeks[i - 1]));
      days.add(at(sunday, left[i]));
    }
    return days;
  }

  /** Over weeks away the hours stay as they are, up to the Sunday on which these end. */
  private static void addRest(List<StillLeft> days, LocalDate sunday, int weeks) {
    StillLeft before = days.get(days.size() - 1);
    if (weeks == 1 && sunday.minusWeeks(1).isAfter(before.date)) {
      days.add(before.on(sunday.minusWeeks(1)));
    }
  }

  private StillLeft on(LocalDate day) {
    return new StillLeft(day, p5, p20, p50, p80, p95);
  }

  /** Evenly out of 1 to last, the last among them; and the two that have dates of their own. */
  private static int[] shown(int p50, int p80, int last) {
    int count = Math.min(last, MOST);
    IntStream even = IntStream.rangeClosed(1, count).map(i -> i * last / count);
    return IntStream.concat(even, IntStream.of(p50, p80)).sorted().distinct().toArray();
  }

  /** What is left at those weeks, in each draw; a draw that is done has none left. */
  private static long[][] draw(
      Forecast forecast, WeeksAhead ahead, int[] weeks, RandomGenerator random) {
    long[][] left = new long[weeks.length][Forecast.DRAWS];
    int[] shown = new int[weeks[weeks.length - 1] + 1];
    Arrays.fill(shown, -1);
    for (int i = 0; i < weeks.length; i++) {
      shown[weeks[i]] = i;
    }
    Bootstrap.draw(
        forecast.past().seconds(),
        forecast.left().value().orElseThrow().seconds(),
        Forecast.DRAWS,
        ahead.cap(),
        random,
        (draw, week, still) -> {
          if (week < shown.length && shown[week] >= 0) {
            left[shown[week]][draw] = still;
          }
        });
    return left;
  }

  private static StillLeft at(LocalDate date, long[] left) {
    Arrays.sort(left);
    return new StillLeft(
        date, rank(left, 5), rank(left, 20), rank(left, 50), rank(left, 80), rank(left, 95));
  }

  private static Hours rank(long[] sorted, int percent) {
    return new Hours(NearestRank.of(sorted, percent));
  }
}
