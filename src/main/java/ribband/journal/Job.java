package ribband.journal;

import java.util.List;
import java.util.Optional;
import ribband.measure.Hours;
import ribband.problem.Place;

/**
 * A job noted for later.
 *
 * @param after ids of jobs, kinds of pieces or phases that come first
 * @param place of its id
 */
public record Job(
    String id,
    String what,
    List<Mark> after,
    Optional<String> phase,
    Optional<Hours> hours,
    Place place) {
  public Job {
    after = List.copyOf(after);
  }
}
