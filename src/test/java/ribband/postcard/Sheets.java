package ribband.postcard;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;

/** What holds for every sheet, whatever stands on it. */
public final class Sheets {
  /** Less than a pixel. */
  private static final double HAIR = 0.01;

  private Sheets() {}

  /** Fails where words are cut, touch one another or the picture, or are too small for a phone. */
  static void hold(Sheet sheet, Shape shape, Object face) {
    Box border = shape.sheet().within(SheetPlan.BORDER);
    Box inner = border.within(2);
    List<Words> all = sheet.words();
    List<Box> boxes = all.stream().map(Words::box).toList();
    sheet.print().ifPresent(print -> assertTrue(holds(border, print), () -> print + " of " + face));
    for (int i = 0; i < all.size(); i++) {
      Words words = all.get(i);
      Box box = boxes.get(i);
      boolean inked = box.width() > 0;
      assertTrue(words.size() >= Fit.SMALLEST, () -> words + " of " + face);
      assertTrue(!inked || holds(inner, box), () -> words + " at " + box + " of " + face);
      sheet.print().ifPresent(print -> assertFalse(meet(print, box), () -> words + " of " + face));
      for (int j = 0; j < i; j++) {
        Words other = all.get(j);
        Box shrunk = boxes.get(j).within(HAIR);
        assertFalse(inked && meet(shrunk, box), () -> words + " on " + other + " of " + face);
      }
    }
  }

  /** The same, of a face with or without a picture of this many pixels. */
  public static void hold(Face face, int width, int height) {
    for (Shape shape : Shape.values()) {
      Optional<Proportion> picture =
          width > 0 ? Optional.of(new Proportion(width, height)) : Optional.empty();
      hold(SheetPlan.of(face, picture, shape), shape, face);
    }
  }

  static boolean holds(Box place, Box other) {
    return other.x() >= place.x()
        && other.y() >= place.y()
        && other.right() <= place.right()
        && other.bottom() <= place.bottom();
  }

  static boolean meet(Box one, Box other) {
    return one.x() < other.right()
        && other.x() < one.right()
        && one.y() < other.bottom()
        && other.y() < one.bottom();
  }
}
