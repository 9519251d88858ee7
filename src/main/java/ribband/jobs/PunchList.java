package ribband.jobs;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import ribband.jobs.OpenJob.State;
import ribband.joints.Bonds;
import ribband.journal.Entry;
import ribband.journal.Journal;
import ribband.stock.Stock.Told;

/**
 * All jobs noted, and how far each is.
 *
 * @param done in the order noted
 * @param open in the order of work: what comes first stands first, by id among equals
 */
public record PunchList(List<NotedJob> done, List<OpenJob> open) {
  public PunchList {
    done = List.copyOf(done);
    open = List.copyOf(open);
  }

  /**
   * Reads it.
   *
   * @param asOf entries after it do not count
   * @param bonds what is in clamps, and now
   * @param told readers are not told of jobs that only private entries note
   */
  public static PunchList of(Journal journal, LocalDate asOf, Bonds bonds, Told told) {
    List<Entry> entries =
        journal.entries().stream().filter(entry -> !entry.date().isAfter(asOf)).toList();
    List<NotedJob> jobs = JobNotes.of(journal, entries, told);
    Reached reached = Reached.of(journal, entries);
    Map<Goal, NotedJob> open = new LinkedHashMap<>();
    jobs.stream().filter(job -> job.done().isEmpty()).forEach(job -> open.put(job.goal(), job));
    Map<Goal, List<Goal>> waits = new HashMap<>();
    open.forEach(
        (goal, job) ->
            waits.put(goal, job.after().stream().filter(g -> reached.in(g).isEmpty()).toList()));
    Map<Goal, Set<NotedJob>> waiting = new HashMap<>();
    waits.forEach(
        (goal, before) ->
            before.forEach(
                first ->
                    waiting
                        .computeIfAbsent(first, none -> new LinkedHashSet<>())
                        .add(open.get(goal))));
    Map<String, Hold> holds = Hold.byEntry(bonds);
    if (told == Told.TO_READERS) {
      entries.stream().filter(e -> !e.isPublic()).map(Entry::address).forEach(holds::remove);
    }
    return new PunchList(
        jobs.stream().filter(job -> job.done().isPresent()).toList(),
        order(waits).stream()
            .map(goal -> job(open.get(goal), waits, waiting, reached, holds))
            .toList());
  }

  /** spec: the smallest id first of those that may come next; pieces and phases do not count. */
  private static List<Goal> order(Map<Goal, List<Goal>> waits) {
    Map<Goal, List<Goal>> jobs = new HashMap<>();
    waits.forEach(
        (goal, before) -> jobs.put(goal, before.stream().filter(waits::containsKey).toList()));
    return Precedence.of(jobs).inOrder();
  }

  private static OpenJob job(
      NotedJob job,
      Map<Goal, List<Goal>> waits,
      Map<Goal, Set<NotedJob>> waiting,
      Reached reached,
      Map<String, Hold> holds) {
    List<Goal> before = waits.get(job.goal());
    List<Entry> finished = job.after().stream().flatMap(g -> reached.in(g).stream()).toList();
    List<NotedJob> next =
        waiting.getOrDefault(job.goal(), Set.of()).stream()
            .sorted((a, b) -> a.goal().compareTo(b.goal()))
            .toList();
    return new OpenJob(
        job,
        before,
        before.isEmpty() ? Hold.of(finished, holds) : Optional.empty(),
        next.stream().filter(n -> waits.get(n.goal()).size() == 1).toList(),
        next.stream().filter(n -> waits.get(n.goal()).size() > 1).toList());
  }

  /** Those of one state, in the order of work. */
  public List<OpenJob> in(State state) {
    return open.stream().filter(job -> job.state() == state).toList();
  }

  /** Kinds of pieces and phases that jobs wait for, and the jobs each lets go on. */
  public Map<Goal, List<OpenJob>> awaited() {
    Map<Goal, List<OpenJob>> awaited = new LinkedHashMap<>();
    Set<Goal> own = new HashSet<>();
    open.forEach(job -> own.add(job.job().goal()));
    for (OpenJob job : open) {
      for (Goal goal : job.waitsFor()) {
        if (!own.contains(goal)) {
          awaited.computeIfAbsent(goal, none -> new ArrayList<>()).add(job);
        }
      }
    }
    return awaited;
  }
}
