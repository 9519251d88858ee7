package ribband.chart;

import java.time.LocalDate;
import java.time.YearMonth;
import java.util.List;

/**
 * What is left over the days ahead, as a fan that narrows to the zero line: two bands of draws, one
 * inside the other, and the middle one as a fair curve.
 *
 * @param left where the dates begin
 * @param right where the dates and the rules end
 * @param zero height of the zero line
 * @param ticks height under which the month marks stand
 * @param outer 9 of 10 draws lie in it
 * @param inner 6 of 10 draws lie in it
 * @param median in tenths of the drawing's unit
 * @param startX the first day
 * @param startY what is left on it
 * @param now what stands there
 * @param ends where percentiles reach the zero line, with their dates
 * @param bands what the bands hold, with leaders into them
 * @param spells those that are too cold for something, then those without work
 */
public record Fan(
    int width,
    int height,
    int left,
    int right,
    int zero,
    int ticks,
    List<Rule> rules,
    List<MonthMark> months,
    Band outer,
    Band inner,
    FairCurve median,
    int startX,
    int startY,
    Label now,
    List<Callout> ends,
    List<Callout> bands,
    List<SpanLine> spells) {
  public Fan {
    rules = List.copyOf(rules);
    months = List.copyOf(months);
    ends = List.copyOf(ends);
    bands = List.copyOf(bands);
    spells = List.copyOf(spells);
  }

  /**
   * What is left at the end of one day.
   *
   * @param p5 0 or more, as all of them; they rise
   */
  public record Day(LocalDate date, long p5, long p20, long p50, long p80, long p95) {
    public Day {
      if (p5 < 0 || p5 > p20 || p20 > p50 || p50 > p80 || p80 > p95) {
        throw new IllegalArgumentException("falling percentiles on " + date);
      }
    }
  }

  /** The days on which nothing is left; none is before the one in front of it. */
  public record Done(LocalDate p50, LocalDate p80, LocalDate p95) {
    public Done {
      if (p80.isBefore(p50) || p95.isBefore(p80)) {
        throw new IllegalArgumentException(p50 + ", " + p80 + ", " + p95);
      }
    }
  }

  /**
   * A month that is too cold for something.
   *
   * @param what for what, in words: {@code epoxy and varnish}
   */
  public record ColdMonth(YearMonth month, String what) {}

  /**
   * Days on which no work is done, so that what is left stays level.
   *
   * @param name what is told of them; what comes again is told once
   * @param to its last day, not before the first
   */
  public record Rest(String name, LocalDate from, LocalDate to) {}

  /**
   * A closed area.
   *
   * @param edge its corners in their order
   */
  public record Band(List<Corner> edge) {
    public Band {
      edge = List.copyOf(edge);
    }
  }

  /** A corner of a band. */
  public record Corner(int x, int y) {}

  /**
   * The chart of what is left.
   *
   * @param days the first is the day all is as of, the last that of {@code done.p95()}; two at
   *     least, by date
   * @param cold in any order; those outside the days are left out
   * @param rests likewise; none overlaps another
   */
  public static Chart<Fan> chart(
      Caption caption,
      List<Day> days,
      Done done,
      List<ColdMonth> cold,
      List<Rest> rests,
      Yardstick yardstick) {
    FanSheet sheet = new FanSheet(days, done, cold, rests, yardstick);
    return Chart.of(caption, sheet::draw, new FanTable(days, done, cold, rests, yardstick).table());
  }
}
