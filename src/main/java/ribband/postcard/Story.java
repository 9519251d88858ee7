package ribband.postcard;

/** The hours of the month: the figure, how it ranks, and where it went. */
record Story(Face face) {
  private static final Hand HOURS = Hand.of(Weight.LIGHT, Ink.INK);
  private static final Hand UNIT = Hand.of(Weight.REGULAR, Ink.INK_2);
  private static final Hand RANK = Hand.of(Weight.REGULAR, Ink.INK);

  /** Of figures, in ems. */
  private static final double FIGURE_HEIGHT = 0.71;

  private static final double HIGHEST_FIGURE = 185;
  private static final double HUGE = 107;

  /** Where a phase's name needs the room. */
  private static final double LOWEST_FIGURE = 50;

  private static final double UNIT_SIZE = 44;
  private static final double RANK_SIZE = 33;
  private static final int RANK_LINES = 3;
  private static final double GAP = 22;
  private static final double ROWS_GAP = 16;
  private static final double UNIT_GAP = 14;

  void draw(Draft draft, Box place) {
    ShareRows rows = ShareRows.of(face.shares(), place.width());
    Lines rank = rank(place, place.height() - GAP - ROWS_GAP - rows.leastHeight());
    double room = place.height() - GAP - rank.height() - ROWS_GAP;
    double top = figure(draft, place, high(room, rows)) + GAP;
    draft.letter(rank, place.x(), top + rank.firstBaseline());
    double rowsTop = top + rank.height() + ROWS_GAP;
    rows.draw(draft, new Box(place.x(), rowsTop, place.width(), place.bottom() - rowsTop));
  }

  /** Higher than need be where the rows leave room, lower only for the sake of the first one. */
  private static double high(double room, ShareRows rows) {
    double high = Math.min(HIGHEST_FIGURE, room - rows.wantedHeight());
    return high >= HUGE ? high : Math.min(HUGE, Math.max(LOWEST_FIGURE, room - rows.leastHeight()));
  }

  /** As large as leaves room for the lowest figure, and in as many lines. */
  private Lines rank(Box place, double room) {
    Lines large = rank(place, RANK_SIZE, RANK_LINES);
    if (large.height() <= room - LOWEST_FIGURE) {
      return large;
    }
    int most = RANK_LINES;
    Lines small = rank(place, Fit.SMALLEST, most);
    while (most > 1 && small.height() > place.height() - HUGE - GAP) {
      small = rank(place, Fit.SMALLEST, --most);
    }
    return small;
  }

  private Lines rank(Box place, double largest, int mostLines) {
    return new Fit(place.width(), largest, Fit.SMALLEST, mostLines).fit(face.rank(), RANK);
  }

  /**
   * As large as fits into a height, and beside its unit.
   *
   * @return its foot
   */
  private double figure(Draft draft, Box place, double high) {
    Lines unit = new Fit(place.width() / 2, UNIT_SIZE, Fit.SMALLEST, 1).fit(face.unit(), UNIT);
    double beside = unit.isEmpty() ? 0 : unit.width() + UNIT_GAP;
    double above = Lettering.of(PlainWords.of(face.hours()), HOURS).reachAbove();
    double largest = Math.max(Fit.SMALLEST, high / Math.max(FIGURE_HEIGHT, above));
    Lines figure =
        new Fit(place.width() - beside, largest, Fit.SMALLEST, 1).fit(face.hours(), HOURS);
    double height = Math.max(figure.reachAbove(), unit.reachAbove());
    double baseline = place.y() + Math.max(FIGURE_HEIGHT * figure.size(), height);
    double left = place.x() - figure.leftBearing();
    draft.letter(figure, left, baseline);
    draft.letter(unit, left + figure.width() + UNIT_GAP, baseline);
    return baseline + Math.max(0, figure.reachBelow() - GAP);
  }
}
