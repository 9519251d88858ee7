package ribband.postcard;

import java.util.ArrayList;
import java.util.List;

/** Where the hours went: a line a phase, each with a batten as long as its share of the most. */
record ShareRows(List<Share> shares) {
  /** How many are told where there is room for no more. */
  static final int WANTED = 3;

  private static final int MOST = 4;
  private static final double PITCH = 50;
  private static final double SIZE = 32;
  private static final Hand TITLE = Hand.of(Weight.REGULAR, Ink.INK);
  private static final Hand HOURS = new Hand(Weight.BOLD, Figures.TABULAR, Ink.INK);
  private static final double GAP = 24;

  ShareRows {
    shares = List.copyOf(shares);
  }

  double height(int most) {
    return Math.min(most, shares.size()) * PITCH;
  }

  /** Draws as many as there is room for, on the foot of the place. */
  void draw(Draft draft, Box place) {
    int rows = Math.min(Math.min(MOST, shares.size()), (int) (place.height() / PITCH));
    if (rows == 0) {
      return;
    }
    List<Share> told = new ArrayList<>(shares.subList(0, rows));
    int more = shares.size() - rows;
    if (more > 0) {
      told.set(rows - 1, new Share("and " + (more + 1) + " more", "", 0));
    }
    long longest = Math.max(1, shares.get(0).seconds());
    double bottom = place.bottom() - (rows - 1) * PITCH;
    boolean first = true;
    for (Share share : told) {
      row(draft, place, share, bottom, (double) share.seconds() / longest, first);
      bottom += PITCH;
      first = false;
    }
  }

  private static void row(
      Draft draft, Box place, Share share, double bottom, double part, boolean first) {
    double baseline = bottom - 15;
    Fit.Lines hours = new Fit(place.width() / 2, SIZE, Fit.SMALLEST, 1).fit(share.hours(), HOURS);
    double hoursWidth = 0;
    for (String line : hours.lines()) {
      draft.letterBefore(line, HOURS, hours.size(), place.right(), baseline);
      hoursWidth = HOURS.width(line) * hours.size() + GAP;
    }
    Fit.Lines title =
        new Fit(place.width() - hoursWidth, SIZE, Fit.SMALLEST, 1).fit(share.title(), TITLE);
    for (String line : title.lines()) {
      draft.letter(line, TITLE, title.size(), place.x(), baseline);
    }
    double y = bottom - 2.5;
    draft.draw(Drawn.line(place.x(), y, place.right(), y, Pen.RULE));
    draft.draw(
        Drawn.line(
            place.x(), y, place.x() + place.width() * part, y, first ? Pen.LONGEST : Pen.BATTEN));
  }
}
