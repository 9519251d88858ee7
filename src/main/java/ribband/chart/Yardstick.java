package ribband.chart;

import java.util.Objects;
import java.util.function.LongFunction;
import ribband.measure.Hours;
import ribband.measure.Saying;

/**
 * How the amounts of a chart are named, divided and said. Amounts are whole numbers of a smallest
 * unit: seconds, cents.
 *
 * @param what the head of a column of amounts: {@code Hours}
 * @param whole how many smallest units make one of what people count in: 3600, 100
 * @param division how a whole is divided on a scale
 * @param tick says an amount on the scale, short
 * @param furthest says the last amount on the scale, with the unit: {@code 500 hours}
 * @param figure says an amount in a table, bare
 * @param words says an amount by itself: {@code 26½ hours}
 */
public record Yardstick(
    String what,
    long whole,
    Division division,
    LongFunction<String> tick,
    LongFunction<String> furthest,
    LongFunction<String> figure,
    LongFunction<String> words) {
  public Yardstick {
    Objects.requireNonNull(what);
    Objects.requireNonNull(division);
    Objects.requireNonNull(tick);
    Objects.requireNonNull(furthest);
    Objects.requireNonNull(figure);
    Objects.requireNonNull(words);
    if (whole < 1 || division == Division.SIXTIETHS && whole % 60 != 0) {
      throw new IllegalArgumentException("whole of " + whole);
    }
  }

  /** Seconds, said as hours and minutes. */
  public static Yardstick hours() {
    return new Yardstick(
        "Hours",
        3600,
        Division.SIXTIETHS,
        Yardstick::onScale,
        seconds -> onScale(seconds) + (Math.abs(seconds) == 3600 ? " hour" : " hours"),
        Yardstick::clocked,
        seconds -> Saying.hoursInWords(new Hours(seconds)));
  }

  /** {@code 100}, {@code 0:30}. */
  private static String onScale(long seconds) {
    return seconds % 3600 == 0 ? Saying.count(seconds / 3600) : clocked(seconds);
  }

  /** {@code 26:30}, to the minute. */
  private static String clocked(long seconds) {
    long minutes = (seconds + 30) / 60;
    return Saying.count(minutes / 60) + ":" + (minutes % 60 < 10 ? "0" : "") + minutes % 60;
  }

  Ticks ticks(long low, long high) {
    return Ticks.covering(low, high, whole, division);
  }

  String figure(long amount) {
    return figure.apply(amount);
  }

  String words(long amount) {
    return words.apply(amount);
  }

  /** How a whole is divided on a scale. */
  public enum Division {
    /** 1, 2, 5 times a power of ten. */
    TENTHS,
    /** 1, 2, 5, 10, 15, 30 sixtieths; from one whole up like tenths. */
    SIXTIETHS
  }
}
