package ribband.jobs;

import java.time.LocalDateTime;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import ribband.measure.Hours;
import ribband.measure.Saying;
import ribband.pieces.PieceCount;

/** What is said of jobs, in the terminal and on the site. */
public final class JobWords {
  private final Function<NotedJob, String> name;
  private final Function<String, String> phase;
  private final Map<String, PieceCount> pieces;
  private final ZoneId zone;
  private final Map<Goal, NotedJob> jobs = new HashMap<>();

  /**
   * Words about one list.
   *
   * @param name what a job is called where another one speaks of it
   * @param phase the title of a phase's id
   * @param pieces by folded name of their kind
   */
  public JobWords(
      PunchList list,
      Function<NotedJob, String> name,
      Function<String, String> phase,
      Map<String, PieceCount> pieces,
      ZoneId zone) {
    this.name = name;
    this.phase = phase;
    this.pieces = pieces;
    this.zone = zone;
    list.open().forEach(open -> jobs.put(open.job().goal(), open.job()));
  }

  /** {@code 1½ hours, Fairing}; empty where neither is known. */
  public String size(NotedJob job) {
    List<String> parts = new ArrayList<>();
    job.hours().map(Saying::hoursInWords).ifPresent(parts::add);
    job.phase().map(phase).ifPresent(parts::add);
    return String.join(", ", parts);
  }

  /** {@code strakes (2 left)}, {@code trim-ends}, {@code Planking}, {@code a job not listed}. */
  public String goal(Goal goal) {
    return switch (goal.kind()) {
      case JOB -> Optional.ofNullable(jobs.get(goal)).map(name).orElse(goal.name());
      case PIECES -> goal.name() + left(goal);
      case PHASE -> phase.apply(goal.name());
      case UNTOLD -> "a job not listed";
    };
  }

  private String left(Goal kind) {
    return Optional.ofNullable(pieces.get(kind.fold()))
        .map(count -> " (" + Saying.count(count.left()) + " left)")
        .orElse("");
  }

  /** {@code trim-ends, strakes (2 left) and Planking}. */
  public String waitsFor(OpenJob open) {
    return Saying.list(open.waitsFor().stream().map(this::goal).distinct().toList());
  }

  /** {@code Frees sand-hull; with others prime and paint.}; empty where nothing waits for it. */
  public String unlocks(List<NotedJob> frees, List<NotedJob> helps) {
    List<String> parts = new ArrayList<>();
    if (!frees.isEmpty()) {
      parts.add("frees " + names(frees));
    }
    if (!helps.isEmpty()) {
      parts.add((frees.isEmpty() ? "with others frees " : "with others ") + names(helps));
    }
    return String.join("; ", parts);
  }

  private String names(List<NotedJob> jobs) {
    return Saying.list(jobs.stream().map(name).toList());
  }

  /** {@code Sheer is in clamps until 04:00 on 15 March 2026}. */
  public String hold(Hold hold) {
    return hold.joint()
        + hold.until()
            .map(until -> LocalDateTime.ofInstant(until, zone))
            .map(
                until ->
                    " is in clamps until "
                        + Saying.clock(until.toLocalTime())
                        + " on "
                        + Saying.day(until.toLocalDate()))
            .orElse(" is glued too cold to tell when it is hard");
  }

  /** {@code 2 strakes, 2 nights}, {@code trim-ends, 1 night, then a night of cure}. */
  public String link(Chain.Link link) {
    String what =
        switch (link.goal().kind()) {
          case PIECES -> left(link.goal(), link.goal().name());
          default -> goal(link.goal());
        };
    String cure =
        link.cure() == 0
            ? ""
            : ", then " + Saying.counted(link.cure(), "night", "nights") + " of cure";
    return what
        + (link.nights() == 0 ? "" : ", " + Saying.counted(link.nights(), "night", "nights"))
        + cure;
  }

  private String left(Goal kind, String plural) {
    return Optional.ofNullable(pieces.get(kind.fold()))
        .map(count -> counted(count.left(), plural))
        .orElse(plural);
  }

  /** Builders name kinds in the plural. */
  private static String counted(long pieces, String plural) {
    return pieces == 1 ? "one of the " + plural : Saying.count(pieces) + " " + plural;
  }

  /** {@code 2 strakes, 2½ hours}, {@code trim-ends, 1½ hours}. */
  public String item(Evening.Item item) {
    String what =
        item.goal().kind() == Goal.Kind.PIECES
            ? counted(item.pieces(), item.what())
            : goal(item.goal());
    return what + item.hours().map(hours -> ", " + said(hours)).orElse("");
  }

  private static String said(Hours hours) {
    return Saying.hoursInWords(hours);
  }
}
