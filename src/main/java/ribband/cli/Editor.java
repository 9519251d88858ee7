package ribband.cli;

import java.io.IOException;
import java.util.List;

/** Starts the builder's editor. */
@FunctionalInterface
interface Editor {
  /**
   * Runs it in this terminal and waits for its end.
   *
   * @param command the program, its arguments and the file
   * @return its exit code
   * @throws IOException where there is no such program
   */
  int run(List<String> command) throws IOException, InterruptedException;

  /** A process of its own, with this one's terminal. */
  static Editor process() {
    return command -> new ProcessBuilder(command).inheritIO().start().waitFor();
  }
}
