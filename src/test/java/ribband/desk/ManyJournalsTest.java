package ribband.desk;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import ribband.spoken.SpokenLine;

/** An entry as it is made adds nothing to what is wrong in a journal, whatever that holds. */
class ManyJournalsTest {
  private static final String[] WORDS = {
    "scarf",
    "Plank",
    "#3",
    "#",
    "a: b",
    "- x",
    "---",
    "'",
    "\"",
    "{",
    "}",
    "[",
    "]",
    ",",
    "&",
    "*",
    "!",
    "|",
    "%",
    "@",
    "`",
    "\\\\",
    "\\t",
    "\\n",
    "\\U0001F600",
    "\\u00E9",
    "\\u200B",
    "yes",
    "2:45",
    "null",
    "~",
    "?",
    "12"
  };

  @TempDir private Path folder;

  /** The journal is as it was then. */
  private void writeAndTakeAway(Desk desk, LocalDate night, String title, String say)
      throws IOException {
    List<String> before = desk.problems();
    var journal = desk.journal();
    Path file =
        new Tonight(
                journal,
                night,
                Instant.parse(night + "T23:00:00Z"),
                Optional.ofNullable(title),
                Optional.ofNullable(say).map(line -> SpokenLine.read(line, journal, night)))
            .write()
            .file();
    assertEquals(before, desk.problems(), () -> night + " " + read(file));
    Files.delete(file);
  }

  private static String read(Path file) {
    try {
      return Files.readString(file);
    } catch (IOException e) {
      return e.toString();
    }
  }

  @Test
  void everyNightOfTheSampleJournal() throws IOException {
    Path sample = Path.of("sample-journal");
    try (Stream<Path> files = Files.walk(sample)) {
      for (Path file : files.filter(Files::isRegularFile).toList()) {
        Path copy = folder.resolve(sample.relativize(file).toString());
        Files.createDirectories(copy.getParent());
        Files.copy(file, copy);
      }
    }
    Desk desk = new Desk(folder);
    assertEquals(List.of(), desk.problems());
    for (LocalDate night = LocalDate.of(2026, 2, 1);
        night.isBefore(LocalDate.of(2026, 11, 20));
        night = night.plusDays(4)) {
      writeAndTakeAway(desk, night, null, null);
    }
    writeAndTakeAway(
        desk,
        LocalDate.of(2026, 11, 9),
        "A: title # 3",
        "sails 2h, spars 0:20, 12.50 twine, -1 tin");
  }

  @Test
  void journalsOfOddWords() throws IOException {
    Random random = new Random(14);
    for (int run = 0; run < 120; run++) {
      Desk desk = new Desk(folder.resolve("j" + run));
      desk.with(
          "project.yaml",
          "name: " + words(random),
          "currency: USD",
          random.nextBoolean() ? "phases: [{id: a, title: " + words(random) + "}, {id: 'no'}]" : "",
          "adhesives: {" + words(random) + ": {soft for: 90 min, recoat: 1 h to 9 h}, e: {}}",
          "pieces: {p: {total: 3, sides: ['yes', b]}, 'off': {total: 2, phase: a}}");
      for (int day = 10; day < 15; day++) {
        desk.entry(
            "2026-03-" + day + ".md",
            "title: " + words(random),
            "phase: " + (random.nextBoolean() ? "a" : "'no'"),
            "hours: " + random.nextInt(3),
            "todo: [{id: j" + day + ", what: " + words(random) + "}]",
            "joints: [{name: " + words(random) + ", adhesive: e, spread at: 22:00}]",
            "coats: [{what: " + words(random) + ", at: 22:10}]");
      }
      String title = Files.readString(desk.root().resolve("project.yaml")).substring(6, 20);
      writeAndTakeAway(desk, Desk.NIGHT, title, null);
      writeAndTakeAway(desk, Desk.NIGHT, null, title + ", a 2h, 3 p, 2.50 " + title);
    }
  }

  /** In double quotes of YAML. */
  private static String words(Random random) {
    StringBuilder words = new StringBuilder("\"");
    int length = 1 + random.nextInt(6);
    for (int i = 0; i < length; i++) {
      words.append(WORDS[random.nextInt(WORDS.length)].replace("\"", "\\\"")).append(' ');
    }
    return words.append('"').toString();
  }
}
