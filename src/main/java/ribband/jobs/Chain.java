package ribband.jobs;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.ToLongFunction;
import ribband.jobs.Goal.Kind;
import ribband.journal.PieceKind;
import ribband.measure.Name;

/**
 * The longest chain of nights: work of which each piece must follow the one before it.
 *
 * @param links in their order; empty where nothing is open
 * @param nights all of it, the cures between the links too
 * @param tails nights from the start of each open goal to the end of all that must follow it
 */
public record Chain(List<Link> links, long nights, Map<Goal, Long> tails) {
  public Chain {
    links = List.copyOf(links);
    tails = Map.copyOf(tails);
  }

  /** Nights from the start of something to the end of all that must follow it. */
  public long behind(Goal goal) {
    return tails.getOrDefault(goal, 0L);
  }

  /**
   * One piece of work.
   *
   * @param job where it is a job
   * @param nights of work
   * @param cure nights of waiting before the next link; 0 behind the last
   */
  public record Link(Goal goal, Optional<NotedJob> job, long nights, long cure) {}

  /**
   * Finds it among the open jobs, the pieces not yet made and what they wait for.
   *
   * @param kinds those with pieces left, by folded name
   */
  public static Chain longest(PunchList list, Map<String, PieceKind> kinds, Lasting lasting) {
    Map<Goal, NotedJob> jobs = new HashMap<>();
    list.open().forEach(open -> jobs.put(open.job().goal(), open.job()));
    Precedence<Goal> order = Precedence.of(after(list, kinds));
    ToLongFunction<Goal> lasts = goal -> nights(goal, jobs, kinds, lasting);
    ToLongFunction<Goal> rests = goal -> cure(goal, lasting);
    List<Goal> way = order.longest(lasts, rests);
    List<Link> links = new ArrayList<>();
    for (int i = 0; i < way.size(); i++) {
      Goal goal = way.get(i);
      long nights = lasts.applyAsLong(goal);
      long cure = i + 1 < way.size() ? rests.applyAsLong(goal) : 0;
      if (nights > 0 || cure > 0) {
        links.add(new Link(goal, Optional.ofNullable(jobs.get(goal)), nights, cure));
      }
    }
    long whole = links.stream().mapToLong(link -> link.nights() + link.cure()).sum();
    return new Chain(links, whole, order.tails(lasts, rests));
  }

  private static Map<Goal, Collection<Goal>> after(PunchList list, Map<String, PieceKind> kinds) {
    Map<Goal, Collection<Goal>> after = new HashMap<>();
    kinds.values().forEach(kind -> after.put(new Goal(Kind.PIECES, kind.name()), Set.of()));
    for (OpenJob open : list.open()) {
      after.put(open.job().goal(), open.waitsFor());
      open.waitsFor().stream()
          .filter(goal -> goal.kind() == Kind.PHASE)
          .forEach(phase -> after.put(phase, piecesOf(phase, kinds)));
    }
    return after;
  }

  private static Set<Goal> piecesOf(Goal phase, Map<String, PieceKind> kinds) {
    Set<Goal> its = new LinkedHashSet<>();
    kinds.values().stream()
        .filter(kind -> kind.phase().map(Name::fold).equals(Optional.of(phase.fold())))
        .forEach(kind -> its.add(new Goal(Kind.PIECES, kind.name())));
    return its;
  }

  private static long nights(
      Goal goal, Map<Goal, NotedJob> jobs, Map<String, PieceKind> kinds, Lasting lasting) {
    return switch (goal.kind()) {
      case JOB -> lasting.of(jobs.get(goal));
      case PIECES -> lasting.pieces().getOrDefault(goal.fold(), 1L);
      case PHASE ->
          piecesOf(goal, kinds).isEmpty() ? lasting.phases().getOrDefault(goal.fold(), 1L) : 0;
      case UNTOLD -> 1;
    };
  }

  private static long cure(Goal goal, Lasting lasting) {
    return goal.kind() == Kind.PIECES ? lasting.cures().getOrDefault(goal.fold(), 0L) : 0;
  }
}
