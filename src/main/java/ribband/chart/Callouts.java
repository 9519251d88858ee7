package ribband.chart;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * Lays labels in rows above a plot so that no two overlap and no leader runs through a text, as far
 * as the sheet's width allows.
 */
final class Callouts {
  private static final int GAP = 10;
  private static final int REACH = 4;

  /** A thing to name: where its leader stands, and the text. */
  record Flag(int x, String text) {}

  /** A flag with its place: row 0 is next to the plot; the text spans start to end. */
  record Placed(Flag flag, int row, int start, int end, Label.Anchor anchor, String text) {
    boolean covers(int x) {
      return x > start - REACH && x < end + REACH;
    }

    boolean overlaps(Placed other) {
      return start < other.end + GAP && other.start < end + GAP;
    }

    Callout callout(int foot, int footX, int rows) {
      int x = anchor == Label.Anchor.START ? start : end;
      int base = (rows - row) * Lettering.LINE - 4;
      return new Callout(flag.x, foot, footX, new Label(x, base, anchor, text));
    }

    Placed inRow(int row) {
      return new Placed(flag, row, start, end, anchor, text);
    }
  }

  private Callouts() {}

  /** The flags with their rows, in the order given. */
  static List<Placed> lay(List<Flag> flags, int width) {
    List<Placed> waiting =
        new ArrayList<>(flags.stream().map(flag -> spread(flag, width)).toList());
    List<Placed> laid = new ArrayList<>();
    while (!waiting.isEmpty()) {
      Placed next =
          waiting.stream()
              .min(
                  Comparator.<Placed>comparingLong(flag -> crossed(flag, waiting))
                      .thenComparing(flag -> -flag.flag.x))
              .orElseThrow();
      waiting.remove(next);
      laid.add(next.inRow(lowestFreeRow(next, laid)));
    }
    laid.sort(Comparator.comparingInt(placed -> flags.indexOf(placed.flag)));
    return laid;
  }

  static int rows(List<Placed> laid) {
    return laid.stream().mapToInt(placed -> placed.row + 1).max().orElse(0);
  }

  private static Placed spread(Flag flag, int width) {
    String text = Lettering.fit(flag.text, width);
    int room = Lettering.width(text);
    int x = flag.x + REACH;
    if (x + room <= width) {
      return new Placed(flag, 0, x, x + room, Label.Anchor.START, text);
    }
    int end = flag.x - REACH;
    if (end - room >= 0) {
      return new Placed(flag, 0, end - room, end, Label.Anchor.END, text);
    }
    return new Placed(flag, 0, width - room, width, Label.Anchor.END, text);
  }

  private static long crossed(Placed flag, List<Placed> waiting) {
    return waiting.stream()
        .filter(other -> other != flag && flag.covers(other.flag.x) && !other.covers(flag.flag.x))
        .count();
  }

  private static int lowestFreeRow(Placed flag, List<Placed> laid) {
    int row =
        laid.stream()
            .filter(other -> flag.covers(other.flag.x))
            .mapToInt(other -> other.row + 1)
            .max()
            .orElse(0);
    while (taken(flag, row, laid)) {
      row++;
    }
    return row;
  }

  private static boolean taken(Placed flag, int row, List<Placed> laid) {
    return laid.stream().anyMatch(other -> other.row == row && other.overlaps(flag));
  }
}
