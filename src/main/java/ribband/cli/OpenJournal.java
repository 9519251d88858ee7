package ribband.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Stream;
import ribband.journal.Journal;
import ribband.journal.JournalFolder;
import ribband.journal.JournalReader;
import ribband.problem.OneLine;
import ribband.problem.Problem;
import ribband.problem.Problems;

/**
 * A journal found and read for a command, with all that is wrong in it.
 *
 * @param journal whole only where no problem is an error
 * @param entries how many there are, those that could not be read too
 * @param output where its site goes
 * @param problems in the order of their places
 */
record OpenJournal(Journal journal, int entries, Path output, List<Problem> problems) {
  /** The site's folder where none is named, in the journal's. */
  private static final String DEFAULT_OUTPUT = "site";

  OpenJournal {
    problems = List.copyOf(problems);
  }

  /**
   * Where a journal lies, not yet looked into.
   *
   * @param output where its site goes
   */
  record Found(Path root, Path output) {
    /**
     * Lists its files.
     *
     * @throws Refusal where the machine cannot say a name
     * @throws IOException where the disk fails
     */
    Listed list(Surroundings around) throws IOException {
      JournalFolder files = JournalFolder.list(root, output);
      refuseUnsayable(around, files.all());
      return new Listed(files, output);
    }
  }

  /** A journal listed, not yet read. */
  record Listed(JournalFolder files, Path output) {
    /** Reads its project alone. */
    OpenJournal readProject() {
      JournalReader.Read read = JournalReader.readProject(files);
      return new OpenJournal(read.journal(), read.entries(), output, read.problems());
    }

    /**
     * Reads it.
     *
     * @param today for warnings of dates in the future
     */
    OpenJournal read(LocalDate today) {
      JournalReader.Read read = JournalReader.read(files, today);
      return new OpenJournal(read.journal(), read.entries(), output, read.problems());
    }
  }

  /**
   * Finds a journal.
   *
   * @param folder as typed; empty for the nearest folder upward that holds a project
   * @param output as typed; empty for the default
   * @throws Refusal where there is no journal
   */
  static Found find(Surroundings around, Optional<String> folder, Optional<String> output) {
    Path root = folder.isPresent() ? named(around, folder.get()) : nearest(around);
    Path site = output.map(around::path).orElse(root.resolve(DEFAULT_OUTPUT));
    // What lies where the site goes is not read, so a file named by mistake would be missed.
    if (output.isPresent() && Files.exists(site) && !Files.isDirectory(site)) {
      throw Refusal.wrongUsage("the output " + site + " is not a folder; choose a folder");
    }
    return new Found(root, site);
  }

  /** The nearest journal upward, for what can do without one. */
  static Optional<Found> findNearest(Surroundings around) {
    return nearestUpward(around).map(root -> new Found(root, root.resolve(DEFAULT_OUTPUT)));
  }

  /** Finds and reads a journal whose site is of no concern. */
  static OpenJournal open(Surroundings around, Optional<String> folder, LocalDate today)
      throws IOException {
    return find(around, folder, Optional.empty()).list(around).read(today);
  }

  /** The same with more that is wrong. */
  OpenJournal with(Problems more) {
    Problems all = new Problems();
    all.addAll(problems);
    all.addAll(more.sorted());
    return new OpenJournal(journal, entries, output, all.sorted());
  }

  /** The same with some of what is wrong alone. */
  OpenJournal only(List<Problem> some) {
    return new OpenJournal(journal, entries, output, some);
  }

  private static Path named(Surroundings around, String typed) {
    Path folder = around.path(typed);
    String shown = OneLine.of(typed);
    if (!Files.isDirectory(folder)) {
      throw Refusal.wrongUsage(
          "there is no folder "
              + shown
              + "; begin a journal there with: ribband lay "
              + ShellWord.of(typed));
    }
    if (!holdsProject(folder)) {
      throw Refusal.wrongUsage(
          shown
              + " holds no project.yaml; begin a journal there with: ribband lay "
              + ShellWord.of(typed));
    }
    return folder;
  }

  private static Path nearest(Surroundings around) {
    return nearestUpward(around)
        .orElseThrow(
            () ->
                Refusal.wrongUsage(
                    "no project.yaml lies here or in a folder above; name the journal's folder, or"
                        + " begin one with: ribband lay my-boat"));
  }

  private static Optional<Path> nearestUpward(Surroundings around) {
    return Stream.iterate(around.here(), Objects::nonNull, Path::getParent)
        .filter(OpenJournal::holdsProject)
        .findFirst();
  }

  private static boolean holdsProject(Path folder) {
    return Files.isRegularFile(folder.resolve(JournalFolder.PROJECT));
  }

  /** Under a bare locale Java hears other letters than ASCII as this mark, and cannot open them. */
  private static void refuseUnsayable(Surroundings around, List<String> names) {
    boolean utf8 =
        around.nameEncoding().toUpperCase(Locale.ROOT).replace("-", "").startsWith("UTF8");
    if (!utf8) {
      List<String> unsayable = new ArrayList<>(names);
      unsayable.removeIf(name -> name.indexOf('\uFFFD') < 0);
      if (!unsayable.isEmpty()) {
        throw Refusal.surroundings(Failures.unsayable(unsayable.get(0)));
      }
    }
  }

  long errors() {
    return problems.stream().filter(Problem::isError).count();
  }

  long warnings() {
    return problems.size() - errors();
  }
}
