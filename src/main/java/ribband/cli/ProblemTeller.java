package ribband.cli;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.util.List;
import java.util.Optional;
import picocli.CommandLine.Help.Ansi;
import ribband.journal.JournalFolder;
import ribband.measure.Saying;
import ribband.problem.OneLine;
import ribband.problem.Place;
import ribband.problem.Problem;

/** Tells the problems of a journal, one a line, with the line at fault where a person watches. */
final class ProblemTeller {
  private static final int WIDEST = 72;
  private static final String INDENT = "    ";

  private final Surroundings around;
  private final boolean quiet;
  private final Ansi ansi;

  ProblemTeller(Surroundings around, Common options) {
    this.around = around;
    this.quiet = options.isQuiet();
    this.ansi = options.isColored(around) ? Ansi.ON : Ansi.OFF;
  }

  /**
   * Tells all problems and, where there are any, how many.
   *
   * @param otherwise what did not happen because of errors: {@code ", nothing was published"}
   * @throws Refusal where one is an error
   */
  void requireSound(OpenJournal journal, String otherwise) {
    tell(journal);
    if (journal.errors() > 0) {
      around.err().println(count(journal) + otherwise);
      throw Refusal.journalHasErrors();
    }
    if (journal.warnings() > 0 && !quiet) {
      around.err().println(count(journal));
    }
  }

  /** Tells the problems alone. */
  void tell(OpenJournal journal) {
    for (Problem problem : journal.problems()) {
      if (problem.isError() || !quiet) {
        around.err().println(line(problem));
        if (around.isWatched()) {
          fault(journal.journal().folder(), problem.place()).forEach(around.err()::println);
        }
      }
    }
  }

  /** Tells problems of a file that is none of the journal's. */
  void tell(List<Problem> problems) {
    problems.stream()
        .filter(problem -> problem.isError() || !quiet)
        .map(this::line)
        .forEach(around.err()::println);
  }

  /** {@code 3 errors, 1 warning in 120 entries}. */
  static String count(OpenJournal journal) {
    String warnings = Saying.counted(journal.warnings(), "warning", "warnings");
    String errors = Saying.counted(journal.errors(), "error", "errors");
    String found =
        journal.errors() == 0
            ? warnings
            : journal.warnings() == 0 ? errors : errors + ", " + warnings;
    return found + " in " + entries(journal);
  }

  static String entries(OpenJournal journal) {
    return Saying.counted(journal.entries(), "entry", "entries");
  }

  private String line(Problem problem) {
    if (!ansi.enabled()) {
      return problem.toString();
    }
    String style = problem.isError() ? "bold,red" : "bold,yellow";
    String word = ansi.string("@|" + style + " " + problem.severity() + "|@");
    return OneLine.of(problem.place().toString()) + ": " + word + ": " + problem.sentence();
  }

  private static List<String> fault(JournalFolder folder, Place place) {
    if (place.line() == 0 || place.column() == 0) {
      return List.of();
    }
    return sourceLine(folder, place).map(line -> marked(line, place.column())).orElse(List.of());
  }

  private static Optional<String> sourceLine(JournalFolder folder, Place place) {
    try {
      byte[] bytes = Files.readAllBytes(folder.path(place.file()));
      String text = new String(bytes, StandardCharsets.UTF_8).replace("\uFEFF", "");
      return text.lines().skip(place.line() - 1L).findFirst();
    } catch (IOException e) {
      // The problem itself is told; its source is a courtesy.
      return Optional.empty();
    }
  }

  private static List<String> marked(String line, int column) {
    int[] points = line.codePoints().toArray();
    int at = Math.min(column - 1, points.length);
    int start = at < WIDEST ? 0 : at - WIDEST / 2;
    int end = Math.min(points.length, start + WIDEST);
    StringBuilder shown = new StringBuilder(INDENT);
    for (int i = start; i < end; i++) {
      shown.appendCodePoint(Character.getType(points[i]) == Character.CONTROL ? ' ' : points[i]);
    }
    return List.of(OneLine.of(shown.toString()), INDENT + " ".repeat(at - start) + "^");
  }
}
