package ribband.jobs;

import java.util.Comparator;
import ribband.measure.Name;

/**
 * Something that a job can wait for.
 *
 * @param name as the project or the job's first note spells it
 */
public record Goal(Kind kind, String name) implements Comparable<Goal> {
  private static final Comparator<Goal> ORDER =
      Comparator.comparing(Goal::fold).thenComparing(Goal::kind);

  /** What kind of thing it is. */
  public enum Kind {
    JOB("job"),
    PIECES("pieces"),
    PHASE("phase"),
    /** A job that readers are not told of. */
    UNTOLD("untold");

    private final String word;

    Kind(String word) {
      this.word = word;
    }

    /** As data files have it. */
    public String word() {
      return word;
    }
  }

  /** As names are compared. */
  public String fold() {
    return Name.fold(name);
  }

  @Override
  public int compareTo(Goal other) {
    return ORDER.compare(this, other);
  }
}
