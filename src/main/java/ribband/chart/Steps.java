package ribband.chart;

import java.util.ArrayList;
import java.util.IntSummaryStatistics;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * A line that is level from one change to the next, and upright where it changes.
 *
 * @param x where it begins
 * @param y likewise
 * @param corners where it changes, from left to right
 * @param endX where it ends, level
 */
public record Steps(int x, int y, List<Corner> corners, int endX) implements Course {
  /** From the last day to the line's end, so that a change on that day is seen. */
  static final int TAIL = 12;

  public Steps {
    corners = List.copyOf(corners);
  }

  /**
   * A change of height.
   *
   * @param turns how far it goes up and down beyond where it comes from and where it stays; mostly
   *     none
   * @param y where it stays
   */
  public record Corner(int x, List<Integer> turns, int y) {
    public Corner {
      turns = List.copyOf(turns);
    }
  }

  /**
   * All that happens on one day.
   *
   * @param heights one after another, at least one; the last one stays
   */
  record Stop(int x, List<Integer> heights) {
    Stop {
      heights = List.copyOf(heights);
    }

    static Stop at(int x, Integer... heights) {
      return new Stop(x, List.of(heights));
    }
  }

  /**
   * The line through the days' heights, with one corner for each place, however many days fall on
   * it.
   *
   * @param stops from left to right
   */
  static Steps through(int x, int y, List<Stop> stops, int endX) {
    List<Corner> corners = new ArrayList<>();
    int at = y;
    for (int i = 0; i < stops.size(); ) {
      int place = stops.get(i).x;
      List<Integer> heights = new ArrayList<>();
      for (; i < stops.size() && stops.get(i).x == place; i++) {
        heights.addAll(stops.get(i).heights);
      }
      Corner corner = corner(place, at, heights);
      corners.add(corner);
      at = corner.y;
    }
    return new Steps(x, y, corners, endX);
  }

  private static Corner corner(int x, int from, List<Integer> heights) {
    int to = heights.get(heights.size() - 1);
    IntSummaryStatistics all = heights.stream().mapToInt(h -> h).summaryStatistics();
    List<Integer> turns =
        IntStream.of(all.getMin(), all.getMax())
            .filter(turn -> turn < Math.min(from, to) || turn > Math.max(from, to))
            .boxed()
            .toList();
    return new Corner(x, turns, to);
  }

  @Override
  public boolean isFair() {
    return false;
  }

  @Override
  public int startX() {
    return x;
  }

  int endY() {
    return corners.isEmpty() ? y : corners.get(corners.size() - 1).y;
  }

  /** Where it stays after all that happens there. */
  @Override
  public int heightAt(int at) {
    return corners.stream()
        .filter(corner -> corner.x <= at)
        .map(Corner::y)
        .reduce(y, (earlier, later) -> later);
  }

  /** What it takes up, level for level and corner for corner. */
  List<Box> boxes() {
    List<Box> boxes = new ArrayList<>();
    int fromX = x;
    int fromY = y;
    for (Corner corner : corners) {
      boxes.add(new Box(fromX, fromY, Math.max(fromX, corner.x), fromY));
      IntSummaryStatistics upright =
          Stream.concat(Stream.of(fromY, corner.y), corner.turns.stream())
              .mapToInt(h -> h)
              .summaryStatistics();
      boxes.add(new Box(corner.x, upright.getMin(), corner.x, upright.getMax()));
      fromX = corner.x;
      fromY = corner.y;
    }
    boxes.add(new Box(fromX, fromY, Math.max(fromX, endX), fromY));
    return boxes;
  }
}
