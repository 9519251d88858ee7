package ribband.cli;

import java.io.IOException;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import ribband.ledger.Cell;
import ribband.ledger.Cell.Blank;
import ribband.ledger.Cell.Count;
import ribband.ledger.Cell.Words;
import ribband.ledger.Sheet;
import ribband.measure.Saying;
import ribband.problem.Place;
import ribband.problem.Problem;

/** Tells all that is wrong in a journal. */
@Command(
    name = "check",
    header = "Tell every mistake in a journal, and what to write instead",
    description =
        "Reads the whole journal and changes nothing. Each mistake is one line, with its file, line"
            + " and column. Errors stop all figures and the site; warnings do not.",
    footer = {
      "  ribband check                         the journal you are in",
      "  ribband check my-boat --format json   for an editor or a script"
    })
final class CheckCommand implements Callable<Integer> {
  private final Surroundings around;

  @Parameters(
      paramLabel = "JOURNAL",
      arity = "0..1",
      description = "its folder; without it the nearest one upward with a project.yaml")
  private String folder;

  @Option(
      names = "--format",
      paramLabel = "HOW",
      defaultValue = "table",
      description = Format.NAMES)
  private String format;

  @Mixin private Common options;

  CheckCommand(Surroundings around) {
    this.around = around;
  }

  @Override
  public Integer call() throws IOException, InterruptedException {
    Format how = Format.read(format);
    ProblemTeller teller = new ProblemTeller(around, options);
    OpenJournal journal = inspected();
    if (how != Format.TABLE) {
      how.print(sheet(journal), around.out());
      return journal.errors() > 0 ? ExitCode.JOURNAL_HAS_ERRORS : ExitCode.DONE;
    }
    if (journal.errors() > 0) {
      teller.requireSound(journal, "");
    }
    teller.tell(journal);
    around.out().println(verdict(journal));
    return ExitCode.DONE;
  }

  private OpenJournal inspected() throws IOException, InterruptedException {
    OpenJournal open =
        OpenJournal.open(around, Optional.ofNullable(folder), options.today(around.clock()));
    return Inspection.whole(open, around.clock().instant(), new PictureCounter(around, options));
  }

  private static String verdict(OpenJournal journal) {
    String warnings =
        journal.warnings() == 0
            ? "no warnings"
            : Saying.counted(journal.warnings(), "warning", "warnings");
    return ProblemTeller.entries(journal) + ", no errors, " + warnings;
  }

  private static Sheet sheet(OpenJournal journal) {
    return Sheet.of(
        List.of("file", "line", "column", "severity", "sentence"),
        journal.problems().stream().map(CheckCommand::row).toList());
  }

  private static List<Cell> row(Problem problem) {
    Place place = problem.place();
    return List.of(
        Words.of(place.file()),
        known(place.line()),
        known(place.column()),
        Words.of(problem.severity().toString()),
        Words.of(problem.sentence()));
  }

  private static Cell known(int number) {
    return number == 0 ? new Blank() : new Count(number);
  }
}
