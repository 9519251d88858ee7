package ribband.postcard;

import java.util.ArrayList;
import java.util.List;
import ribband.measure.Hours;
import ribband.measure.Saying;

/** Where the hours went: a row a phase, each with a batten as long as its share of the longest. */
record ShareRows(List<Share> shares) {
  private static final int MOST = 4;

  /** How many are made room for. */
  private static final int WANTED = 3;

  private static final double PITCH = 46;
  private static final double SIZE = 30;
  private static final double BATTEN = 2.5;
  private static final double BASELINE = 15;
  private static final double GAP = 24;
  private static final Hand TITLE = Hand.of(Weight.REGULAR, Ink.INK);
  private static final Hand HOURS = new Hand(Weight.BOLD, Figures.TABULAR, Ink.INK);

  ShareRows {
    shares = List.copyOf(shares);
  }

  double wantedHeight() {
    return Math.min(WANTED, shares.size()) * PITCH;
  }

  /** Draws as many as there is room for, on the foot of the place. */
  void draw(Draft draft, Box place) {
    List<Share> rows = rows((int) (place.height() / PITCH));
    long longest = rows.stream().mapToLong(Share::seconds).max().orElse(0);
    double bottom = place.bottom() - (rows.size() - 1) * PITCH;
    for (Share row : rows) {
      letter(draft, place, row, bottom - BASELINE);
      double y = bottom - BATTEN;
      double part = longest == 0 ? 0 : (double) row.seconds() / longest;
      Pen pen = row == rows.get(0) ? Pen.LONGEST : Pen.BATTEN;
      draft.draw(Drawn.across(place.x(), place.right(), y, Pen.RULE));
      draft.draw(Drawn.across(place.x(), place.x() + place.width() * part, y, pen));
      bottom += PITCH;
    }
  }

  /** What does not fit stands summed in the last; where there is but one, it is the longest's. */
  private List<Share> rows(int room) {
    int most = Math.min(MOST, room);
    if (shares.size() <= most || most <= 1) {
      return shares.subList(0, Math.min(Math.max(0, most), shares.size()));
    }
    List<Share> rows = new ArrayList<>(shares.subList(0, most - 1));
    List<Share> rest = shares.subList(most - 1, shares.size());
    long seconds = rest.stream().mapToLong(Share::seconds).sum();
    String title = "and " + Saying.count(rest.size()) + " more";
    rows.add(new Share(title, Saying.hours(new Hours(seconds)), seconds));
    return rows;
  }

  private static void letter(Draft draft, Box place, Share row, double baseline) {
    Lines hours = new Fit(place.width() / 2, SIZE, Fit.SMALLEST, 1).fit(row.hours(), HOURS);
    draft.letter(hours, place.right() - hours.width(), baseline);
    double room = place.width() - hours.width() - GAP;
    draft.letter(new Fit(room, SIZE, Fit.SMALLEST, 1).fit(row.title(), TITLE), place.x(), baseline);
  }
}
