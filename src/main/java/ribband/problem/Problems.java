package ribband.problem;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;

/** Gathers the problems of one reading, so that all of them are told in one run; for one thread. */
public final class Problems {
  private final List<Problem> found = new ArrayList<>();

  public void error(Place place, String sentence) {
    found.add(Problem.error(place, sentence));
  }

  public void warning(Place place, String sentence) {
    found.add(Problem.warning(place, sentence));
  }

  public void addAll(Collection<Problem> others) {
    found.addAll(others);
  }

  /** How many are errors. */
  public long errors() {
    return found.stream().filter(Problem::isError).count();
  }

  /** All so far, in the order of their places, each once. */
  public List<Problem> sorted() {
    return found.stream().sorted().distinct().toList();
  }
}
