package ribband.desk;

import java.time.LocalDate;
import java.util.List;
import java.util.function.Predicate;
import ribband.journal.Entry;
import ribband.journal.Journal;
import ribband.journal.JournalFolder;
import ribband.measure.Saying;
import ribband.past.Past;
import ribband.past.PastSession;
import ribband.problem.Place;
import ribband.problem.Problems;

/** What to look at again before past sessions are counted. */
final class PastWarnings {
  private PastWarnings() {}

  /** Of sessions that are to be entries. */
  static void ofEntries(Journal journal, Past past, LocalDate today, Problems problems) {
    journal
        .project()
        .carried()
        .through()
        .ifPresent(
            through ->
                warn(
                    past,
                    session -> !session.date().isAfter(through),
                    "within the carried work, which goes through "
                        + through
                        + "; make sure that nothing is counted twice",
                    problems));
    ofDaysToCome(past, today, problems);
    long unsorted = past.sessions().stream().filter(PastWarnings::isUnsorted).count();
    if (unsorted > 0) {
      problems.warning(
          Place.of(past.file()),
          Saying.counted(unsorted, "session names", "sessions name")
              + " no phase and will count under unsorted; give one to all of them with --phase"
              + " \"="
              + journal.phases().stream().findFirst().map(p -> p.id()).orElse("planking")
              + "\"");
    }
  }

  /** Of sessions that are to be carried. */
  static void ofCarried(
      Journal journal, Past past, LocalDate through, LocalDate today, Problems problems) {
    List<Entry> within =
        journal.entries().stream().filter(entry -> !entry.date().isAfter(through)).toList();
    if (!within.isEmpty()) {
      problems.warning(
          Place.of(JournalFolder.PROJECT),
          Saying.counted(within.size(), "entry", "entries")
              + ", the first of them "
              + within.get(0).file()
              + ", would be within the carried work, which would go through "
              + through
              + "; make sure that nothing is counted twice");
    }
    ofDaysToCome(past, today, problems);
  }

  private static boolean isUnsorted(PastSession session) {
    return session.phase().isEmpty() && !(session.hours().isZero() && session.cost().isZero());
  }

  private static void ofDaysToCome(Past past, LocalDate today, Problems problems) {
    warn(
        past,
        session -> session.date().isAfter(today),
        "in the future, today is " + today + "; check the dates",
        problems);
  }

  private static void warn(
      Past past, Predicate<PastSession> which, String what, Problems problems) {
    List<PastSession> found = past.sessions().stream().filter(which).toList();
    if (!found.isEmpty()) {
      problems.warning(
          found.get(0).at().place(),
          Saying.counted(found.size(), "session", "sessions")
              + ", the first of them of "
              + found.get(0).date()
              + (found.size() == 1 ? ", is " : ", are ")
              + what);
    }
  }
}
