package ribband.postcard;

/** The hours of the month: the figure, how it ranks, and where it went. */
record Story(Face face) {
  private static final Hand HOURS = Hand.of(Weight.LIGHT, Ink.INK);
  private static final Hand UNIT = Hand.of(Weight.REGULAR, Ink.INK_2);
  private static final Hand RANK = Hand.of(Weight.REGULAR, Ink.INK);

  /** Of a figure, in ems. */
  private static final double FIGURE_HEIGHT = 0.72;

  private static final double LARGEST_FIGURE = 250;
  private static final double HUGE = 170;
  private static final double UNIT_SIZE = 44;
  private static final double RANK_SIZE = 34;
  private static final double GAP = 26;

  void draw(Draft draft, Box place) {
    Fit.Lines rank = new Fit(place.width(), RANK_SIZE, Fit.SMALLEST, 3).fit(face.rank(), RANK);
    double fixed = rank.height() + (rank.lines().isEmpty() ? 0 : GAP);
    ShareRows rows = new ShareRows(face.shares());
    double wanted = rows.height(ShareRows.WANTED) + GAP;
    double high = (place.height() - fixed - wanted) / FIGURE_HEIGHT;
    double size = figure(draft, place, Math.max(HUGE, Math.min(LARGEST_FIGURE, high)));
    double top = place.y() + FIGURE_HEIGHT * size + GAP * 0.7;
    draft.letter(rank, RANK, place.x(), top - 0.2 * rank.size());
    double rowsTop = top + fixed;
    rows.draw(
        draft, new Box(place.x(), rowsTop, place.width(), Math.max(0, place.bottom() - rowsTop)));
  }

  /** As large as fits beside its unit. */
  private double figure(Draft draft, Box place, double largest) {
    Fit.Lines unit = new Fit(place.width() / 2, UNIT_SIZE, Fit.SMALLEST, 1).fit(face.unit(), UNIT);
    double gap = unit.lines().isEmpty() ? 0 : 14;
    double unitWidth = unit.lines().stream().mapToDouble(UNIT::width).sum() * unit.size() + gap;
    Fit.Lines figure =
        new Fit(place.width() - unitWidth, largest, Fit.SMALLEST, 1).fit(face.hours(), HOURS);
    double baseline = place.y() + FIGURE_HEIGHT * figure.size();
    double x = place.x();
    for (String line : figure.lines()) {
      draft.letter(line, HOURS, figure.size(), x, baseline);
      x += HOURS.width(line) * figure.size() + gap;
    }
    for (String line : unit.lines()) {
      draft.letter(line, UNIT, unit.size(), x, baseline);
    }
    return figure.size();
  }
}
