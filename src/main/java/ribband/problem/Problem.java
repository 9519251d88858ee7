package ribband.problem;

import java.util.Comparator;
import java.util.Objects;

/**
 * One thing wrong in a journal, told on one line.
 *
 * @param sentence what was found, then, after a semicolon, what to write instead; one line
 */
public record Problem(Severity severity, Place place, String sentence)
    implements Comparable<Problem> {
  private static final Comparator<Problem> ORDER =
      Comparator.comparing(Problem::place)
          .thenComparing(Problem::severity)
          .thenComparing(Problem::sentence);

  public Problem {
    Objects.requireNonNull(severity);
    Objects.requireNonNull(place);
    sentence = OneLine.of(sentence);
  }

  public static Problem error(Place place, String sentence) {
    return new Problem(Severity.ERROR, place, sentence);
  }

  public static Problem warning(Place place, String sentence) {
    return new Problem(Severity.WARNING, place, sentence);
  }

  public boolean isError() {
    return severity == Severity.ERROR;
  }

  @Override
  public int compareTo(Problem other) {
    return ORDER.compare(this, other);
  }

  /** {@code file:line:column: error: sentence}. */
  @Override
  public String toString() {
    return OneLine.of(place.toString()) + ": " + severity + ": " + sentence;
  }
}
