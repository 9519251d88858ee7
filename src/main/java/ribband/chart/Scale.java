package ribband.chart;

/**
 * A straight scale from amounts to coordinates.
 *
 * @param from an amount below {@code to}
 * @param start the coordinate of {@code from}
 * @param end the coordinate of {@code to}; may be less than {@code start}, as heights are
 */
record Scale(long from, long to, int start, int end) {
  Scale {
    if (from >= to) {
      throw new IllegalArgumentException("scale " + from + " to " + to);
    }
  }

  static Scale of(Ticks ticks, int start, int end) {
    return new Scale(ticks.from(), ticks.to(), start, end);
  }

  int at(long amount) {
    return (int) Math.round(exactly(amount));
  }

  double exactly(long amount) {
    return start + (end - start) * ((double) (amount - from) / (double) (to - from));
  }
}
