package ribband.cli;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import picocli.AutoComplete;
import picocli.CommandLine.Model.CommandSpec;

/** Writes what a system keeps about a command besides the program; run when a package is made. */
public final class HelpFiles {
  private HelpFiles() {}

  /**
   * Writes the manual page and the completion for shells, each where systems look for it.
   *
   * @param args the folder that stands for {@code /usr/share}, and the day the manual is dated
   */
  public static void main(String[] args) throws IOException {
    CommandSpec model = Ribband.model();
    Path share = Path.of(args[0]);
    // A moment's first ten letters are its day.
    LocalDate day = LocalDate.parse(args[1].substring(0, 10));
    write(share.resolve("man/man1/ribband.1"), ManualPage.of(model, day));
    write(share.resolve("bash-completion/completions/ribband"), completion(model));
  }

  /** A script for bash, which zsh takes as well. */
  static String completion(CommandSpec model) {
    return AutoComplete.bash(model.name(), model.commandLine());
  }

  private static void write(Path file, String text) throws IOException {
    Files.createDirectories(file.getParent());
    Files.writeString(file, text, StandardCharsets.UTF_8);
  }
}
