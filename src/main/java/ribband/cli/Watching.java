package ribband.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.BasicFileAttributes;
import java.time.LocalTime;
import java.time.format.DateTimeFormatter;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import ribband.journal.JournalFolder;
import ribband.memory.TreeState;
import ribband.press.PressBusy;
import ribband.preview.Lookout;
import ribband.preview.Preview;
import ribband.preview.Trouble;
import ribband.problem.OneLine;

/**
 * What {@code watch} does at each change: publishes, tells the terminal and the open pages how it
 * went, and goes on whatever it was.
 */
final class Watching implements Lookout.Work {
  private static final DateTimeFormatter TIME =
      DateTimeFormatter.ofPattern("HH:mm:ss", Locale.ROOT);

  private final Surroundings around;
  private final Common options;
  private final OpenJournal.Found found;
  private final Preview preview;
  private final Failures failures;
  private final ProblemTeller teller;
  private final Publishing publishing;

  /** What the publish under way found in the journal, as far as it came. */
  private Optional<OpenJournal> heard = Optional.empty();

  /** What the terminal and the pages were told last. */
  private List<Trouble> told = List.of();

  /** The other runs that the terminal was told of. */
  private final Set<String> waitedFor = new HashSet<>();

  /** The state that the last look found, and the folders that it saw. */
  private String seen = "";

  private Set<Path> folders = Set.of();
  private boolean isUnderWay;
  private String siteFiles = "";

  /**
   * @param version the program's
   */
  Watching(
      Surroundings around,
      String version,
      Common options,
      OpenJournal.Found found,
      Preview preview) {
    this.around = around;
    this.options = options;
    this.found = found;
    this.preview = preview;
    this.failures = new Failures(around, version);
    this.teller = new ProblemTeller(around, options);
    this.publishing =
        new Publishing(around, version, new PictureCounter(around, options), this::hear);
  }

  private void hear(OpenJournal open) {
    heard = Optional.of(open);
    if (open.errors() > 0) {
      throw Refusal.journalHasErrors();
    }
  }

  @Override
  public String look() {
    try {
      JournalFolder files = found.list(around).files();
      String state = files.state();
      if (!state.equals(seen)) {
        folders = foldersOf(files);
        seen = state;
      }
      return state;
    } catch (IOException | RuntimeException e) {
      // The publish will meet the same, and tells it.
      return e.toString();
    }
  }

  private static Set<Path> foldersOf(JournalFolder files) {
    Set<Path> folders = new HashSet<>(Set.of(files.root()));
    for (String file : files.all()) {
      folders.add(files.path(file).getParent());
    }
    return folders;
  }

  @Override
  public Set<Path> folders() {
    return folders;
  }

  @Override
  public boolean stands() {
    return siteFiles.equals(siteFiles());
  }

  /** The list of the site's files, as it is on the disk, in one short text. */
  private String siteFiles() {
    Path list = found.output().resolve(JournalFolder.SITE_FILES);
    try {
      BasicFileAttributes file = Files.readAttributes(list, BasicFileAttributes.class);
      return file.size() + " " + TreeState.nanos(file);
    } catch (IOException e) {
      return "";
    }
  }

  @Override
  public Lookout.Outcome publish() throws InterruptedException {
    heard = Optional.empty();
    try {
      Publishing.Done done = publishing.publish(found, options.today(around.clock()));
      tellDone(done);
      return Lookout.Outcome.SETTLED;
    } catch (PressBusy e) {
      tellBusy(e);
      return Lookout.Outcome.TRY_AGAIN;
    } catch (IOException | RuntimeException | Error e) {
      Failures.Told failure = failures.told(e, List.of("watch"));
      if (failure.exitCode() == ExitCode.WRONG_USAGE && !isUnderWay) {
        throw Refusal.wrongUsage(failure.lines());
      }
      return tellFailure(failure);
    } finally {
      isUnderWay = true;
      siteFiles = siteFiles();
      around.out().flush();
      around.err().flush();
    }
  }

  private void tellDone(Publishing.Done done) {
    List<Trouble> troubles = troubles();
    boolean mended = !told.isEmpty() && troubles.isEmpty();
    if (!troubles.equals(told)) {
      heard.ifPresent(teller::tell);
    }
    done.left().forEach(around.err()::println);
    around.out().println(time() + done.told() + (mended ? "; all is mended" : warned()));
    show(troubles);
  }

  private String warned() {
    return heard
        .filter(open -> open.warnings() > 0 && !options.isQuiet())
        .map(open -> "; " + ProblemTeller.count(open))
        .orElse("");
  }

  private Lookout.Outcome tellFailure(Failures.Told failure) {
    boolean inJournal = failure.exitCode() == ExitCode.JOURNAL_HAS_ERRORS;
    List<Trouble> troubles =
        inJournal ? troubles() : failure.lines().stream().map(Trouble::outside).toList();
    boolean isNew = !troubles.equals(told);
    if (inJournal) {
      if (isNew) {
        heard.ifPresent(teller::tell);
      }
      heard.ifPresent(
          open ->
              around
                  .err()
                  .println(time() + ProblemTeller.count(open) + ", the site stays as it is"));
    } else if (isNew) {
      failure.lines().forEach(line -> around.err().println(time() + line));
    }
    show(troubles);
    // A journal that has errors is as it is until it changes; so is a defect.
    boolean mayPass =
        failure.exitCode() == ExitCode.SURROUNDINGS || failure.exitCode() == ExitCode.WRONG_USAGE;
    return mayPass ? Lookout.Outcome.TRY_AGAIN : Lookout.Outcome.SETTLED;
  }

  /** Two that watch one journal meet at each save: the terminal hears of it once. */
  private void tellBusy(PressBusy busy) {
    String sentence = busy.who() + "; it is waited for";
    List<Trouble> troubles = List.of(Trouble.outside(sentence));
    if (waitedFor.add(sentence)) {
      around.err().println(time() + OneLine.of(sentence));
      told = troubles;
    }
    preview.show(troubles);
  }

  private List<Trouble> troubles() {
    return heard.map(open -> open.problems().stream().map(Trouble::of).toList()).orElse(List.of());
  }

  private void show(List<Trouble> troubles) {
    told = troubles;
    preview.show(troubles);
  }

  private String time() {
    return LocalTime.now(around.clock()).format(TIME) + "  ";
  }
}
