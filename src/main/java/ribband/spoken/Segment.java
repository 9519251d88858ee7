package ribband.spoken;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import ribband.spoken.Lexeme.Mark;

/**
 * The words between two places where the line may be parted.
 *
 * @param words at least one
 * @param before all that stands between it and the segment before
 * @param start where its text begins in the line, what stands around its words included
 * @param end just behind its text, the stop of its sentence included
 */
record Segment(List<Lexeme> words, List<Lexeme> before, int start, int end) {
  private static final String ENDING = ".!?…\"'”’»)]}*_";

  /** How a segment hangs together with the one before. */
  enum Join {
    /** By {@code and}, {@code then} or {@code plus} alone. */
    SOFT,
    /** By a comma or a stop. */
    HARD
  }

  Segment {
    words = List.copyOf(words);
    before = List.copyOf(before);
    Objects.checkFromToIndex(start, end, Integer.MAX_VALUE);
  }

  static List<Segment> of(String line, List<Lexeme> all) {
    List<Segment> segments = new ArrayList<>();
    List<Lexeme> words = new ArrayList<>();
    List<Lexeme> before = new ArrayList<>();
    int start = 0;
    for (Lexeme next : all) {
      if (next.isWord()) {
        words.add(next);
        continue;
      }
      if (!words.isEmpty()) {
        segments.add(new Segment(words, before, start, endOf(line, next)));
        words = new ArrayList<>();
        before = new ArrayList<>();
      }
      before.add(next);
      start = Math.max(next.end(), segments.isEmpty() ? 0 : last(segments).end());
    }
    if (!words.isEmpty()) {
      segments.add(new Segment(words, before, start, line.length()));
    }
    return segments;
  }

  private static Segment last(List<Segment> segments) {
    return segments.get(segments.size() - 1);
  }

  private static int endOf(String line, Lexeme separator) {
    int end = separator.start();
    if (separator.mark() == Mark.STOP) {
      while (end < line.length() && ENDING.indexOf(line.charAt(end)) >= 0) {
        end++;
      }
    }
    return end;
  }

  Join join() {
    return before.stream().allMatch(b -> b.mark() == Mark.AND || b.mark() == Mark.THEN)
        ? Join.SOFT
        : Join.HARD;
  }

  /** Whether one thing may be said over what stands before it. */
  boolean maybeGoesOn() {
    return before.stream().allMatch(b -> b.mark() == Mark.AND || b.mark() == Mark.COMMA);
  }

  /** Its words after what stands before it, a comma before {@code and} being one with it. */
  List<Lexeme> continued() {
    List<Lexeme> continued = new ArrayList<>();
    continued.add(before.get(0));
    continued.addAll(words);
    return continued;
  }
}
