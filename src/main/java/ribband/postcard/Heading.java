package ribband.postcard;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/** The title block along the top: the boat, what she is, and the month under the red tab. */
record Heading(Face face) {
  private static final Hand BOAT = Hand.of(Weight.BOLD, Ink.INK);
  private static final Hand WHAT = Hand.of(Weight.REGULAR, Ink.INK_2);
  private static final Hand PERIOD = Hand.of(Weight.BOLD, Ink.INK);
  private static final double LARGEST_BOAT = 50;
  private static final double LARGEST_PERIOD = 42;
  private static final double LARGEST_WHAT = 32;
  private static final double MOST_PERIOD = 400;
  private static final int MOST_LINES = 3;

  /** Of the room for the boat and what she is, the one that looks best first. */
  private static final List<Double> MOST_BOAT = List.of(0.55, 0.4, 0.3, 0.7);

  private static final double DOUBLE_RULE = 5;
  private static final double TAB = 2;
  private static final double LOWEST_CELL = 83;

  /**
   * Draws it into the top of a sheet, as high as its words need.
   *
   * @return where it ends
   */
  double draw(Draft draft, Box sheet) {
    double pad = SheetPlan.PADDING;
    Lines period = fit(face.period(), PERIOD, MOST_PERIOD, LARGEST_PERIOD);
    double periodLeft = sheet.right() - pad - period.width();
    double divide = periodLeft - pad;
    List<Lines> names = names(divide - sheet.x() - 2 * pad);
    double cell =
        Stream.concat(names.stream(), Stream.of(period))
            .mapToDouble(Lines::cellHeight)
            .reduce(LOWEST_CELL, Math::max);
    double bottom = sheet.y() + cell + DOUBLE_RULE;

    draft.draw(Drawn.across(sheet.x(), sheet.right(), bottom - DOUBLE_RULE, Pen.FINE));
    draft.draw(Drawn.across(sheet.x(), sheet.right(), bottom, Pen.FINE));
    draft.letter(period, periodLeft, period.middle(sheet.y(), cell));
    draft.draw(Drawn.down(divide, sheet.y(), sheet.y() + cell, Pen.RULE));
    draft.draw(Drawn.across(divide, sheet.right(), bottom - TAB, Pen.TAB));
    double left = sheet.x() + pad;
    for (Lines name : names) {
      if (name != names.get(0)) {
        draft.draw(Drawn.down(left - pad, sheet.y(), sheet.y() + cell, Pen.RULE));
      }
      draft.letter(name, left, name.middle(sheet.y(), cell));
      left += name.width() + 2 * pad;
    }
    return bottom;
  }

  /** Her name, and what she is where her name leaves room for it: both whole if they can be. */
  private List<Lines> names(double room) {
    List<List<Lines>> beside = new ArrayList<>();
    if (!face.what().isBlank()) {
      MOST_BOAT.forEach(part -> beside.add(beside(room, part)));
    }
    return beside.stream()
        .filter(both -> both.stream().allMatch(lines -> lines.said() == Said.WHOLE))
        .findFirst()
        .or(() -> beside.stream().filter(b -> b.get(0).said() == Said.WHOLE).findFirst())
        .orElseGet(() -> List.of(fit(face.boat(), BOAT, room, LARGEST_BOAT)));
  }

  private List<Lines> beside(double room, double mostBoat) {
    Lines boat = fit(face.boat(), BOAT, room * mostBoat, LARGEST_BOAT);
    double rest = room - boat.width() - 2 * SheetPlan.PADDING;
    return List.of(boat, fit(face.what(), WHAT, rest, LARGEST_WHAT));
  }

  /** In one line, or several small ones. */
  private static Lines fit(String words, Hand hand, double width, double largest) {
    Lines one = new Fit(width, largest, Fit.SMALLEST, 1).fit(words, hand);
    return one.said() == Said.WHOLE
        ? one
        : new Fit(width, Fit.SMALLEST, Fit.SMALLEST, MOST_LINES).fit(words, hand);
  }
}
