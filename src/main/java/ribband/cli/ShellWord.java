package ribband.cli;

import ribband.problem.OneLine;

/** Writes a name so that it can be typed into a shell. */
final class ShellWord {
  private ShellWord() {}

  static String of(String name) {
    String line = OneLine.of(name);
    return line.matches("[\\p{L}\\p{N}_./~+-]+") ? line : "'" + line.replace("'", "'\\''") + "'";
  }
}
