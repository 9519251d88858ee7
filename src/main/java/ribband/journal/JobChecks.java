package ribband.journal;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import ribband.measure.Name;
import ribband.problem.Nearest;
import ribband.problem.OneLine;
import ribband.problem.Place;
import ribband.problem.Problems;

/** Checks what the entries say of jobs, over all of them; for one run. */
final class JobChecks {
  private final Known known;
  private final Map<String, String> kinds = new LinkedHashMap<>();
  private final Map<String, String> phases = new LinkedHashMap<>();
  private final Problems problems;
  private final Map<String, Job> noted = new LinkedHashMap<>();
  private final Map<String, Mark> done = new HashMap<>();

  JobChecks(Known known, List<Phase> phases, Problems problems) {
    this.known = known;
    this.problems = problems;
    known.project().pieces().forEach((fold, kind) -> this.kinds.put(fold, kind.name()));
    phases.forEach(phase -> this.phases.put(Name.fold(phase.id()), phase.id()));
  }

  /**
   * @param entries by date, those of one day by path
   */
  void run(List<Entry> entries) {
    Map<String, Job> all = new LinkedHashMap<>();
    for (Entry entry : entries) {
      entry.todo().forEach(job -> all.putIfAbsent(Name.fold(job.id()), job));
    }
    for (Entry entry : entries) {
      entry.todo().forEach(this::notes);
      entry.done().forEach(mark -> closes(mark, all));
    }
    waits(entries, all);
    JobCircles.tell(entries, problems);
  }

  private void notes(Job job) {
    String fold = Name.fold(job.id());
    String id = OneLine.quote(job.id());
    if (kinds.containsKey(fold)) {
      problems.error(job.place(), "job " + id + " has the name of a kind of pieces; " + rename());
    } else if (phases.containsKey(fold)) {
      problems.error(job.place(), "job " + id + " has the name of a phase; " + rename());
    }
    Job first = noted.putIfAbsent(fold, job);
    if (first == null) {
      return;
    }
    if (done.containsKey(fold)) {
      problems.error(
          job.place(),
          "job "
              + id
              + " is noted again after it was done, in "
              + line(done.get(fold).place())
              + "; give the new one another id");
    } else if (saysOther(first, job)) {
      problems.error(
          job.place(),
          "job "
              + id
              + " was noted with other words in "
              + line(first.place())
              + ", "
              + OneLine.quote(first.what())
              + "; write the same words, or another id for another job");
    }
  }

  private static String rename() {
    return "give the job another id";
  }

  /** spec: the same words again are the same job, and so is its id alone. */
  private static boolean saysOther(Job first, Job again) {
    return !isBare(first) && !isBare(again) && !words(first).equals(words(again));
  }

  private static boolean isBare(Job job) {
    return job.what().equals(job.id());
  }

  private static String words(Job job) {
    return Name.plain(job.what()).strip().replaceAll("\\s+", " ");
  }

  private void closes(Mark mark, Map<String, Job> all) {
    String fold = Name.fold(mark.name());
    String id = OneLine.quote(mark.name());
    Mark before = done.putIfAbsent(fold, mark);
    if (!all.containsKey(fold)) {
      problems.error(mark.place(), "done " + id + neverNoted(mark.name(), fold, all));
    } else if (before != null) {
      problems.error(
          mark.place(),
          "done "
              + id
              + " was done already, in "
              + line(before.place())
              + "; take one of them out");
    } else if (!noted.containsKey(fold)) {
      problems.error(
          mark.place(),
          "done "
              + id
              + " comes before the job is noted, in "
              + line(all.get(fold).place())
              + "; note it there or earlier, or move done to a later entry");
    }
  }

  private String neverNoted(String name, String fold, Map<String, Job> all) {
    if (kinds.containsKey(fold)) {
      return " is a kind of pieces and no job; write pieces: {" + kinds.get(fold) + ": 1}";
    }
    if (phases.containsKey(fold)) {
      return " is a phase and no job; write complete: {" + phases.get(fold) + ": 100%}";
    }
    List<String> ids = all.values().stream().map(Job::id).toList();
    return " was never noted as a todo; "
        + Nearest.to(name, ids)
            .map(near -> "did you mean " + OneLine.quote(near) + "?")
            .orElse("note it first" + (ids.isEmpty() ? "" : "; " + Nearest.hint(name, ids, "")));
  }

  private void waits(List<Entry> entries, Map<String, Job> all) {
    if (known.unsure().contains("pieces") || known.unsure().contains("phases")) {
      return;
    }
    Map<String, String> goals = new LinkedHashMap<>();
    all.forEach((fold, job) -> goals.put(fold, job.id()));
    kinds.forEach(goals::putIfAbsent);
    phases.forEach(goals::putIfAbsent);
    List<Mark> marks = new ArrayList<>();
    entries.forEach(entry -> entry.todo().forEach(job -> marks.addAll(job.after())));
    for (Mark after : marks) {
      String fold = Name.fold(after.name());
      if (kinds.containsKey(fold) && phases.containsKey(fold)) {
        problems.error(
            after.place(),
            "after "
                + OneLine.quote(after.name())
                + " is a kind of pieces and a phase too; rename one of them in project.yaml");
      }
      if (!goals.containsKey(Name.fold(after.name()))) {
        problems.error(
            after.place(),
            "after "
                + OneLine.quote(after.name())
                + " names no job, kind of pieces or phase; "
                + Nearest.hint(after.name(), goals.values(), "note the job it waits for first"));
      }
    }
  }

  private static String line(Place place) {
    return place.file() + ":" + place.line();
  }
}
