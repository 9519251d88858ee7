package ribband.chart;

/** How a line runs over the dates: as one fair curve, or in steps. */
public sealed interface Course permits FairCurve, Steps {
  /** Tells a template which of the two it is. */
  boolean isFair();

  /** Where it begins and ends, in the drawing's unit. */
  int startX();

  int endX();

  /** Its height at a distance from the left, both in the drawing's unit. */
  int heightAt(int at);
}
