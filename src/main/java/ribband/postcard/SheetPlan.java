package ribband.postcard;

import java.util.Optional;

/**
 * Lays a card out as a shop drawing: a border, along the top what she is and when, along the foot
 * what the month came to, between them the hours at the left and the picture, or her lines, at the
 * right.
 */
final class SheetPlan {
  /** From the card's edge to the border, in units. */
  static final double BORDER = 26;

  /** From the border to words, in units. */
  static final double PADDING = 30;

  private static final double STORY_PADDING = 24;
  private static final double OUTER_BORDER = 17;

  private SheetPlan() {}

  static Sheet of(Face face, Optional<Proportion> picture, Shape shape) {
    Draft draft = new Draft();
    Box sheet = shape.sheet();
    Box inner = sheet.within(BORDER);
    draft.draw(Drawn.frame(sheet.within(OUTER_BORDER), Pen.RULE));

    double top = new Heading(face).draw(draft, inner);
    double foot = new Footing(face).draw(draft, inner);
    Box body = new Box(inner.x(), top, inner.width(), foot - top);
    Plate plate = Plate.of(body, picture);
    plate.draw(draft);
    Box story =
        new Box(
            body.x() + PADDING,
            top + STORY_PADDING,
            plate.place().x() - body.x() - 2 * PADDING,
            body.height() - 2 * STORY_PADDING);
    new Story(face).draw(draft, story);
    draft.draw(Drawn.frame(inner, Pen.BORDER));
    return draft.done(plate.print());
  }
}
