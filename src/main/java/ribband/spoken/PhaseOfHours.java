package ribband.spoken;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import ribband.journal.Phase;
import ribband.measure.Hours;
import ribband.measure.Saying;

/** Gives hours that stand alone their phase, and refuses those whose phase is not clear. */
final class PhaseOfHours {
  private static final Hours DAY = Hours.ofMinutes(24 * 60);

  private PhaseOfHours() {}

  static List<Found> settle(List<Found> found) {
    List<Found> within = withinADay(found);
    List<Phase> phases =
        within.stream()
            .flatMap(f -> f.work().flatMap(Heard.Work::phase).stream())
            .distinct()
            .toList();
    if (phases.size() < 2) {
      return within.stream().map(f -> withPhase(f, phases.stream().findFirst())).toList();
    }
    List<Found> settled = new ArrayList<>();
    int at = 0;
    while (at < within.size()) {
      int end = at;
      while (end < within.size() && isHalf(within.get(end))) {
        end++;
      }
      settled.addAll(run(within.subList(at, end), phases.get(0)));
      if (end < within.size()) {
        settled.add(within.get(end));
      }
      at = end + 1;
    }
    return settled;
  }

  /** spec: an entry has at most 24 hours. */
  private static List<Found> withinADay(List<Found> found) {
    Hours all =
        Hours.sum(
            found.stream()
                .flatMap(f -> f.work().flatMap(Heard.Work::time).stream())
                .map(TimePhrase::hours)
                .toList());
    if (all.compareTo(DAY) <= 0) {
      return found;
    }
    String why =
        "comes to " + Saying.hours(all) + " h in all, and a day has 24; look at the figures again";
    return found.stream().map(f -> f.work().isPresent() ? f.unclear(why) : f).toList();
  }

  private static boolean isHalf(Found found) {
    return found.work().filter(w -> w.isPhaseAlone() || w.isHoursAlone()).isPresent();
  }

  private static Found withPhase(Found found, Optional<Phase> phase) {
    return found
        .work()
        .filter(Heard.Work::isHoursAlone)
        .map(work -> found.with(new Heard.Work(phase, work.time())))
        .orElse(found);
  }

  /**
   * {@code planking, 1:30, fairing, 0:45}: phases and hours by turns are pairs.
   *
   * @param run parts that are each a phase alone or hours alone
   * @param first the first phase of the line, which may stand without hours
   */
  private static List<Found> run(List<Found> run, Phase first) {
    List<Found> settled = new ArrayList<>();
    boolean pairs = byTurns(run);
    for (int i = 0; i < run.size(); i++) {
      Found one = run.get(i);
      Heard.Work work = one.work().orElseThrow();
      Heard.Work beside = run.get(Math.min(i ^ 1, run.size() - 1)).work().orElseThrow();
      if (work.isHoursAlone()) {
        settled.add(
            pairs
                ? one.with(new Heard.Work(beside.phase(), work.time()))
                : one.unclear(
                    "does not say of which phase; write "
                        + first.id()
                        + " "
                        + one.part().line().substring(one.start(), one.end()).strip()));
      } else {
        boolean used = pairs || work.phase().filter(first::equals).isPresent();
        settled.add(
            used ? one : one.unclear("has no hours; write " + work.phase().get().id() + " 2:45"));
      }
    }
    return settled;
  }

  private static boolean byTurns(List<Found> run) {
    for (int i = 1; i < run.size(); i++) {
      if (run.get(i).work().orElseThrow().isHoursAlone()
          == run.get(i - 1).work().orElseThrow().isHoursAlone()) {
        return false;
      }
    }
    return run.size() % 2 == 0;
  }
}
