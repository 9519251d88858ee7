package ribband.desk;

import java.time.LocalDate;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import ribband.journal.Carried;
import ribband.journal.Journal;
import ribband.journal.Phase;
import ribband.ledger.Ledger;
import ribband.ledger.Sums;
import ribband.measure.Hours;
import ribband.measure.Saying;
import ribband.past.Past;
import ribband.past.PastSession;
import ribband.problem.Place;
import ribband.problem.Problems;

/**
 * Past sessions as work that is carried in from before the journal.
 *
 * @param yaml what to write into {@code project.yaml} in place of its {@code carried}
 * @param before the journal's totals
 * @param brought what the sessions add
 */
public record CarriedBlock(String yaml, Sums before, Sums brought) {
  private static final Hours MOST = Hours.ofMinutes(10_000 * 60L);

  /**
   * Reckons it; what the project carries already stays in it.
   *
   * @param today for warnings of days to come
   * @param problems is told where the format has no way to say it
   */
  public static CarriedBlock of(Journal journal, Past past, LocalDate today, Problems problems) {
    Carried had = journal.project().carried();
    Sums brought = Sums.NONE;
    for (PastSession session : past.sessions()) {
      brought = brought.plus(BroughtEntry.sums(session));
    }
    LocalDate last =
        past.sessions().stream().map(PastSession::date).reduce(LocalDate.MIN, CarriedBlock::later);
    LocalDate through = had.through().map(day -> later(day, last)).orElse(last);
    PastWarnings.ofCarried(journal, past, through, today, problems);
    Sums all = new Sums(had.sessions(), had.hours(), had.cost()).plus(brought);
    check(journal, past, all, problems);
    String yaml =
        kept(had)
            + "carried:\n  through: "
            + through
            + "\n  sessions: "
            + all.sessions()
            + "\n"
            + byPhase("hours", all.hours(), Yaml::hours)
            + byPhase("cost", all.cost(), paid -> paid.decimal(journal.project().currency()));
    return new CarriedBlock(yaml, Ledger.of(journal).whole(), brought);
  }

  private static LocalDate later(LocalDate one, LocalDate other) {
    return one.isAfter(other) ? one : other;
  }

  private static String kept(Carried had) {
    return had.equals(Carried.NOTHING)
        ? ""
        : "# The "
            + Saying.counted(had.sessions(), "session", "sessions")
            + " that this project carries already "
            + (had.sessions() == 1 ? "is" : "are")
            + " in these figures.\n";
  }

  private static void check(Journal journal, Past past, Sums all, Problems problems) {
    String unsorted = Phase.UNSORTED.id();
    boolean listed = !journal.project().phases().isEmpty();
    boolean mixed =
        Stream.of(all.hours(), all.cost())
            .anyMatch(figures -> figures.size() > 1 && figures.containsKey(unsorted));
    if (listed && mixed) {
      problems.error(
          Place.of(past.file()),
          "some of it names no phase, and carried work is written by phase; give one to all of"
              + " these with --phase \"="
              + journal.phases().get(0).id()
              + "\"");
    }
    Optional<Hours> most = all.hours().values().stream().max(Hours::compareTo);
    if (most.filter(hours -> hours.compareTo(MOST) > 0).isPresent()) {
      problems.error(
          Place.of(past.file()),
          "it comes to more than 10,000 hours of one phase, which carried cannot say; check the"
              + " hours");
    }
  }

  /** {@code {planking: 44:30}}, or the figure alone where that names no phase. */
  private static <T> String byPhase(String key, Map<String, T> all, Function<T, String> written) {
    if (all.isEmpty()) {
      return "";
    }
    if (all.keySet().equals(Set.of(Phase.UNSORTED.id()))) {
      return "  " + key + ": " + written.apply(all.get(Phase.UNSORTED.id())) + "\n";
    }
    return all.entrySet().stream()
        .map(figure -> Yaml.text(figure.getKey()) + ": " + written.apply(figure.getValue()))
        .collect(Collectors.joining(", ", "  " + key + ": {", "}\n"));
  }
}
