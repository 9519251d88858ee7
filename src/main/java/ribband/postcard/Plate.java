package ribband.postcard;

import java.util.Optional;

/**
 * The right of the card: the picture as a print laid on station lines, or her lines drawn large.
 *
 * @param place from the top of the body to its foot, up to the border
 * @param print where the picture lies; none where there is none
 */
record Plate(Box place, Optional<Box> print) {
  private static final double MOST_PRINT = 560;
  private static final double NARROWEST = 240;
  private static final double LINES_WIDTH = 640;
  private static final double ABOVE_PRINT = 28;
  private static final double STATION = 46;
  private static final double LEAST_HULL = 110;

  static Plate of(Box body, Optional<Proportion> picture) {
    if (picture.isEmpty()) {
      return new Plate(right(body, LINES_WIDTH), Optional.empty());
    }
    double ratio = picture.get().widthByHeight();
    double height = Math.min(body.height() - 2 * ABOVE_PRINT, MOST_PRINT / ratio);
    double width = Math.max(1, height * ratio);
    height = Math.max(1, height);
    Box place = right(body, Math.max(NARROWEST, width + 2 * ABOVE_PRINT));
    double under = body.height() - height - 2 * ABOVE_PRINT;
    double top =
        under >= LEAST_HULL ? body.y() + ABOVE_PRINT : body.y() + (body.height() - height) / 2;
    double left = place.x() + (place.width() - width) / 2;
    return new Plate(place, Optional.of(new Box(left, top, width, height)));
  }

  private static Box right(Box body, double width) {
    return new Box(body.right() - width, body.y(), width, body.height());
  }

  void draw(Draft draft) {
    draft.draw(Drawn.down(place.x(), place.y(), place.bottom(), Pen.RULE));
    if (print.isEmpty()) {
      HullLines.PROFILE_AND_PLAN.draw(draft, place.within(ABOVE_PRINT));
      return;
    }
    double under = place.bottom() - print.get().bottom() - 2 * ABOVE_PRINT;
    if (under >= LEAST_HULL) {
      Box rest =
          new Box(
              place.x() + ABOVE_PRINT,
              print.get().bottom() + ABOVE_PRINT,
              place.width() - 2 * ABOVE_PRINT,
              under);
      HullLines.PROFILE.draw(draft, rest);
    } else {
      stations(draft);
    }
  }

  private void stations(Draft draft) {
    int gaps = Math.max(2, (int) Math.round(place.width() / STATION));
    for (int i = 1; i < gaps; i++) {
      double x = place.x() + place.width() * i / gaps;
      draft.draw(Drawn.down(x, place.y(), place.bottom(), Pen.RULE));
    }
    double water = place.y() + place.height() * 0.7;
    draft.draw(Drawn.across(place.x(), place.right(), water, Pen.WATERLINE));
  }
}
