package ribband.chart;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.LongStream;

/**
 * The round ticks of a scale: 3 to 7 of them, evenly spaced, zero among them.
 *
 * @param from the lowest tick, zero or below
 * @param to the highest tick, zero or above
 * @param step from tick to tick, above zero
 */
public record Ticks(long from, long to, long step) {
  /** The largest amount, above or below zero, that a scale can hold. */
  public static final long LIMIT = 4_000_000_000_000_000_000L;

  private static final int MOST_STEPS = 5;

  public Ticks {
    if (step < 1 || from > 0 || to < 0 || from % step != 0 || to % step != 0) {
      throw new IllegalArgumentException("ticks " + from + " to " + to + " by " + step);
    }
  }

  /**
   * The ticks that cover zero and both amounts; where both are zero, two wholes.
   *
   * @throws IllegalArgumentException where an amount is beyond {@link #LIMIT}
   */
  static Ticks covering(long low, long high, long whole, Yardstick.Division division) {
    if (low > high || low < -LIMIT || high > LIMIT) {
      throw new IllegalArgumentException("range " + low + " to " + high);
    }
    long bottom = Math.min(low, 0);
    long top = low == 0 && high == 0 ? 2 * whole : Math.max(high, 0);
    for (long step : steps(whole, division)) {
      long below = -Math.floorDiv(bottom, step);
      long above = -Math.floorDiv(-top, step);
      if (below + above <= MOST_STEPS) {
        long room = Math.max(0, 2 - below - above);
        long up = top > 0 ? above + room : above;
        long down = top > 0 ? below : below + room;
        return new Ticks(-down * step, up * step, step);
      }
    }
    throw new IllegalStateException("no step for " + low + " to " + high);
  }

  private static List<Long> steps(long whole, Yardstick.Division division) {
    List<Long> steps = new ArrayList<>();
    long unit =
        switch (division) {
          case TENTHS -> 1;
          case SIXTIETHS -> whole;
        };
    if (division == Yardstick.Division.SIXTIETHS) {
      LongStream.of(1, 2, 5, 10, 15, 30).forEach(part -> steps.add(part * (whole / 60)));
    }
    for (long power = unit; power <= LIMIT / 2; power = power * 10) {
      for (long digit : new long[] {1, 2, 5}) {
        if (power <= LIMIT / digit) {
          steps.add(digit * power);
        }
      }
      if (power > LIMIT / 10) {
        break;
      }
    }
    return steps;
  }

  /** The ticks, lowest first. */
  public List<Long> values() {
    return LongStream.rangeClosed(from / step, to / step).mapToObj(n -> n * step).toList();
  }
}
