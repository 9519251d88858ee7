package ribband.joints;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import ribband.journal.Entry;
import ribband.journal.Journal;
import ribband.journal.JournalFolder;
import ribband.measure.Dates;
import ribband.measure.Saying;
import ribband.measure.Unreadable;
import ribband.problem.Problem;

/** Names what could not be read and may hold something soft, so that nobody relies on silence. */
final class Doubts {
  /** Longer than most adhesives take to cure. */
  private static final int DAYS = 8;

  private static final int MOST = 5;

  /** The last name of a path that begins with a date, of its last two. */
  private static final Pattern DATED =
      Pattern.compile(
          "(?:.*/)?([0-9]{4}-[0-9]{2}-[0-9]{2})(?![0-9])[^/]*(?:/[^/]*)?", Pattern.DOTALL);

  private final Journal journal;
  private final Set<String> wrong;

  private Doubts(Journal journal, List<Problem> problems) {
    this.journal = journal;
    this.wrong =
        problems.stream()
            .filter(Problem::isError)
            .map(problem -> problem.place().file())
            .collect(Collectors.toCollection(TreeSet::new));
  }

  /**
   * A sentence each; none where all was read.
   *
   * @param night the last of the days whose entries matter
   */
  static List<String> of(Journal journal, List<Problem> problems, LocalDate night) {
    Doubts doubts = new Doubts(journal, problems);
    List<String> told = new ArrayList<>(doubts.project());
    told.addAll(doubts.entries(night.minusDays(DAYS)));
    return told;
  }

  private List<String> project() {
    if (!wrong.contains(JournalFolder.PROJECT)) {
      return List.of();
    }
    boolean isNoneKnown = journal.project().adhesives().isEmpty();
    return List.of(
        JournalFolder.PROJECT
            + " has errors: times of adhesives "
            + (isNoneKnown ? "are not known" : "may not all be known"));
  }

  private List<String> entries(LocalDate first) {
    Set<String> read =
        journal.entries().stream().map(Entry::file).collect(Collectors.toUnmodifiableSet());
    List<String> files =
        wrong.stream()
            .filter(file -> !file.equals(JournalFolder.PROJECT))
            .filter(file -> date(file).filter(day -> day.isBefore(first)).isEmpty())
            .toList();
    List<String> told = new ArrayList<>();
    files.stream()
        .limit(MOST)
        .forEach(
            file ->
                told.add(
                    file
                        + " has errors: what it glued "
                        + (read.contains(file)
                            ? "may not all be known here"
                            : "is not known here")));
    if (files.size() > MOST) {
      told.add("and " + Saying.counted(files.size() - MOST, "entry", "entries") + " more");
    }
    return told;
  }

  /** By its name, else its folder's; an entry whose date cannot be read may be of these days. */
  private static Optional<LocalDate> date(String file) {
    Matcher dated = DATED.matcher(file);
    try {
      return dated.matches() ? Optional.of(Dates.readDay(dated.group(1))) : Optional.empty();
    } catch (Unreadable e) {
      return Optional.empty();
    }
  }
}
