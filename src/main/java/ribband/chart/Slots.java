package ribband.chart;

/**
 * Where each month's bar stands.
 *
 * @param left where the first month begins
 * @param span what all months take up
 * @param bar width of a bar
 */
record Slots(int months, int left, int span, int bar) {
  private static final int WIDEST_SLOT = 92;
  private static final int WIDEST_BAR = 44;
  private static final int THIN_BAR = 9;

  static Slots of(int months, Frame frame) {
    int slot = Math.min(frame.span() / months, WIDEST_SLOT);
    int span = slot == 0 ? frame.span() : slot * months;
    int bar = slot < 3 ? 1 : Math.max(2, Math.min(slot * 5 / 8, WIDEST_BAR));
    return new Slots(months, frame.left(), span, bar);
  }

  double room() {
    return (double) span / months;
  }

  int x(int month) {
    return left + (int) ((long) span * month / months) + (span / months - bar) / 2;
  }

  /** How far outside its bar a leader runs, from the innermost, 0; thin bars have it on them. */
  int lead(int leader) {
    return bar < THIN_BAR ? -bar / 2 + 2 * leader : 5 * (leader + 1);
  }

  /** How far inside its bar a leader ends. */
  int inset() {
    return bar < THIN_BAR ? bar / 2 : 4;
  }
}
