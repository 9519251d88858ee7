package ribband.postcard;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import ribband.measure.Hours;
import ribband.measure.Saying;

/**
 * Where the hours went: a row a phase, each with a batten as long as its share of the longest.
 *
 * @param shares most first
 * @param named a row for each of the first, fitted once
 * @param width in units
 */
record ShareRows(List<Share> shares, List<ShareRow> named, double width) {
  private static final int MOST = 4;

  /** How many are made room for. */
  private static final int WANTED = 3;

  /** Less than a pixel, in units: what is said to fit does. */
  private static final double HAIR = 0.01;

  ShareRows {
    shares = List.copyOf(shares);
    named = List.copyOf(named);
  }

  static ShareRows of(List<Share> shares, double width) {
    return new ShareRows(
        shares,
        shares.stream().limit(MOST).map(share -> ShareRow.of(share, width)).toList(),
        width);
  }

  /** In units. */
  double wantedHeight() {
    return height(rows(WANTED));
  }

  /** Of the first, its name whole, in units. */
  double leastHeight() {
    return height(rows(1));
  }

  /** Draws as many as there is room for, on the foot of the place. */
  void draw(Draft draft, Box place) {
    List<ShareRow> rows = fitting(place.height() + HAIR);
    long longest = rows.stream().mapToLong(row -> row.share().seconds()).max().orElse(0);
    double bottom = place.bottom() - height(rows);
    for (ShareRow row : rows) {
      bottom += row.height();
      double part = longest == 0 ? 0 : (double) row.share().seconds() / longest;
      row.draw(draft, place.x(), bottom, part, row == rows.get(0) ? Pen.LONGEST : Pen.BATTEN);
    }
  }

  /** Names whole before many of them, but shortened before a second one is left out. */
  private List<ShareRow> fitting(double height) {
    return Stream.of(
            IntStream.iterate(MOST, most -> most > 1, most -> most - 1).mapToObj(this::rows),
            IntStream.iterate(WANTED, most -> most > 1, most -> most - 1)
                .mapToObj(this::rows)
                .map(this::shortened),
            Stream.of(rows(1)))
        .flatMap(rows -> rows)
        .filter(rows -> height(rows) <= height)
        .findFirst()
        .orElseGet(() -> cut(height));
  }

  /** The longest phase's name whole, the others each in one line. */
  private List<ShareRow> shortened(List<ShareRow> rows) {
    return IntStream.range(0, rows.size())
        .mapToObj(i -> i == 0 ? rows.get(i) : ShareRow.inOneLine(rows.get(i).share(), width))
        .toList();
  }

  private List<ShareRow> cut(double height) {
    return shares.stream()
        .limit(1)
        .flatMap(longest -> ShareRow.cut(longest, width, height).stream())
        .toList();
  }

  /** What does not fit stands summed in the last; where there is but one, it is the longest's. */
  private List<ShareRow> rows(int most) {
    if (shares.size() <= most) {
      return named;
    }
    int first = Math.max(1, most - 1);
    List<ShareRow> rows = new ArrayList<>(named.subList(0, first));
    if (most > 1) {
      rows.add(ShareRow.of(sum(shares.subList(first, shares.size())), width));
    }
    return rows;
  }

  private static Share sum(List<Share> rest) {
    long seconds = rest.stream().mapToLong(Share::seconds).sum();
    String title = "and " + Saying.count(rest.size()) + " more";
    return new Share(title, Saying.hours(new Hours(seconds)), seconds);
  }

  private static double height(List<ShareRow> rows) {
    return rows.stream().mapToDouble(ShareRow::height).sum();
  }
}
