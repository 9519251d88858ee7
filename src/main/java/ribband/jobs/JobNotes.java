package ribband.jobs;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Function;
import ribband.jobs.Goal.Kind;
import ribband.journal.Entry;
import ribband.journal.Job;
import ribband.journal.Journal;
import ribband.measure.Name;
import ribband.stock.Stock.Told;

/** Puts the notes of each job together; for one reading. */
final class JobNotes {
  private final Told told;
  private final Map<String, Goal> goals = new HashMap<>();
  private final Map<String, List<Note>> notes = new LinkedHashMap<>();
  private final Map<String, Entry> done = new HashMap<>();

  /** A note and where it stands. */
  private record Note(Job job, Entry entry) {
    /** spec: the entry's phase is the phase of all that says no other. */
    Optional<String> phase() {
      return job.phase().or(entry::phase);
    }
  }

  private JobNotes(Journal journal, Told told) {
    this.told = told;
    journal
        .phases()
        .forEach(phase -> goals.put(Name.fold(phase.id()), new Goal(Kind.PHASE, phase.id())));
    journal
        .project()
        .pieces()
        .forEach((fold, kind) -> goals.put(fold, new Goal(Kind.PIECES, kind.name())));
  }

  /**
   * Reads them.
   *
   * @param entries those that count, by date
   * @param told readers are not told of notes in private entries
   * @return in the order in which they were first noted
   */
  static List<NotedJob> of(Journal journal, List<Entry> entries, Told told) {
    JobNotes reading = new JobNotes(journal, told);
    entries.forEach(reading::read);
    return reading.notes.values().stream().map(reading::job).toList();
  }

  private void read(Entry entry) {
    for (Job job : entry.todo()) {
      String fold = Name.fold(job.id());
      if (told == Told.TO_THE_BUILDER || entry.isPublic()) {
        List<Note> before = notes.computeIfAbsent(fold, first -> new ArrayList<>());
        if (before.isEmpty()) {
          goals.put(fold, new Goal(Kind.JOB, job.id()));
        }
        before.add(new Note(job, entry));
      } else {
        goals.putIfAbsent(fold, new Goal(Kind.UNTOLD, job.id()));
      }
    }
    entry.done().forEach(mark -> done.put(Name.fold(mark.name()), entry));
  }

  private NotedJob job(List<Note> noted) {
    Note first = noted.get(0);
    Goal goal = goals.get(Name.fold(first.job().id()));
    return new NotedJob(
        goal,
        noted.stream()
            .map(note -> note.job().what())
            .filter(what -> !Name.fold(what).equals(goal.fold()))
            .findFirst()
            .orElse(first.job().what()),
        last(noted, note -> note.job().phase()).or(first::phase),
        last(noted, note -> note.job().hours()),
        noted.stream()
            .flatMap(note -> note.job().after().stream())
            .map(mark -> goals.get(Name.fold(mark.name())))
            // What a later entry notes is not known yet on this day.
            .filter(Objects::nonNull)
            .distinct()
            .toList(),
        first.entry(),
        Optional.ofNullable(done.get(goal.fold())));
  }

  private static <T> Optional<T> last(List<Note> noted, Function<Note, Optional<T>> said) {
    return noted.stream().flatMap(note -> said.apply(note).stream()).reduce((a, b) -> b);
  }
}
