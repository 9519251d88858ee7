package ribband.postcard;

/** The hours of the month: the figure, how it ranks, and where it went. */
record Story(Face face) {
  private static final Hand HOURS = Hand.of(Weight.LIGHT, Ink.INK);
  private static final Hand UNIT = Hand.of(Weight.REGULAR, Ink.INK_2);
  private static final Hand RANK = Hand.of(Weight.REGULAR, Ink.INK);

  /** Of a figure, in ems. */
  private static final double FIGURE_HEIGHT = 0.71;

  private static final double LARGEST_FIGURE = 260;
  private static final double HUGE = 150;
  private static final double UNIT_SIZE = 44;
  private static final double RANK_SIZE = 33;
  private static final int RANK_LINES = 3;
  private static final double GAP = 22;
  private static final double ROWS_GAP = 16;
  private static final double UNIT_GAP = 14;

  void draw(Draft draft, Box place) {
    Lines rank = new Fit(place.width(), RANK_SIZE, Fit.SMALLEST, RANK_LINES).fit(face.rank(), RANK);
    ShareRows rows = new ShareRows(face.shares());
    double under = GAP + rank.height() + ROWS_GAP + rows.wantedHeight();
    double room = (place.height() - under) / FIGURE_HEIGHT;
    double figure = figure(draft, place, Math.max(HUGE, Math.min(LARGEST_FIGURE, room)));
    double top = place.y() + FIGURE_HEIGHT * figure + GAP;
    draft.letter(rank, place.x(), top + rank.firstBaseline());
    double rowsTop = top + rank.height() + ROWS_GAP;
    rows.draw(draft, new Box(place.x(), rowsTop, place.width(), place.bottom() - rowsTop));
  }

  /**
   * As large as fits beside its unit.
   *
   * @return its size
   */
  private double figure(Draft draft, Box place, double largest) {
    Lines unit = new Fit(place.width() / 2, UNIT_SIZE, Fit.SMALLEST, 1).fit(face.unit(), UNIT);
    double beside = unit.isEmpty() ? 0 : unit.width() + UNIT_GAP;
    Lines figure =
        new Fit(place.width() - beside, largest, Fit.SMALLEST, 1).fit(face.hours(), HOURS);
    double baseline = place.y() + FIGURE_HEIGHT * figure.size();
    double left = place.x() - figure.leftBearing();
    draft.letter(figure, left, baseline);
    draft.letter(unit, left + figure.width() + UNIT_GAP, baseline);
    return figure.size();
  }
}
