package ribband.site;

import ribband.photo.PictureFacts;

/**
 * Where a picture hangs on a page, and how wide it is there; the style sheet hangs it so. Prints of
 * a gallery are of one height, each as wide as its shape asks for.
 */
enum PrintPlace {
  /** One that opens a page. */
  LEAD {
    @Override
    String sizes(PictureFacts facts) {
      return switch (Shape.of(facts)) {
        case TALL -> above(60, wide(facts, 500)) + FULL;
        case SQUARE, WIDE, LONG -> above(60, 714) + FULL;
      };
    }
  },

  /** An entry's first, at the width of the page's column. */
  PLATE {
    @Override
    String sizes(PictureFacts facts) {
      return switch (Shape.of(facts)) {
        case TALL -> above(40, wide(facts, 612)) + FULL;
        case SQUARE, WIDE, LONG -> above(60, 714) + FULL;
      };
    }
  },

  /** One of an entry's others. */
  LARGE {
    @Override
    String sizes(PictureFacts facts) {
      return switch (Shape.of(facts)) {
        case LONG -> above(60, 714) + FULL;
        case TALL, SQUARE, WIDE -> above(60, wide(facts, 404)) + above(40, wide(facts, 259)) + FULL;
      };
    }
  },

  /** One of many. */
  GALLERY {
    @Override
    String sizes(PictureFacts facts) {
      return Shape.of(facts) == Shape.LONG
          ? above(60, 714) + FULL
          : above(60, wide(facts, 217)) + above(40, wide(facts, 166)) + wide(facts, 161) + "px";
    }
  },

  /** Beside a notice of its entry. */
  NOTICE {
    @Override
    String sizes(PictureFacts facts) {
      return Shape.of(facts) == Shape.TALL
          ? above(40, 136) + "66vw"
          : above(40, 204) + "calc(100vw - 2.1rem)";
    }
  };

  private static final String FULL = "calc(100vw - 2.1rem)";

  /** The {@code sizes} of its image. */
  abstract String sizes(PictureFacts facts);

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
