package ribband.jobs;

import java.util.List;
import java.util.Optional;

/**
 * A job still to be done.
 *
 * @param waitsFor goals not yet reached; empty where it is ready or held
 * @param hold what holds it up though it waits for nothing
 * @param frees jobs that are ready once this one is done
 * @param helps jobs that wait for this one and for more
 */
public record OpenJob(
    NotedJob job,
    List<Goal> waitsFor,
    Optional<Hold> hold,
    List<NotedJob> frees,
    List<NotedJob> helps) {
  public OpenJob {
    waitsFor = List.copyOf(waitsFor);
    frees = List.copyOf(frees);
    helps = List.copyOf(helps);
  }

  /** How far it is. */
  public enum State {
    READY,
    HELD,
    WAITING
  }

  public State state() {
    if (!waitsFor.isEmpty()) {
      return State.WAITING;
    }
    return hold.isPresent() ? State.HELD : State.READY;
  }
}
