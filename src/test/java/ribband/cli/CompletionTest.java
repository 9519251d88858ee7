package ribband.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import picocli.CommandLine;
import picocli.CommandLine.Model.CommandSpec;

/** What bash offers at the tab key, asked of a real bash. */
class CompletionTest {
  /** Loads the script, then answers each line typed with a line of what is offered. */
  private static final String ASK =
      """
      # Bash has it only while a key is pressed.
      compopt() { :; }
      . "$1"
      while IFS= read -r line; do
        read -ra COMP_WORDS <<<"$line"
        [[ $line != *" " ]] || COMP_WORDS+=("")
        COMP_CWORD=$((${#COMP_WORDS[@]} - 1)) COMP_LINE=$line COMP_POINT=${#line} COMPREPLY=()
        _complete_ribband
        echo "${COMPREPLY[*]}"
      done
      """;

  @TempDir Path folder;

  private List<String> offered(List<String> typed) throws IOException, InterruptedException {
    assumeTrue(Files.isExecutable(Path.of("/bin/bash")), "there is no bash");
    Path script = folder.resolve("completion");
    Files.writeString(script, HelpFiles.completion(Ribband.model()), StandardCharsets.UTF_8);
    Path lines = folder.resolve("typed");
    Files.write(lines, typed, StandardCharsets.UTF_8);
    Process bash =
        new ProcessBuilder("/bin/bash", "--norc", "-c", ASK, "bash", script.toString())
            .redirectInput(lines.toFile())
            .redirectErrorStream(true)
            .start();
    List<String> answers =
        new String(bash.getInputStream().readAllBytes(), StandardCharsets.UTF_8).lines().toList();
    assertEquals(0, bash.waitFor());
    return answers;
  }

  @Test
  void theBeginningOfACommandOrAnOptionIsCompleted() throws Exception {
    assertEquals(
        List.of("publish", "tonight tally", "--from --format", "lay", ""),
        offered(
            List.of(
                "ribband pub",
                "ribband t",
                "ribband tally --f",
                "ribband la",
                "ribband nothing-begins-so")));
  }

  @Test
  void everyCommandAndEveryOptionIsOffered() throws Exception {
    CommandSpec model = Ribband.model();
    List<String> typed = new ArrayList<>(List.of("ribband "));
    List<Set<String>> wanted =
        new ArrayList<>(List.of(new TreeSet<>(model.subcommands().keySet())));
    for (CommandLine command : model.subcommands().values()) {
      typed.add("ribband " + command.getCommandName() + " -");
      wanted.add(new TreeSet<>(command.getCommandSpec().optionsMap().keySet()));
    }
    List<Set<String>> offered = new ArrayList<>();
    for (String line : offered(typed)) {
      offered.add(new TreeSet<>(List.of(line.split(" "))));
    }
    assertEquals(wanted, offered);
    assertTrue(offered.size() >= 15);
  }
}
