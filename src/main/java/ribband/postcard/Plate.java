package ribband.postcard;

import java.util.Optional;

/**
 * The right of the card: the picture as a print laid on station lines, or her lines drawn large;
 * both where the picture is low.
 *
 * @param place from the top of the body to its foot, up to the border
 * @param print where the picture lies
 * @param hull where her lines are drawn
 */
record Plate(Box place, Optional<Box> print, Optional<Box> hull) {
  private static final double WIDEST_PRINT = 560;
  private static final double NARROWEST = 240;
  private static final double WITHOUT_PRINT = 640;
  private static final double MARGIN = 28;
  private static final double STATION = 46;
  private static final double LOWEST_HULL = 90;

  /** How far down the water stands on the stations, of their height. */
  private static final double WATER = 0.7;

  static Plate of(Box body, Optional<Proportion> picture) {
    if (picture.isEmpty()) {
      Box place = right(body, WITHOUT_PRINT);
      return new Plate(place, Optional.empty(), Optional.of(place.within(MARGIN)));
    }
    double ratio = picture.get().widthByHeight();
    double height = Math.max(1, Math.min(body.height() - 2 * MARGIN, WIDEST_PRINT / ratio));
    double width = Math.max(1, Math.min(WIDEST_PRINT, height * ratio));
    Box place = right(body, Math.max(NARROWEST, width + 2 * MARGIN));
    double left = place.x() + (place.width() - width) / 2;
    double rest = body.height() - height - 3 * MARGIN;
    if (rest < LOWEST_HULL) {
      double top = body.y() + (body.height() - height) / 2;
      return new Plate(place, Optional.of(new Box(left, top, width, height)), Optional.empty());
    }
    Box print = new Box(left, body.y() + MARGIN, width, height);
    Box hull = new Box(left, print.bottom() + MARGIN, width, rest);
    return new Plate(place, Optional.of(print), Optional.of(hull));
  }

  private static Box right(Box body, double width) {
    return new Box(body.right() - width, body.y(), width, body.height());
  }

  void draw(Draft draft) {
    draft.draw(Drawn.down(place.x(), place.y(), place.bottom(), Pen.RULE));
    HullLines lines = print.isEmpty() ? HullLines.PROFILE_AND_PLAN : HullLines.PROFILE;
    hull.ifPresentOrElse(box -> lines.draw(draft, box), () -> stations(draft));
  }

  private void stations(Draft draft) {
    long gaps = Math.round(place.width() / STATION);
    for (int i = 1; i < gaps; i++) {
      double x = place.x() + place.width() * i / gaps;
      draft.draw(Drawn.down(x, place.y(), place.bottom(), Pen.RULE));
    }
    double water = place.y() + place.height() * WATER;
    draft.draw(Drawn.across(place.x(), place.right(), water, Pen.WATERLINE));
  }
}
