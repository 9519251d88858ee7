package ribband.documents;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import ribband.cli.InMemory;

/** Where the examples of one document are run, one after another; tells what each should be. */
final class Yard {
  private static final Pattern WORD = Pattern.compile("\"([^\"]*)\"|'([^']*)'|(\\S+)");
  private static final Pattern COMMAND = Pattern.compile("(?:\\S*/)?ribband (.*)");
  private static final Pattern SECONDS =
      Pattern.compile("(?<= in )[0-9]+\\.[0-9](?= s$)", Pattern.MULTILINE);
  private static final String HOME = "/home/you";
  private static final String PROMPT = "$ ";
  private static final String REST = "...\n";

  private final Path folder;
  private final Path boat;
  private final Path home;
  private final Set<Elsewhere> elsewhere = EnumSet.noneOf(Elsewhere.class);
  private String moment = "2026-06-01T15:00";

  /**
   * @param folder where commands are typed
   * @param boat where the files that a document shows lie
   * @param home what {@code ~} stands for
   */
  Yard(Path folder, Path boat, Path home) {
    this.folder = folder;
    this.boat = boat;
    this.home = home;
  }

  Yard at(String local) {
    moment = local;
    return this;
  }

  /** Which examples were left to others. */
  Set<Elsewhere> elsewhere() {
    return elsewhere;
  }

  /** Runs an example; what it would be if it were written now. */
  String run(Example example) throws Exception {
    String what = (example.kind() + " " + example.name()).strip();
    if (isElsewhere(example, what)) {
      return example.content();
    }
    return switch (example.kind()) {
      case "console" -> console(example);
      case "sh" -> commands(example);
      case "yaml", "markdown", "csv", "text" -> file(example);
      default -> throw new AssertionError(example + ": nothing runs such a block");
    };
  }

  private boolean isElsewhere(Example example, String what) {
    Optional<Elsewhere> other = Elsewhere.of(example.document().toString(), what);
    other.ifPresent(elsewhere::add);
    return other.isPresent();
  }

  /** Commands of a terminal, each with all that it tells below it. */
  private String console(Example example) throws Exception {
    if (example.name().equals("watch")) {
      return WatchedWeek.run(folder, boat, example.content());
    }
    if (!example.name().isEmpty()) {
      at(example.name());
    }
    StringBuilder told = new StringBuilder();
    for (String part : example.content().split("(?m)^(?=\\$ )")) {
      int end = part.indexOf('\n');
      String line = part.substring(PROMPT.length(), end);
      String shown = part.substring(end + 1);
      if (line.startsWith("grep ")) {
        told.append(PROMPT).append(line).append('\n').append(search(line));
        continue;
      }
      InMemory.Run run = ribband(example, line);
      boolean hasError = shown.lines().anyMatch(said -> said.contains(": error: "));
      assertEquals(hasError ? 1 : 0, run.code(), example + ": " + line + "\n" + run.out());
      told.append(PROMPT).append(line).append('\n').append(asShown(shown, run.out()));
    }
    return told.toString();
  }

  /** What is found in files; nothing is an answer too. */
  private String search(String line) throws IOException, InterruptedException {
    Process shell =
        new ProcessBuilder("sh", "-c", line)
            .directory(folder.toFile())
            .redirectErrorStream(true)
            .start();
    String found = new String(shell.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
    assertTrue(shell.waitFor() < 2, line + ": " + found);
    return found;
  }

  /** Three dots stand for the rest; how long it took is another time another time. */
  private String asShown(String shown, String told) {
    String now = told.replace(folder.toString(), HOME);
    long lines = shown.lines().count() - 1;
    if (shown.endsWith(REST) && lines < now.lines().count()) {
      now = String.join("\n", now.lines().limit(lines).toList()) + "\n" + REST;
    }
    return SECONDS.matcher(now).replaceAll("").equals(SECONDS.matcher(shown).replaceAll(""))
        ? shown
        : now;
  }

  private String commands(Example example) {
    for (String line : example.commands()) {
      if (!isElsewhere(example, line)) {
        InMemory.Run run = ribband(example, line);
        assertEquals(0, run.code(), example + ": " + line + "\n" + run.out());
      }
    }
    return example.content();
  }

  private InMemory.Run ribband(Example example, String line) {
    Matcher command = COMMAND.matcher(line);
    assertTrue(command.matches(), example + ": nothing runs " + line);
    return new InMemory(folder).at(moment).terminal(words(command.group(1)));
  }

  private String[] words(String line) {
    return WORD.matcher(line)
        .results()
        .map(
            word ->
                word.group(1) != null
                    ? word.group(1)
                    : word.group(2) != null
                        ? word.group(2)
                        : word.group(3).replaceFirst("^~", home.toString()))
        .toArray(String[]::new);
  }

  /** A file that the reader writes, or edits, or that a command has made. */
  private String file(Example example) throws IOException {
    List<String> name = List.of(example.name().split(" (?=[a-z]+$)"));
    String role = name.size() == 1 ? "new" : name.get(1);
    if (example.name().equals("card")) {
      MemoryCard.fill(folder.resolve("card"), example.content());
      return example.content();
    }
    if (role.equals("lines")) {
      settings(example);
      return example.content();
    }
    Path file = (example.kind().equals("csv") ? folder : boat).resolve(name.get(0));
    if (role.equals("made")) {
      return Files.readString(file, StandardCharsets.UTF_8);
    }
    assertEquals(role.equals("edited"), Files.exists(file), example.toString());
    assertFalse(Files.exists(file) && role.equals("new"), example.toString());
    Files.createDirectories(file.getParent());
    Files.writeString(file, example.content(), StandardCharsets.UTF_8);
    return example.content();
  }

  /** Some lines of a project, which must be read without a word. */
  private void settings(Example example) throws IOException {
    Path other = Files.createTempDirectory(home, "lines");
    InMemory journal = new InMemory(other).with("project.yaml", "name: D\n" + example.content());
    InMemory.Run run = journal.terminal("check");
    assertEquals("0 entries, no errors, no warnings\n", run.out(), example.toString());
  }

  /** What a document shows of a journal has no mistake when its last example is over. */
  void close() {
    if (Files.exists(boat.resolve("project.yaml"))) {
      InMemory.Run run = new InMemory(boat).at(moment).terminal("check", ".");
      assertEquals(0, run.code(), run.out());
    }
  }
}
