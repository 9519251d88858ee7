package ribband.journal;

import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import ribband.journal.EntryReader.EntryRead;
import ribband.journal.Mention.How;
import ribband.measure.Hours;
import ribband.measure.Name;
import ribband.measure.Saying;
import ribband.problem.Nearest;
import ribband.problem.OneLine;
import ribband.problem.Place;
import ribband.problem.Problems;

/** Checks that need more than one entry. Values in, problems out. */
final class Checks {
  private static final Hours MOST_A_DAY = Hours.ofMinutes(16 * 60L);

  private final Known known;
  private final Project project;
  private final List<Entry> entries;
  private final List<Mention> mentions;
  private final Problems problems;

  /**
   * @param reads by date, those of one day by path
   */
  Checks(Known known, List<EntryRead> reads, Problems problems) {
    this.known = known;
    this.project = known.project();
    this.entries = reads.stream().map(EntryRead::entry).toList();
    this.mentions = reads.stream().flatMap(read -> read.mentions().stream()).toList();
    this.problems = problems;
  }

  List<Entry> entries() {
    return entries;
  }

  /** Whether every file that should be an entry could be read as one. */
  enum Gathered {
    ALL,
    SOME
  }

  void run(LocalDate today, Gathered gathered) {
    currency();
    addresses();
    days(today);
    MaterialUnits.check(project, mentions, problems);
    warnOfLikelySlips();
    // A job that seems unknown may stand in an entry whose own problem has been told.
    if (gathered == Gathered.ALL) {
      new JobChecks(known, phases(), problems).run(entries);
      new PieceChecks(project, problems).run(entries);
    }
  }

  private static Place place(Entry entry) {
    return new Place(entry.file(), 1, 1);
  }

  /**
   * spec: the currency is needed once any amount is written; one line tells it, not every entry.
   */
  private void currency() {
    if (known.lacksCurrency()) {
      firstAmount()
          .ifPresent(
              file ->
                  problems.error(
                      new Place(JournalFolder.PROJECT, 1, 1),
                      "no currency is named, but "
                          + file
                          + " writes an amount; write currency: USD, or another code of ISO 4217"));
    }
  }

  private Optional<String> firstAmount() {
    boolean inProject =
        !project.carried().cost().isEmpty()
            || project.phases().stream().anyMatch(phase -> phase.cost().isPresent())
            || project.materials().values().stream().anyMatch(m -> m.worth().isPresent());
    return inProject
        ? Optional.of(JournalFolder.PROJECT)
        : entries.stream()
            .filter(entry -> entry.outlays().stream().anyMatch(o -> !o.amount().isZero()))
            .map(Entry::file)
            .findFirst();
  }

  /** Two pages on one address would hide one of the entries. */
  private void addresses() {
    Map<String, Entry> taken = new LinkedHashMap<>();
    for (Entry entry : entries) {
      Entry first = taken.putIfAbsent(Name.plain(entry.address()), entry);
      if (first != null) {
        problems.error(
            place(entry),
            "the entry has the same address as "
                + first.file()
                + " (entries/"
                + first.address()
                + ".html); rename one of the two files");
      }
    }
  }

  private void days(LocalDate today) {
    Map<LocalDate, Hours> byDay = new LinkedHashMap<>();
    for (Entry entry : entries) {
      Hours before = byDay.getOrDefault(entry.date(), Hours.ZERO);
      Hours after = before.plus(entry.totalHours());
      byDay.put(entry.date(), after);
      boolean crossed = after.compareTo(MOST_A_DAY) > 0 && before.compareTo(MOST_A_DAY) <= 0;
      if (crossed && entry.totalHours().compareTo(EntryReader.MOST_AN_ENTRY) <= 0) {
        problems.warning(
            place(entry),
            "the hours of "
                + Saying.day(entry.date())
                + " come to "
                + Saying.hours(after)
                + "; more than 16 in a day is a slip as a rule, look again");
      }
      if (entry.date().isAfter(today)) {
        problems.warning(
            place(entry),
            "the date "
                + entry.date()
                + " is in the future, today is "
                + today
                + "; check the date");
      }
      project
          .carried()
          .through()
          .filter(through -> !entry.date().isAfter(through))
          .ifPresent(
              through ->
                  problems.warning(
                      place(entry),
                      "the date "
                          + entry.date()
                          + " is within the carried work, which goes through "
                          + through
                          + "; make sure that it is not counted twice"));
    }
  }

  /**
   * A material that was only ever used, and is spelled almost like one that was bought or listed.
   */
  private void warnOfLikelySlips() {
    Map<String, String> had = new LinkedHashMap<>();
    project.materials().forEach((fold, material) -> had.put(fold, material.name()));
    for (Mention mention : mentions) {
      if (mention.how() == How.BOUGHT) {
        had.putIfAbsent(Name.fold(mention.material().value()), mention.material().value());
      }
    }
    for (Mention mention : mentions) {
      String name = mention.material().value();
      if (mention.how() != How.BOUGHT && !had.containsKey(Name.fold(name))) {
        Nearest.to(name, had.values())
            .ifPresent(
                near ->
                    problems.warning(
                        mention.material().place(),
                        "material "
                            + OneLine.quote(name)
                            + " was never bought or listed; did you mean "
                            + OneLine.quote(near)
                            + "?"));
      }
    }
  }

  /** The project's phases, or where it lists none those of the entries as they first name them. */
  List<Phase> phases() {
    if (!project.phases().isEmpty()) {
      return project.phases();
    }
    Set<String> ids = new LinkedHashSet<>(project.carried().hours().keySet());
    ids.addAll(project.carried().cost().keySet());
    for (Entry entry : entries) {
      entry.phase().ifPresent(ids::add);
      ids.addAll(entry.hours().keySet());
      entry.outlays().forEach(outlay -> ids.add(outlay.phase()));
      ids.addAll(entry.complete().keySet());
      entry.todo().forEach(job -> job.phase().ifPresent(ids::add));
    }
    ids.remove(Phase.UNSORTED.id());
    return ids.stream().map(Phase::named).toList();
  }
}
