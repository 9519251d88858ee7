package ribband.chart;

import java.util.ArrayList;
import java.util.List;

/**
 * A span as a line of its length with its name on it.
 *
 * @param start where it begins
 * @param end where it ends, not before the start
 * @param y of the line
 * @param stations where it is ticked
 * @param name above the line
 */
public record SpanLine(int start, int end, int y, List<Integer> stations, Label name) {
  /** From row to row. */
  static final int PITCH = 32;

  private static final int APART = 18;
  private static final int NAME = 6;

  public SpanLine {
    stations = List.copyOf(stations);
  }

  /** The lines in as few rows as hold them, those outside the dates left out. */
  static List<SpanLine> lay(List<Span> spans, Days days, int top, int width) {
    List<SpanLine> lines = new ArrayList<>();
    for (Span span : spans) {
      if (!span.from().isAfter(days.to()) && !span.to().isBefore(days.from())) {
        SpanLine line = line(span, days, top + PITCH, width);
        while (line.runsInto(lines)) {
          line = line.lower();
        }
        lines.add(line);
      }
    }
    return lines;
  }

  /** How much height they take up. */
  static int height(List<SpanLine> lines, int top) {
    return lines.stream().mapToInt(line -> line.y + 8 - top).max().orElse(0);
  }

  private static SpanLine line(Span span, Days days, int y, int width) {
    int start = days.at(days.from().isAfter(span.from()) ? days.from() : span.from());
    int end = days.at(days.to().isBefore(span.to()) ? days.to() : span.to());
    String text = Lettering.fit(span.name(), width);
    int room = Lettering.width(text);
    Label name =
        start + room <= width
            ? new Label(start, y - NAME, Label.Anchor.START, text)
            : new Label(Math.max(end, room), y - NAME, Label.Anchor.END, text);
    return new SpanLine(
        start, end, y, span.nights().stream().map(days::at).distinct().toList(), name);
  }

  private boolean runsInto(List<SpanLine> lines) {
    return lines.stream()
        .anyMatch(
            line ->
                line.y == y
                    && line.leftmost() < rightmost() + APART
                    && leftmost() < line.rightmost() + APART);
  }

  private SpanLine lower() {
    Label lower = new Label(name.x(), name.y() + PITCH, name.anchor(), name.text());
    return new SpanLine(start, end, y + PITCH, stations, lower);
  }

  private int leftmost() {
    return Math.min(start, name.box().left());
  }

  private int rightmost() {
    return Math.max(end, name.box().right());
  }
}
