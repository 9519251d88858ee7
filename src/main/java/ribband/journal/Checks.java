package ribband.journal;

import java.text.Normalizer;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
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

  private final Project project;
  private final List<Entry> entries;
  private final Problems problems;

  /**
   * @param entries by date, those of one day by path
   */
  Checks(Project project, List<Entry> entries, Problems problems) {
    this.project = project;
    this.entries = entries;
    this.problems = problems;
  }

  void run(LocalDate today) {
    addresses();
    days(today);
    materials();
    jobs();
  }

  private static Place place(Entry entry) {
    return new Place(entry.file(), 1, 1);
  }

  /** Two pages on one address would hide one of the entries. */
  private void addresses() {
    Map<String, Entry> taken = new LinkedHashMap<>();
    for (Entry entry : entries) {
      String address =
          Normalizer.normalize(entry.address(), Normalizer.Form.NFC).toLowerCase(Locale.ROOT);
      Entry first = taken.putIfAbsent(address, entry);
      if (first != null) {
        problems.error(
            place(entry),
            "has the same address as "
                + first.file()
                + " (entries/"
                + first.address()
                + ".html); rename one of the two");
      }
    }
  }

  private void days(LocalDate today) {
    Map<LocalDate, Hours> byDay = new LinkedHashMap<>();
    for (Entry entry : entries) {
      Hours before = byDay.getOrDefault(entry.date(), Hours.ZERO);
      Hours after = before.plus(entry.totalHours());
      byDay.put(entry.date(), after);
      if (after.compareTo(MOST_A_DAY) > 0 && before.compareTo(MOST_A_DAY) <= 0) {
        problems.warning(
            place(entry),
            "the hours of "
                + Saying.day(entry.date())
                + " come to "
                + Saying.hours(after)
                + "; more than 16 in a day is a slip as a rule");
      }
      if (entry.date().isAfter(today)) {
        problems.warning(
            place(entry),
            entry.date() + " is in the future (today is " + today + "); check the date");
      }
      project
          .carried()
          .through()
          .filter(through -> !entry.date().isAfter(through))
          .ifPresent(
              through ->
                  problems.warning(
                      place(entry),
                      entry.date()
                          + " is within the carried work, which goes through "
                          + through
                          + "; make sure that it is not counted twice"));
    }
  }

  private void materials() {
    MaterialUnits units = new MaterialUnits(project, problems);
    entries.forEach(units::check);
    warnOfLikelySlips();
  }

  /**
   * A material that was only ever used, and is spelled almost like one that was bought or listed.
   */
  private void warnOfLikelySlips() {
    Set<String> known = new LinkedHashSet<>();
    project.materials().values().forEach(material -> known.add(material.name()));
    for (Entry entry : entries) {
      entry.outlays().stream()
          .flatMap(outlay -> outlay.purchase().stream())
          .flatMap(purchase -> purchase.material().stream())
          .forEach(known::add);
    }
    Set<String> folded = new LinkedHashSet<>();
    known.forEach(name -> folded.add(Name.fold(name)));
    for (Entry entry : entries) {
      for (String name : entry.used().keySet()) {
        if (!folded.contains(Name.fold(name)) && name.length() > 3) {
          Nearest.to(name, known)
              .ifPresent(
                  near ->
                      problems.warning(
                          place(entry),
                          "material "
                              + OneLine.quote(name)
                              + " was never bought or listed; did you mean "
                              + OneLine.quote(near)
                              + "?"));
        }
      }
    }
  }

  private void jobs() {
    Map<String, Entry> noted = new LinkedHashMap<>();
    List<String> names = new ArrayList<>();
    for (Entry entry : entries) {
      for (Job job : entry.todo()) {
        noted.putIfAbsent(Name.fold(job.id()), entry);
        names.add(job.id());
      }
    }
    Set<String> goals = new LinkedHashSet<>(names);
    project.pieces().values().forEach(kind -> goals.add(kind.name()));
    project.phases().forEach(phase -> goals.add(phase.id()));
    for (Entry entry : entries) {
      entry.done().forEach(mark -> closes(mark, noted, names));
      entry.todo().forEach(job -> job.after().forEach(mark -> waits(mark, goals)));
    }
  }

  private void closes(Mark done, Map<String, Entry> noted, List<String> names) {
    if (!noted.containsKey(Name.fold(done.name()))) {
      problems.error(
          done.place(),
          "done "
              + OneLine.quote(done.name())
              + " was never noted as a todo; "
              + Nearest.hint(done.name(), names, "note it in an earlier entry first"));
    }
  }

  private void waits(Mark after, Set<String> goals) {
    boolean known =
        goals.stream().anyMatch(goal -> Name.fold(goal).equals(Name.fold(after.name())));
    boolean phaseOfAnEntry =
        project.phases().isEmpty()
            && entries.stream().anyMatch(e -> e.hours().containsKey(Name.fold(after.name())));
    if (!known && !phaseOfAnEntry) {
      problems.error(
          after.place(),
          "after "
              + OneLine.quote(after.name())
              + " names no job, kind of pieces or phase; "
              + Nearest.hint(after.name(), goals, "note the job it waits for first"));
    }
  }

  /** The phases of a journal whose project lists none, in the order the entries name them. */
  static List<Phase> phasesOf(Project project, List<Entry> entries) {
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
    }
    ids.remove(Phase.UNSORTED.id());
    return ids.stream().map(Phase::named).toList();
  }
}
