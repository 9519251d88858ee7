package ribband.plan;

import java.util.Arrays;
import java.util.random.RandomGenerator;

/**
 * Draws futures out of a past: each week ahead brings what one of the weeks that were, picked at
 * random and put back, has brought. Amounts may be seconds, nights or pieces.
 *
 * <p>Source: B. Efron, Bootstrap Methods: Another Look at the Jackknife, The Annals of Statistics 7
 * (1979); cited from memory.
 */
public final class Bootstrap {
  /** Sees what is left at the end of each week of each draw, until nothing is. */
  interface Watcher {
    /**
     * @param week from 1
     * @param left 0 or more
     */
    void see(int draw, int week, long left);
  }

  private Bootstrap() {}

  /**
   * The weeks that each draw takes, rising; {@code cap + 1} where that many were not enough.
   *
   * @param history what each week brought, 0 or more; at least one of them more
   * @param left what is to be worked off, more than 0
   * @param draws how many futures
   * @param cap the most weeks that a draw may take
   */
  public static long[] weeks(
      long[] history, long left, int draws, int cap, RandomGenerator random) {
    long[] weeks = new long[draws];
    if (isHopeless(history, left, cap)) {
      Arrays.fill(weeks, cap + 1L);
      return weeks;
    }
    draw(
        history,
        left,
        draws,
        cap,
        random,
        (draw, week, still) -> weeks[draw] = still > 0 && week == cap ? cap + 1L : week);
    Arrays.sort(weeks);
    return weeks;
  }

  /** Whether even the best week, time and again, would not do. */
  private static boolean isHopeless(long[] history, long left, int cap) {
    long best = Arrays.stream(history).max().orElse(0);
    return best <= 0 || (left - 1) / best >= cap;
  }

  /** Runs the draws one after the other; the same random source runs the same ones. */
  static void draw(
      long[] history, long left, int draws, int cap, RandomGenerator random, Watcher watcher) {
    for (int draw = 0; draw < draws; draw++) {
      long still = left;
      for (int week = 1; week <= cap && still > 0; week++) {
        still = Math.max(0, still - history[random.nextInt(history.length)]);
        watcher.see(draw, week, still);
      }
    }
  }
}
