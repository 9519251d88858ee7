package ribband.chart;

/** The room that something takes up on a sheet, its edges included. */
record Box(int left, int top, int right, int bottom) {
  Box {
    if (right < left || bottom < top) {
      throw new IllegalArgumentException(left + ", " + top + " to " + right + ", " + bottom);
    }
  }

  boolean overlaps(Box other) {
    return left <= other.right && other.left <= right && top <= other.bottom && other.top <= bottom;
  }

  Box grown(int by) {
    return new Box(left - by, top - by, right + by, bottom + by);
  }
}
