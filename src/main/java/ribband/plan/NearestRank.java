package ribband.plan;

/**
 * Percentiles by nearest rank: always one of the values, never between two.
 *
 * <p>Source: definition 1 (R_1) of R. J. Hyndman and Y. Fan, Sample Quantiles in Statistical
 * Packages, The American Statistician 50 (1996); cited from memory.
 */
public final class NearestRank {
  private NearestRank() {}

  /**
   * The value that so many hundredths of all values do not exceed.
   *
   * @param sorted rising, at least one
   * @param percent 1 to 100
   */
  public static long of(long[] sorted, int percent) {
    if (sorted.length == 0 || percent < 1 || percent > 100) {
      throw new IllegalArgumentException("P" + percent + " of " + sorted.length);
    }
    long rank = ((long) sorted.length * percent + 99) / 100;
    return sorted[(int) rank - 1];
  }
}
