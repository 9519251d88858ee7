package ribband.chart;

import java.util.ArrayList;
import java.util.List;

/**
 * Lays the dates of a fan's ends in rows above it: all on one side of their leaders, in an order in
 * which no leader runs through a date.
 */
final class FanEnds {
  private static final int REACH = 4;

  private FanEnds() {}

  /**
   * The flags with their rows.
   *
   * @param flags from left to right
   */
  static List<Callouts.Placed> lay(List<Callouts.Flag> flags, int width) {
    if (flags.stream().allMatch(flag -> flag.x() - REACH >= room(flag))) {
      return rows(flags, Label.Anchor.END);
    }
    if (flags.stream().allMatch(flag -> flag.x() + REACH + room(flag) <= width)) {
      return rows(flags, Label.Anchor.START);
    }
    return Callouts.lay(flags, width);
  }

  private static int room(Callouts.Flag flag) {
    return Lettering.width(flag.text());
  }

  /** Dates left of their leaders rise to the right, dates right of them fall. */
  private static List<Callouts.Placed> rows(List<Callouts.Flag> flags, Label.Anchor anchor) {
    List<Callouts.Placed> placed = new ArrayList<>();
    for (int i = 0; i < flags.size(); i++) {
      Callouts.Flag flag = flags.get(i);
      boolean isLeft = anchor == Label.Anchor.END;
      int row = isLeft ? i : flags.size() - 1 - i;
      int start = isLeft ? flag.x() - REACH - room(flag) : flag.x() + REACH;
      placed.add(new Callouts.Placed(flag, row, start, start + room(flag), anchor, flag.text()));
    }
    return placed;
  }
}
