package ribband.cli;

import java.io.IOException;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
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

  @Mixin private JournalArgument journal;
  @Mixin private FormatOption format;

  @Mixin private Common options;

  CheckCommand(Surroundings around) {
    this.around = around;
  }

  @Override
  public Integer call() throws IOException, InterruptedException {
    Format how = format.read();
    ProblemTeller teller = new ProblemTeller(around, options);
    OpenJournal open = inspected();
    if (how != Format.TABLE) {
      how.print(sheet(open), around.out());
      return open.errors() > 0 ? ExitCode.JOURNAL_HAS_ERRORS : ExitCode.DONE;
    }
    if (open.errors() > 0) {
      teller.requireSound(open, "");
    }
    teller.tell(open);
    around.out().println(verdict(open));
    return ExitCode.DONE;
  }

  private OpenJournal inspected() throws IOException, InterruptedException {
    OpenJournal open = OpenJournal.open(around, journal.folder(), options.today(around.clock()));
    return Inspection.whole(open, around.clock().instant(), new PictureCounter(around, options))
        .open();
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
