package ribband.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import ribband.problem.OneLine;

/** Opens an entry in the builder's own editor, where a person watches and has named one. */
record EntryEditor(Surroundings around) {
  /** Waits until the editor ends; one that cannot be started is told, and costs nothing. */
  void open(Path file) throws InterruptedException {
    Optional<List<String>> editor = EditorWords.of(around.environment());
    if (!around.isWatched() || editor.isEmpty()) {
      return;
    }
    around.out().flush();
    around.err().flush();
    List<String> command = new ArrayList<>(editor.get());
    command.add(file.toString());
    try {
      int code = around.editor().run(command);
      if (code != 0) {
        around.err().println("the editor ended with " + code + "; the entry is as it was left");
      }
    } catch (IOException e) {
      around
          .err()
          .println(
              "the editor "
                  + OneLine.of(command.get(0))
                  + " cannot be started; set VISUAL to one that can, and open the entry by hand");
    }
  }
}
