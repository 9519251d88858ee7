package ribband.desk;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Consumer;
import ribband.journal.Entry;
import ribband.journal.Journal;
import ribband.ledger.Ledger;
import ribband.ledger.Sums;
import ribband.measure.Name;
import ribband.measure.Unreadable;
import ribband.past.Past;
import ribband.past.PastSession;
import ribband.press.LoneFile;
import ribband.press.NewFiles;
import ribband.problem.Problems;
import ribband.prose.Body;
import ribband.prose.Prose;

/**
 * What bringing past sessions would add to a journal.
 *
 * @param entries to be written, in the order of their dates
 * @param already how many sessions the journal holds as they are, which are not brought again
 * @param before the journal's totals
 * @param brought what the entries add
 */
public record Bringing(List<BroughtEntry> entries, int already, Sums before, Sums brought) {
  public Bringing {
    entries = List.copyOf(entries);
  }

  /**
   * Plans it; nothing is written.
   *
   * @param today for warnings of days to come
   * @param problems is told of sessions that cannot be entries of this journal
   */
  public static Bringing plan(Journal journal, Past past, LocalDate today, Problems problems) {
    PastWarnings.ofEntries(journal, past, today, problems);
    return new Planner(journal, problems).plan(past);
  }

  public Sums after() {
    return before.plus(brought);
  }

  /**
   * Removes what a run that was killed left waiting beside a journal's entries.
   *
   * @throws IOException where the disk fails
   */
  public static void clear(Journal journal) throws IOException {
    Set<Path> folders = new TreeSet<>();
    for (Entry entry : journal.entries()) {
      folders.add(journal.folder().path(entry.file()).getParent());
    }
    for (Path folder : folders) {
      LoneFile.clear(folder);
    }
  }

  /**
   * Writes the entries one by one, each whole or not at all.
   *
   * @param each is told of every file that is there now
   * @throws FileAlreadyExistsException where a file has come in the way since
   * @throws IOException where the disk fails; what was written stays, and is not brought again
   */
  public void write(Path root, Consumer<Path> each) throws IOException {
    try (NewFiles files = new NewFiles()) {
      for (BroughtEntry entry : entries) {
        Path file = entry.file().file(root);
        files.write(file, entry.text().getBytes(StandardCharsets.UTF_8));
        each.accept(file);
      }
    }
  }

  /** Finds which sessions are new, and what they are to be called; one use. */
  private static final class Planner {
    private static final Prose PROSE = new Prose();

    private final Journal journal;
    private final Problems problems;
    private final NewNames names;
    private final Map<List<Object>, Integer> there = new HashMap<>();
    private final Map<String, Entry> byName = new HashMap<>();
    private final List<BroughtEntry> entries = new ArrayList<>();
    private Sums brought = Sums.NONE;
    private int already;

    Planner(Journal journal, Problems problems) {
      this.journal = journal;
      this.problems = problems;
      names = new NewNames(journal);
      for (Entry entry : journal.entries()) {
        there.merge(BroughtEntry.said(entry), 1, Integer::sum);
        byName.put(Name.plain(entry.address()), entry);
      }
    }

    Bringing plan(Past past) {
      for (PastSession session : past.sessions()) {
        String text = BroughtEntry.text(session, journal.project().currency());
        if (isThere(session, text)) {
          already++;
        } else if (isFree(session) && isReadable(session, text)) {
          entries.add(new BroughtEntry(file(session), session, text));
          brought = brought.plus(BroughtEntry.sums(session));
        }
      }
      return new Bringing(entries, already, Ledger.of(journal).whole(), brought);
    }

    /** A session is passed over only as often as the journal has it. */
    private boolean isThere(PastSession session, String text) {
      if (session.name().isPresent()) {
        Entry entry = byName.get(Name.plain(session.name().get()));
        return entry != null
            && entry.totalHours().equals(session.hours())
            && entry.totalCost().equals(session.cost());
      }
      List<Object> said = BroughtEntry.said(session, text);
      boolean found = there.getOrDefault(said, 0) > 0;
      if (found) {
        there.merge(said, -1, Integer::sum);
      }
      return found;
    }

    private boolean isFree(PastSession session) {
      String name = session.name().orElse("");
      if (names.isTaken(name)) {
        Unreadable why =
            new Unreadable(
                "is in the journal already, with other hours or another cost",
                "mend the one that is wrong, or give this one another name");
        problems.addAll(List.of(session.at().error(name, why)));
        return false;
      }
      return true;
    }

    /** What no journal takes, however it is written: a thousand brackets in a row. */
    private boolean isReadable(PastSession session, String text) {
      Problems found = new Problems();
      PROSE.read(new Body(session.at().file(), 1, BroughtEntry.words(text)), found);
      if (found.errors() > 0) {
        problems.error(
            session.at().place(),
            "the note of row " + session.at().row() + ": " + found.sorted().get(0).sentence());
      }
      return found.errors() == 0;
    }

    private NewEntry file(PastSession session) {
      LocalDate day = session.date();
      return session
          .name()
          .map(name -> names.named(day, name))
          .orElseGet(() -> names.free(day, session.phase().orElse("")));
    }
  }
}
