package ribband.preview;

import java.util.List;
import java.util.Objects;
import ribband.problem.OneLine;
import ribband.problem.Problem;

/**
 * One thing that the reader of a page is told of.
 *
 * @param kind how it is marked: {@code error}, {@code warning} or {@code trouble}
 * @param place in the journal, as {@code file:line:column}; empty where it is none of the journal's
 * @param sentence one line
 */
public record Trouble(String kind, String place, String sentence) {
  public Trouble {
    Objects.requireNonNull(kind);
    place = OneLine.of(place);
    sentence = OneLine.of(sentence);
  }

  /** A problem of the journal. */
  public static Trouble of(Problem problem) {
    return new Trouble(
        problem.severity().toString(), problem.place().toString(), problem.sentence());
  }

  /** What the disk or the machine holds against a publish. */
  public static Trouble outside(String sentence) {
    return new Trouble("trouble", "", sentence);
  }

  boolean isWarning() {
    return kind.equals("warning");
  }

  /** Whether pages may be older than the journal because of one of these. */
  static boolean holdUp(List<Trouble> troubles) {
    return troubles.stream().anyMatch(trouble -> !trouble.isWarning());
  }
}
