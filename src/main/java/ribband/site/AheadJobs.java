package ribband.site;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import ribband.ahead.Ahead;
import ribband.chart.Caption;
import ribband.chart.Chart;
import ribband.chart.WorkOrder;
import ribband.chart.WorkOrder.Sign;
import ribband.jobs.Goal;
import ribband.jobs.JobWords;
import ribband.jobs.NotedJob;
import ribband.jobs.OpenJob;
import ribband.jobs.OpenJob.State;
import ribband.jobs.PunchList;
import ribband.measure.Saying;
import ribband.measure.ShopTalk;

/** The punch list as the page of what is ahead shows it. */
final class AheadJobs {
  /** A list of more is no help to a reader; the builder's terminal tells them all. */
  private static final int MOST = 100;

  private final Ahead ahead;
  private final PunchList list;
  private final JobWords words;
  private final ShopTalk talk;

  AheadJobs(Ahead ahead, JobWords words, ShopTalk talk) {
    this.ahead = ahead;
    this.list = ahead.jobs();
    this.words = words;
    this.talk = talk;
  }

  /**
   * One job.
   *
   * @param href the entry that noted it
   * @param size hours and phase; may be empty
   * @param then what it waits for and what waits for it; may be empty
   */
  record Line(String what, String href, String size, String then) {}

  /** What a job is called on the site: readers know no ids. */
  static String name(NotedJob job) {
    return "“" + job.what() + "”";
  }

  List<Line> in(State state) {
    return list.in(state).stream().limit(MOST).map(this::line).toList();
  }

  /** How many jobs the lists leave out; empty where none. */
  String more() {
    long left = 0;
    for (State state : State.values()) {
      left += Math.max(0, list.in(state).size() - MOST);
    }
    return left == 0 ? "" : "And " + Saying.count(left) + " more, not listed.";
  }

  private Line line(OpenJob open) {
    NotedJob job = open.job();
    List<String> then = new ArrayList<>();
    open.hold().map(words::hold).ifPresent(then::add);
    ahead.coldFor(open).map(cold -> cold.words(talk)).ifPresent(then::add);
    if (!open.waitsFor().isEmpty()) {
      then.add("waits for " + words.waitsFor(open));
    }
    String unlocks = words.unlocks(open.frees(), open.helps());
    if (!unlocks.isEmpty()) {
      then.add(unlocks);
    }
    String said = String.join("; ", then);
    return new Line(
        job.what(),
        Addresses.href(Addresses.AHEAD, Addresses.entry(job.noted())),
        words.size(job),
        said.isEmpty() ? "" : Saying.capitalised(said) + ".");
  }

  /** The drawing of the order; none where no job waits for another thing. */
  List<Chart<WorkOrder>> order() {
    List<WorkOrder.Step> steps = WorkOrder.joined(steps());
    if (steps.isEmpty()) {
      return List.of();
    }
    String most =
        steps.size() > WorkOrder.MOST
            ? " The first " + WorkOrder.MOST + " of " + Saying.count(steps.size()) + " are drawn."
            : "";
    long waiting = list.in(State.WAITING).size();
    return List.of(
        WorkOrder.chart(
            new Caption(
                "order",
                "The order of work",
                "A line for each job, with an arc down to each that must follow it, and whether it"
                    + " is ready, in clamps or waits. A square stands for pieces or a phase.",
                "A ring is ready, a barred ring in clamps, a dot waits. "
                    + Saying.capitalised(Saying.number(waiting))
                    + (waiting == 1 ? " job waits." : " jobs wait.")
                    + most),
            steps));
  }

  private List<WorkOrder.Step> steps() {
    Map<Goal, Integer> numbers = new LinkedHashMap<>();
    List<WorkOrder.Step> steps = new ArrayList<>();
    Set<Goal> awaited = list.awaited().keySet();
    for (OpenJob open : list.open()) {
      for (Goal goal : open.waitsFor()) {
        // Pieces and phases stand right above the first that waits for them.
        if (awaited.contains(goal) && numbers.putIfAbsent(goal, steps.size()) == null) {
          steps.add(goal(goal));
        }
      }
      numbers.put(open.job().goal(), steps.size());
      steps.add(job(open, numbers));
    }
    return steps;
  }

  private WorkOrder.Step goal(Goal goal) {
    return new WorkOrder.Step(
        kind(goal), Saying.capitalised(words.goal(goal)), Sign.GOAL, List.of(), "–");
  }

  private WorkOrder.Step job(OpenJob open, Map<Goal, Integer> numbers) {
    return new WorkOrder.Step(
        "Job",
        open.job().what(),
        sign(open.state()),
        open.waitsFor().stream()
            .flatMap(goal -> Optional.ofNullable(numbers.get(goal)).stream())
            .distinct()
            .toList(),
        open.waitsFor().isEmpty()
            ? open.hold().map(words::hold).orElse("–")
            : words.waitsFor(open));
  }

  private static String kind(Goal goal) {
    return switch (goal.kind()) {
      case PIECES -> "Pieces";
      case PHASE -> "Phase";
      case JOB, UNTOLD -> "Job";
    };
  }

  private static Sign sign(State state) {
    return switch (state) {
      case READY -> Sign.READY;
      case HELD -> Sign.HELD;
      case WAITING -> Sign.WAITING;
    };
  }
}
