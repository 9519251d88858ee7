package ribband.chart;

import java.util.ArrayList;
import java.util.List;

/** What is taken on a sheet already, so that lettering finds a clear place. One sheet, one use. */
final class Clearance {
  private static final int GAP = 3;
  private static final int STRIDE = 3;

  private final Box sheet;
  private final List<Box> taken = new ArrayList<>();
  private final List<Box> shaded = new ArrayList<>();

  /**
   * @param sheet where lettering may stand at all
   */
  Clearance(Box sheet) {
    this.sheet = sheet;
  }

  int width() {
    return sheet.right();
  }

  /** Whether lettering may stand there. */
  boolean isFree(Box box) {
    boolean inside =
        box.left() >= sheet.left()
            && box.right() <= sheet.right()
            && box.top() >= sheet.top()
            && box.bottom() <= sheet.bottom();
    Box grown = box.grown(GAP);
    return inside
        && taken.stream().noneMatch(grown::overlaps)
        && shaded.stream().noneMatch(grown::overlaps);
  }

  /** Whether a leader may run there; leaders may run close by a curve. */
  boolean isClear(Box box) {
    return taken.stream().noneMatch(box.grown(1)::overlaps);
  }

  /** Takes what nothing else may touch. */
  void take(Box box) {
    taken.add(box);
  }

  /** Takes what no lettering may stand on, but leaders may cross. */
  void shade(Box box) {
    shaded.add(box);
  }

  /** A line of steps, corner for corner. */
  void take(Steps steps) {
    steps.boxes().forEach(this::take);
  }

  /** A curve, piece for piece. */
  void take(FairCurve curve) {
    int from = curve.startX();
    int to = curve.endX();
    for (int x = from; x < to; x += STRIDE) {
      int y = curve.heightAt(x);
      int next = curve.heightAt(Math.min(to, x + STRIDE));
      take(new Box(x, Math.min(y, next) - 1, Math.min(to, x + STRIDE), Math.max(y, next) + 1));
    }
  }
}
