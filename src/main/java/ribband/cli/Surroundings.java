package ribband.cli;

import java.io.BufferedOutputStream;
import java.io.Console;
import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.OutputStreamWriter;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Clock;
import java.util.Map;

/**
 * All that a command meets outside itself, so that it can run in memory.
 *
 * @param out for figures and results, in UTF-8 whatever the locale
 * @param err for problems and progress
 * @param folder the one it was started in, as Java hears its name
 * @param clock tells today, in the builder's time zone
 * @param environment variables
 * @param nameEncoding the charset in which Java hears file names
 * @param temporary the folder for a report of a defect
 * @param editor starts the builder's editor
 */
record Surroundings(
    PrintWriter out,
    PrintWriter err,
    Screen screen,
    String folder,
    Clock clock,
    Map<String, String> environment,
    String nameEncoding,
    Path temporary,
    Editor editor) {
  /** Whether a person watches. */
  enum Screen {
    TERMINAL,
    NONE
  }

  Surroundings {
    environment = Map.copyOf(environment);
  }

  static Surroundings ofThisMachine() {
    Map<String, String> environment = System.getenv();
    return new Surroundings(
        utf8(FileDescriptor.out),
        utf8(FileDescriptor.err),
        isTerminal(environment) ? Screen.TERMINAL : Screen.NONE,
        System.getProperty("user.dir"),
        Clock.systemDefaultZone(),
        environment,
        System.getProperty("sun.jnu.encoding", ""),
        Path.of(System.getProperty("java.io.tmpdir")),
        Editor.process());
  }

  /** Not {@code System.out}, which swallows a full disk and writes in the locale's charset. */
  private static PrintWriter utf8(FileDescriptor stream) {
    return new PrintWriter(
        new OutputStreamWriter(
            new BufferedOutputStream(new FileOutputStream(stream)), StandardCharsets.UTF_8));
  }

  private static boolean isTerminal(Map<String, String> environment) {
    Console console = System.console();
    return console != null
        && saysSoItself(console)
        && !"dumb".equals(environment.get("TERM"))
        && !environment.containsKey("CI");
  }

  /** From Java 22 on there is always a console, which tells whether it is a terminal. */
  private static boolean saysSoItself(Console console) {
    try {
      return (boolean) Console.class.getMethod("isTerminal").invoke(console);
    } catch (NoSuchMethodException e) {
      return true;
    } catch (ReflectiveOperationException e) {
      return false;
    }
  }

  /**
   * The folder that relative paths start from. Not {@code Path.of("")}, which is another folder
   * without a word where this machine's locale cannot say the name.
   *
   * @throws java.nio.file.InvalidPathException there
   */
  Path here() {
    return Path.of(folder);
  }

  /** A path as typed. */
  Path path(String typed) {
    Path path = Path.of(typed);
    return path.isAbsolute() ? path : here().resolve(path);
  }

  boolean isWatched() {
    return screen == Screen.TERMINAL;
  }

  /** Whether colours are wanted where no option says so. */
  boolean wantsColor() {
    boolean refused = !environment.getOrDefault("NO_COLOR", "").isEmpty();
    boolean forced = !environment.getOrDefault("FORCE_COLOR", "").isEmpty();
    return !refused && (forced || isWatched());
  }
}
