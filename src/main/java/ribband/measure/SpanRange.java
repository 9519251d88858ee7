package ribband.measure;

/**
 * From one elapsed time to another: {@code 3 h to 24 h}.
 *
 * @param to not shorter than from
 */
public record SpanRange(Span from, Span to) {
  private static final String WRITE = "write 3 h to 24 h";

  public SpanRange {
    if (to.compareTo(from) < 0) {
      throw new IllegalArgumentException("range runs backwards");
    }
  }

  public static SpanRange read(String text) throws Unreadable {
    String[] ends = text.strip().split("\\s+to\\s+", -1);
    if (ends.length != 2) {
      throw new Unreadable("is not a range of times", WRITE);
    }
    Span from = end(ends[0]);
    Span to = end(ends[1]);
    if (to.compareTo(from) < 0) {
      throw new Unreadable("ends before it begins", "write the shorter time first, as 3 h to 24 h");
    }
    return new SpanRange(from, to);
  }

  private static Span end(String text) throws Unreadable {
    try {
      return Span.read(text);
    } catch (Unreadable e) {
      throw new Unreadable("is not a range of times", WRITE);
    }
  }
}
