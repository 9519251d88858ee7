package ribband.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Whole recaps of small journals, whose figures are added up by hand at the head of each file of
 * {@code src/test/resources/ribband/recap}: the command, words, then files of the journal after
 * {@code === path}.
 */
class RecapCasesTest {
  private static final Path CASES = Path.of("src/test/resources/ribband/recap");

  @TempDir Path folder;

  static List<String> names() throws IOException {
    try (Stream<Path> files = Files.list(CASES)) {
      List<String> names =
          files
              .map(file -> file.getFileName().toString())
              .filter(name -> name.endsWith(".journal"))
              .map(name -> name.replace(".journal", ""))
              .sorted()
              .toList();
      assertTrue(names.size() >= 15, names::toString);
      return names;
    }
  }

  @ParameterizedTest
  @MethodSource("names")
  void theTextIsTheOneExpected(String name) throws IOException {
    String[] parts = text(name + ".journal").split("(?m)^=== ");
    String command = parts[0].substring("$ ".length(), parts[0].indexOf('\n'));
    InMemory journal = new InMemory(folder);
    for (String part : List.of(parts).subList(1, parts.length)) {
      int end = part.indexOf('\n');
      journal.with(part.substring(0, end), part.substring(end + 1));
    }
    same(name + ".txt", journal, command, "plain");
    same(name + ".md", journal, command, "markdown");
    same(name + ".html", journal, command, "html");
  }

  private static void same(String file, InMemory journal, String command, String format)
      throws IOException {
    List<String> words = new ArrayList<>(List.of(command.split(" ")));
    words.addAll(List.of("--format", format, "--quiet"));
    InMemory.Run run = journal.run(words.toArray(String[]::new));
    assertEquals(new InMemory.Run(0, text(file), ""), run, file);
  }

  private static String text(String file) throws IOException {
    return Files.readString(CASES.resolve(file), StandardCharsets.UTF_8);
  }
}
