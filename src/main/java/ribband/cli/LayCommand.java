package ribband.cli;

import java.io.IOException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;
import ribband.desk.NewJournal;
import ribband.journal.JournalFolder;
import ribband.problem.OneLine;

/** Begins a journal. */
@Command(
    name = "lay",
    header = "Begin a journal: a project to fill in and a first entry",
    description =
        "Makes the folder if it is not there, a commented project.yaml in it, and an entry dated"
            + " today. No file is ever written over.",
    footer = {"  ribband lay my-boat"})
final class LayCommand implements Callable<Integer> {
  private final Surroundings around;

  @Parameters(paramLabel = "DIR", description = "the journal's folder")
  private String folder;

  @Mixin private Common options;

  LayCommand(Surroundings around) {
    this.around = around;
  }

  @Override
  public Integer call() throws IOException {
    Path root = around.path(folder);
    List<Path> made;
    try {
      made = NewJournal.lay(root, options.today(around.clock()), around.clock().getZone());
    } catch (FileAlreadyExistsException e) {
      throw Refusal.wrongUsage(refusal(e));
    }
    for (Path file : made) {
      around
          .out()
          .println("made " + OneLine.of(Path.of(folder).resolve(root.relativize(file)).toString()));
    }
    if (!options.isQuiet()) {
      around.out().println("next: open them in any editor, then type");
      around.out().println("  ribband check " + ShellWord.of(folder));
    }
    return ExitCode.DONE;
  }

  private String refusal(FileAlreadyExistsException e) {
    String shown = OneLine.of(folder);
    return Path.of(e.getFile()).endsWith(JournalFolder.PROJECT)
        ? shown + " already holds a project.yaml, so a journal is there; nothing was changed"
        : shown + " cannot be made, because " + OneLine.of(e.getFile()) + " is a file";
  }
}
