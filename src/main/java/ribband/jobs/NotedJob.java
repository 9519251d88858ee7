package ribband.jobs;

import java.util.List;
import java.util.Optional;
import ribband.journal.Entry;
import ribband.measure.Hours;

/**
 * A job as all its notes have it.
 *
 * @param what its id where no note says more
 * @param phase as the last note that names one
 * @param hours as the last note that gives them
 * @param after all that any note makes it wait for, each once, in the order written
 * @param noted where it was noted first
 * @param done where it was done; empty while it is open
 */
public record NotedJob(
    Goal goal,
    String what,
    Optional<String> phase,
    Optional<Hours> hours,
    List<Goal> after,
    Entry noted,
    Optional<Entry> done) {
  public NotedJob {
    after = List.copyOf(after);
  }

  public String id() {
    return goal.name();
  }
}
