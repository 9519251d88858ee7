package ribband.journal;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashSet;
import java.util.Iterator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import ribband.measure.Name;
import ribband.problem.OneLine;
import ribband.problem.Problems;

/**
 * Finds jobs that wait for each other in a circle. It walks from each job to what comes before it;
 * where the way leads back to itself stands the {@code after} that closes a circle. Without those
 * no circle is left.
 */
final class JobCircles {
  private static final int MOST_TOLD = 20;

  /** A job with all that its notes make it wait for. */
  private record Step(Job job, List<Mark> after) {}

  /** A job on the way, and what of it has not been walked yet. */
  private record Walked(Job job, Iterator<Mark> rest) {}

  private final Map<String, Step> steps;
  private final Problems problems;
  private final Set<String> finished = new HashSet<>();
  private final Deque<Walked> way = new ArrayDeque<>();
  private final Set<String> onWay = new HashSet<>();
  private int found;
  private Optional<Mark> untold = Optional.empty();

  private JobCircles(Map<String, Step> steps, Problems problems) {
    this.steps = steps;
    this.problems = problems;
  }

  static void tell(List<Entry> entries, Problems problems) {
    Map<String, Step> steps = new LinkedHashMap<>();
    for (Entry entry : entries) {
      for (Job job : entry.todo()) {
        steps
            .computeIfAbsent(Name.fold(job.id()), fold -> new Step(job, new ArrayList<>()))
            .after()
            .addAll(job.after());
      }
    }
    JobCircles circles = new JobCircles(steps, problems);
    steps.keySet().forEach(circles::walk);
    circles.tellHowManyMore();
  }

  private void walk(String start) {
    step(start);
    while (!way.isEmpty()) {
      Walked last = way.peekLast();
      if (!last.rest().hasNext()) {
        way.removeLast();
        onWay.remove(Name.fold(last.job().id()));
        finished.add(Name.fold(last.job().id()));
        continue;
      }
      Mark after = last.rest().next();
      String next = Name.fold(after.name());
      if (onWay.contains(next)) {
        tell(after, next);
      } else {
        step(next);
      }
    }
  }

  private void step(String fold) {
    Step step = steps.get(fold);
    if (step != null && !finished.contains(fold)) {
      way.addLast(new Walked(step.job(), step.after().iterator()));
      onWay.add(fold);
    }
  }

  private void tell(Mark closing, String first) {
    found++;
    if (found > MOST_TOLD) {
      untold = Optional.of(untold.orElse(closing));
      return;
    }
    List<Job> members =
        way.stream().map(Walked::job).dropWhile(job -> !Name.fold(job.id()).equals(first)).toList();
    String told = members.stream().map(JobCircles::told).collect(Collectors.joining(" after "));
    String sentence =
        members.size() == 1
            ? "job " + told + " waits for itself; take this after out"
            : "jobs wait for each other in a circle: "
                + told
                + " after "
                + members.get(0).id()
                + "; take one after out";
    problems.error(closing.place(), sentence);
  }

  private void tellHowManyMore() {
    untold.ifPresent(
        mark ->
            problems.error(
                mark.place(),
                "jobs wait for each other in "
                    + (found - MOST_TOLD)
                    + " more circles, this after closes one; mend those that are told first"));
  }

  private static String told(Job job) {
    return OneLine.cut(job.id()) + " (" + job.place().file() + ":" + job.place().line() + ")";
  }
}
