package ribband.cli;

import java.io.IOException;
import java.io.InputStream;
import java.io.PrintWriter;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import ribband.desk.Bringing;
import ribband.desk.CarriedBlock;
import ribband.desk.ReadBack;
import ribband.journal.Journal;
import ribband.measure.Saying;
import ribband.past.Asked;
import ribband.past.Past;
import ribband.past.PastReader;
import ribband.problem.OneLine;
import ribband.problem.Problem;
import ribband.problem.Problems;

/** Turns a spreadsheet of past sessions into entries, or into work carried in. */
@Command(
    name = "bring",
    header = "Bring in a spreadsheet of past sessions",
    description =
        "Reads a CSV file with a row for each session: its date, hours, phase, cost and a note,"
            + " under headings in plain words. Tells the totals before and after; nothing is"
            + " written until --write, and no file is ever written over. What the journal holds"
            + " already is not brought again.",
    footer = {
      "  ribband bring past.csv                          what would come of it",
      "  ribband bring past.csv --column hours=B         where a heading does not tell",
      "  ribband bring past.csv --phase \"hull=planking\"  where a phase has another name",
      "  ribband bring past.csv --write                  write the entries",
      "  ribband bring past.csv --carried                sums for project.yaml instead"
    })
final class BringCommand implements Callable<Integer> {
  private static final int MOST_TOLD = 100;

  private final Surroundings around;

  @Parameters(index = "0", paramLabel = "FILE.csv", description = "the spreadsheet, saved as CSV")
  private String file;

  @Mixin private JournalArgument journal;
  @Mixin private BringOptions how;

  @Option(
      names = "--carried",
      description =
          "print the sums as the carried block of project.yaml, for work not to be entries")
  private boolean carried;

  @Option(names = "--write", description = "write the entries")
  private boolean write;

  @Mixin private FormatOption format;
  @Mixin private Common options;

  BringCommand(Surroundings around) {
    this.around = around;
  }

  @Override
  public Integer call() throws IOException, InterruptedException {
    Format shown = format.read();
    Asked asked = how.read();
    if (carried && write) {
      throw Refusal.wrongUsage(
          "--carried prints a block to paste and writes no entries; leave out --write or --carried");
    }
    byte[] bytes = bytes();
    Journal read = SoundJournal.read(around, journal, options);
    Past past = PastReader.read(file, bytes, asked, read.project(), read.phases());
    return carried ? carry(read, past) : bring(read, past, shown);
  }

  private byte[] bytes() throws IOException {
    Path path = around.path(file);
    if (!Files.isRegularFile(path)) {
      throw Refusal.wrongUsage(
          OneLine.of(file)
              + (Files.exists(path) ? " is no plain file" : " is not there")
              + "; name a spreadsheet saved as CSV");
    }
    try (InputStream in = Files.newInputStream(path)) {
      // One more than is read, so that a file which is too large is known as one.
      return in.readNBytes(PastReader.MOST_BYTES + 1);
    }
  }

  private int carry(Journal read, Past past) throws IOException {
    Problems problems = problems(past);
    CarriedBlock block = CarriedBlock.of(read, past, options.today(around.clock()), problems);
    requireSound(problems);
    BringText text = new BringText(around.err(), read);
    if (!options.isQuiet()) {
      text.tellReading(past);
      text.tellTotals(block.before(), block.brought());
      around.err().println("in project.yaml, in place of any carried that is there:");
    }
    around.out().print(block.yaml());
    return ExitCode.DONE;
  }

  private int bring(Journal read, Past past, Format shown) throws IOException {
    LocalDate today = options.today(around.clock());
    Problems problems = problems(past);
    Bringing bringing = Bringing.plan(read, past, today, problems);
    requireSound(problems);
    // Other programs get the table alone.
    PrintWriter out = shown == Format.TABLE ? around.out() : around.err();
    BringText text = new BringText(out, read);
    if (!options.isQuiet()) {
      text.tellReading(past);
    }
    if (shown == Format.TABLE) {
      text.tellTotals(bringing.before(), bringing.brought());
    } else {
      shown.print(BringSheet.of(read, bringing.before(), bringing.brought()), around.out());
    }
    text.tellFiles(bringing);
    if (write) {
      Bringing.clear(read);
    }
    if (bringing.entries().isEmpty()) {
      return ExitCode.DONE;
    }
    if (!write) {
      out.println("nothing is written yet; add --write");
      return ExitCode.DONE;
    }
    write(read, bringing);
    out.println(readBack(read, bringing));
    return ExitCode.DONE;
  }

  /** Nothing is reckoned from a sheet with errors, so they are told first. */
  private Problems problems(Past past) {
    Problems problems = new Problems();
    problems.addAll(past.problems());
    if (!past.isSound()) {
      requireSound(problems);
    }
    return problems;
  }

  private void requireSound(Problems problems) {
    List<Problem> all = problems.sorted();
    new ProblemTeller(around, options).tell(all.subList(0, Math.min(MOST_TOLD, all.size())));
    if (all.size() > MOST_TOLD) {
      around.err().println("and " + (all.size() - MOST_TOLD) + " more");
    }
    if (problems.errors() > 0) {
      around
          .err()
          .println(
              Saying.counted(problems.errors(), "error", "errors")
                  + " in "
                  + OneLine.of(file)
                  + ", nothing was written");
      throw Refusal.journalHasErrors();
    }
  }

  private void write(Journal read, Bringing bringing) throws IOException {
    List<Path> written = new ArrayList<>();
    try {
      bringing.write(read.folder().root(), written::add);
    } catch (IOException e) {
      around
          .err()
          .println(
              written.size()
                  + " of "
                  + Saying.counted(bringing.entries().size(), "entry", "entries")
                  + " were written; the same command brings the rest");
      if (e instanceof FileAlreadyExistsException there) {
        throw Refusal.surroundings(there.getFile() + " has come there since");
      }
      throw e;
    }
  }

  /** What was told is what the journal now says, or someone changed it, or we are at fault. */
  private String readBack(Journal before, Bringing bringing) throws IOException {
    OpenJournal again = OpenJournal.open(around, journal.folder(), options.today(around.clock()));
    ReadBack back = ReadBack.of(bringing, before, again.journal());
    if (back.unlike().isEmpty() && back.addsUp() && again.errors() == 0) {
      return "written, and the journal adds up to what stands above";
    }
    if (back.isUntouched()) {
      throw new IllegalStateException(
          "told " + bringing.after() + ", but read back " + back + " and " + again.problems());
    }
    if (back.unlike().isEmpty()) {
      return "written; the journal was changed meanwhile, so its totals are not those above";
    }
    throw Refusal.surroundings(
        OneLine.of(back.unlike().get(0).file().path())
            + " was written, but the journal was changed meanwhile and does not say the same; see"
            + " ribband check");
  }
}
