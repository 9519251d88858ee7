package ribband.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * Runs commands without a process, in a folder, on 1 June 2026, and looks after each whether the
 * journal is as it was.
 */
public final class InMemory {
  /**
   * @param out standard output
   * @param err standard error
   */
  public record Run(int code, String out, String err) {}

  static final Clock CLOCK =
      Clock.fixed(Instant.parse("2026-06-01T20:00:00Z"), ZoneId.of("America/Chicago"));

  /** The commands that add files, which may lie in the journal's folder. */
  private static final Set<String> ADDING = Set.of("lay", "tonight", "bring", "papers");

  private final Path folder;
  private Map<String, String> environment = Map.of();
  private Surroundings.Screen screen = Surroundings.Screen.NONE;
  private Clock clock = CLOCK;
  private Editor editor =
      command -> {
        throw new AssertionError("no editor was wanted: " + command);
      };

  public InMemory(Path folder) {
    this.folder = folder;
  }

  InMemory watched(Map<String, String> variables) {
    screen = Surroundings.Screen.TERMINAL;
    environment = variables;
    return this;
  }

  InMemory editor(Editor other) {
    editor = other;
    return this;
  }

  /** At a moment by the clock of the builder's machine. */
  public InMemory at(String local) {
    ZoneId zone = CLOCK.getZone();
    clock = Clock.fixed(LocalDateTime.parse(local).atZone(zone).toInstant(), zone);
    return this;
  }

  public InMemory with(String file, String text) throws IOException {
    Path path = folder.resolve(file);
    Files.createDirectories(path.getParent());
    Files.writeString(path, text, StandardCharsets.UTF_8);
    return this;
  }

  Surroundings surroundings(StringWriter out, StringWriter err) {
    return new Surroundings(
        new PrintWriter(out),
        new PrintWriter(err),
        screen,
        folder.toString(),
        clock,
        environment,
        "UTF-8",
        folder,
        editor);
  }

  /** Runs a command; nothing of the journal may have been touched by it. */
  public Run run(String... arguments) {
    return run(new StringWriter(), new StringWriter(), arguments);
  }

  /** Runs a command of which both streams go to one terminal: what it shows is the output. */
  public Run terminal(String... arguments) {
    StringWriter screen = new StringWriter();
    return run(screen, screen, arguments);
  }

  private Run run(StringWriter out, StringWriter err, String... arguments) {
    Map<String, String> before = state();
    int code = new Ribband(surroundings(out, err)).run(arguments);
    Map<String, String> after = state();
    if (arguments.length > 0 && ADDING.contains(arguments[0])) {
      // Files that were there stay as they are.
      after.keySet().retainAll(before.keySet());
    }
    // A folder that a publish made its site was none before.
    before.keySet().removeIf(path -> !after.containsKey(path) && isSite(path));
    assertEquals(before, after, () -> "the journal, after " + List.of(arguments));
    return new Run(code, out.toString(), err.toString());
  }

  private boolean isSite(String path) {
    return Files.exists(folder.resolve(path).resolve("site-files.txt"));
  }

  private Map<String, String> state() {
    try {
      return JournalState.of(folder);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
