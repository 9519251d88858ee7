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
    int lastWord = all.size() - 1;
    while (lastWord >= 0 && !all.get(lastWord).isWord()) {
      lastWord--;
    }
    int at = 0;
    int free = 0;
    while (at < all.size()) {
      int words = at;
      while (words < all.size() && !all.get(words).isWord()) {
        words++;
      }
      int behind = words;
      while (behind < all.size() && all.get(behind).isWord()) {
        behind++;
      }
      if (words == behind) {
        break;
      }
      List<Lexeme> before = all.subList(at, words);
      boolean last = behind > lastWord;
      int end = last ? line.length() : endOf(line, all.get(behind));
      int start = segments.isEmpty() ? 0 : Math.max(free, startOf(before));
      segments.add(new Segment(all.subList(words, behind), before, start, end));
      free = end;
      at = last ? all.size() : behind;
    }
    return segments;
  }

  /** Behind a comma or a stop {@code then} belongs to the sentence that it begins. */
  private static int startOf(List<Lexeme> before) {
    boolean hard = before.stream().anyMatch(b -> b.mark() != Mark.AND && b.mark() != Mark.THEN);
    return before.stream()
        .filter(b -> hard && b.mark() == Mark.THEN)
        .mapToInt(Lexeme::start)
        .findFirst()
        .orElse(before.get(before.size() - 1).end());
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
