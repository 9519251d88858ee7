package ribband.chart;

/** The section hatchings that tell phases apart, as {@code charts/hatches.peb} draws them. */
public final class Hatch {
  /** How many there are. */
  public static final int COUNT = 12;

  private Hatch() {}

  /** The hatching of the nth phase, from 0; after the last the first comes again. */
  public static int of(int phase) {
    return Math.floorMod(phase, COUNT);
  }

  static int checked(int hatch) {
    if (hatch < 0 || hatch >= COUNT) {
      throw new IllegalArgumentException("no hatch " + hatch);
    }
    return hatch;
  }
}
