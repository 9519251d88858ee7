package ribband.documents;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.fail;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.api.io.TempDir;

/**
 * Every block of every document is run, from its first to its last, and the whole document compared
 * with what it would say now.
 *
 * <p>What stands behind a fence says what is done with it: {@code console} is typed, at a moment
 * where one is named, and tells all that stands below it ({@code ...} is the rest); {@code sh} are
 * commands that succeed; a path is a file that the reader writes, with {@code edited} one that is
 * there, with {@code made} one that a command has made; {@code lines} are some of a project's. All
 * other blocks are those of {@link Elsewhere}. A document that says something else now is written
 * to {@code target/documents}.
 */
class ExamplesTest {
  private static final Set<String> OF_THE_SAMPLE =
      Set.of("docs/papers.md", "docs/recap.md", "sample-journal/README.md");

  @TempDir Path temporary;

  @TestFactory
  Stream<DynamicTest> everyExampleIsAsItIsShown() throws IOException {
    return Example.documents().stream()
        .map(document -> DynamicTest.dynamicTest(document.toString(), () -> run(document)));
  }

  @Test
  void nothingIsLeftToOthersThatNoDocumentHas() throws IOException {
    Set<Elsewhere> seen = EnumSet.noneOf(Elsewhere.class);
    for (Path document : Example.documents()) {
      for (Example example : Example.of(document)) {
        String what = (example.kind() + " " + example.name()).strip();
        Elsewhere.of(document.toString(), what).ifPresent(seen::add);
        if (example.kind().equals("sh")) {
          example
              .commands()
              .forEach(line -> Elsewhere.of(document.toString(), line).ifPresent(seen::add));
        }
      }
    }
    assertEquals(EnumSet.allOf(Elsewhere.class), seen);
  }

  @Test
  void aBlockThatNothingRunsIsRefused() {
    for (String block :
        List.of(
            "```\nribband\n```", "    ribband check", "```python x\n1\n```", "```sh\nls\n```")) {
      assertThrows(
          AssertionError.class,
          () -> {
            for (Example example : Example.of(Path.of("docs/x.md"), block.lines().toList())) {
              new Yard(temporary, temporary, temporary).run(example);
            }
          },
          block);
    }
  }

  private void run(Path document) throws Exception {
    Yard yard = yard(document);
    List<String> now = new ArrayList<>(Files.readAllLines(document, StandardCharsets.UTF_8));
    StringBuilder changes = new StringBuilder();
    int longer = 0;
    for (Example example : Example.of(document)) {
      String told = yard.run(example);
      if (!told.equals(example.content())) {
        changes.append(changed(example, told));
        int from = example.line() + longer;
        int lines = (int) example.content().lines().count();
        now.subList(from, from + lines).clear();
        now.addAll(from, told.lines().toList());
        longer += (int) told.lines().count() - lines;
      }
    }
    yard.close();
    if (changes.length() > 0) {
      Path copy = Path.of("target/documents").resolve(document);
      Files.createDirectories(copy.getParent());
      Files.writeString(copy, String.join("\n", now) + "\n", StandardCharsets.UTF_8);
      fail(document + " as it is now stands in " + copy + "\n" + changes);
    }
  }

  /** The lines that differ, what is shown before what is told. */
  private static String changed(Example example, String told) {
    List<String> shown = example.content().lines().toList();
    List<String> now = told.lines().toList();
    int same = 0;
    while (same < Math.min(shown.size(), now.size()) && shown.get(same).equals(now.get(same))) {
      same++;
    }
    int end = 0;
    while (end < Math.min(shown.size(), now.size()) - same
        && shown.get(shown.size() - 1 - end).equals(now.get(now.size() - 1 - end))) {
      end++;
    }
    StringBuilder lines = new StringBuilder(example + ", line " + (same + 1) + "\n");
    shown.subList(same, shown.size() - end).forEach(line -> lines.append("- " + line + "\n"));
    now.subList(same, now.size() - end).forEach(line -> lines.append("+ " + line + "\n"));
    return lines.toString();
  }

  /** The journal that a document speaks of: its own, or the sample one, long after its last day. */
  private Yard yard(Path document) throws IOException {
    String name = document.toString();
    Path folder = Files.createDirectories(temporary.toRealPath().resolve(name));
    Path home = Files.createDirectories(temporary.toRealPath().resolve("home"));
    Files.createDirectories(home.resolve("posts"));
    Path sample = folder.resolve(name.equals("docs/papers.md") ? "my-boat" : "sample-journal");
    if (OF_THE_SAMPLE.contains(name)) {
      Files.createSymbolicLink(sample, Path.of("sample-journal").toAbsolutePath());
    }
    return switch (name) {
      case "README.md" -> new Yard(folder, folder.resolve("my-boat"), home);
      case "docs/first-week.md" -> new Yard(folder, folder.resolve("dunlin"), home);
      case "docs/recap.md" -> new Yard(sample, folder, home).at("2027-01-02T20:00");
      default -> new Yard(folder, folder, home);
    };
  }
}
