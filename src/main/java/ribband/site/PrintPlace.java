package ribband.site;

import java.util.Locale;
import ribband.photo.PictureFacts;

/**
 * Where a picture hangs on a page, and how wide it is there; the style sheet hangs it so. Prints of
 * a gallery are of one height, each as wide as its shape asks for; none hangs larger than it is.
 */
enum PrintPlace {
  /** One that opens a page. */
  LEAD {
    @Override
    int width(PictureFacts facts) {
      return Shape.of(facts) == Shape.TALL ? wide(facts, 500) : COLUMN;
    }

    @Override
    String sizes(PictureFacts facts) {
      return above(60, width(facts)) + FULL;
    }
  },

  /** An entry's first, at the width of the page's column. */
  PLATE {
    @Override
    int width(PictureFacts facts) {
      return Shape.of(facts) == Shape.TALL ? wide(facts, 612) : COLUMN;
    }

    @Override
    String sizes(PictureFacts facts) {
      return above(Shape.of(facts) == Shape.TALL ? 40 : 60, width(facts)) + FULL;
    }
  },

  /** One of an entry's others. */
  LARGE {
    @Override
    int width(PictureFacts facts) {
      return Shape.of(facts) == Shape.LONG ? COLUMN : wide(facts, 404);
    }

    @Override
    String sizes(PictureFacts facts) {
      String narrower = Shape.of(facts) == Shape.LONG ? "" : above(40, wide(facts, 259));
      return above(60, width(facts)) + narrower + FULL;
    }
  },

  /** One of many. */
  GALLERY {
    @Override
    int width(PictureFacts facts) {
      return Shape.of(facts) == Shape.LONG ? COLUMN : wide(facts, 217);
    }

    @Override
    String sizes(PictureFacts facts) {
      String narrower = Shape.of(facts) == Shape.LONG ? "" : above(40, wide(facts, 166));
      return above(60, width(facts)) + narrower + FULL;
    }
  },

  /** Beside a notice of its entry. */
  NOTICE {
    @Override
    int width(PictureFacts facts) {
      return Shape.of(facts) == Shape.TALL ? 136 : 204;
    }

    @Override
    String sizes(PictureFacts facts) {
      return above(40, width(facts)) + (Shape.of(facts) == Shape.TALL ? "66vw" : FULL);
    }
  };

  private static final String FULL = "calc(100vw - 2.1rem)";

  /** The width of a page's column, px. */
  private static final int COLUMN = 714;

  /** As wide as a picture gets where a page is too narrow for two columns, px. */
  private static final int PHONE = 605;

  /** How wide it hangs where there is room, px. */
  abstract int width(PictureFacts facts);

  /** The {@code sizes} of its image. */
  abstract String sizes(PictureFacts facts);

  /** Its shape, and whether it is smaller than its place is somewhere. */
  String classes(PictureFacts facts) {
    return Shape.of(facts).name().toLowerCase(Locale.ROOT)
        + (facts.width() < width(facts) ? " little" : "")
        + (facts.width() < PHONE ? " modest" : "");
  }

  /** Width against height. */
  enum Shape {
    TALL,
    SQUARE,
    WIDE,
    /** Wider than two squares: a row of its own. */
    LONG;

    static Shape of(PictureFacts facts) {
      int difference = facts.width() - facts.height();
      if (Math.abs(difference) * 10L <= facts.width()) {
        return SQUARE;
      }
      if (difference < 0) {
        return TALL;
      }
      return facts.width() * 10L > facts.height() * 18L ? LONG : WIDE;
    }
  }

  private static String above(int rem, int width) {
    return "(min-width: " + rem + "rem) " + width + "px, ";
  }

  /** How wide it is at a height, px. */
  private static int wide(PictureFacts facts, int height) {
    return (int) Math.max(1, (long) height * facts.width() / facts.height());
  }
}
