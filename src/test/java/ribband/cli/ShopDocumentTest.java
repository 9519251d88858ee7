package ribband.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.api.io.TempDir;

/**
 * The commands of {@code docs/shop-arithmetic.md}, run in a journal of its {@code project.yaml};
 * three dots below an output stand for the rest of it.
 */
class ShopDocumentTest {
  private static final Path DOCUMENT = Path.of("docs/shop-arithmetic.md");
  private static final Pattern PROJECT =
      Pattern.compile("```yaml project\\.yaml\n(.*?)```", Pattern.DOTALL);
  private static final Pattern ENTRY =
      Pattern.compile("```markdown (\\S+\\.md)\n(.*?)```", Pattern.DOTALL);
  private static final Pattern COMMAND =
      Pattern.compile("```console\n\\$ ribband ([^\n]*)\n(.*?)```", Pattern.DOTALL);
  private static final Pattern WORD = Pattern.compile("\"([^\"]*)\"|(\\S+)");
  private static final String REST = "...\n";

  @TempDir Path folder;

  @TestFactory
  Stream<DynamicTest> everyCommandTellsWhatStandsBelowIt() throws IOException {
    String document = Files.readString(DOCUMENT, StandardCharsets.UTF_8);
    Matcher project = PROJECT.matcher(document);
    assertTrue(project.find(), "no project.yaml in " + DOCUMENT);
    InMemory shop = new InMemory(folder).with("project.yaml", project.group(1));
    for (Matcher entry = ENTRY.matcher(document); entry.find(); ) {
      shop.with(entry.group(1), entry.group(2));
    }
    List<DynamicTest> tests = new ArrayList<>();
    for (Matcher command = COMMAND.matcher(document); command.find(); ) {
      String line = command.group(1);
      String told = command.group(2);
      tests.add(DynamicTest.dynamicTest(line, () -> check(shop, line, told)));
    }
    assertEquals(document.split("\n\\$ ", -1).length - 1, tests.size());
    return tests.stream();
  }

  private static void check(InMemory shop, String line, String told) {
    InMemory.Run run = shop.run(words(line));
    assertEquals("", run.err());
    assertEquals(0, run.code());
    if (told.endsWith(REST)) {
      String beginning = told.substring(0, told.length() - REST.length());
      assertEquals(
          beginning, run.out().substring(0, Math.min(beginning.length(), run.out().length())));
    } else {
      assertEquals(told, run.out());
    }
  }

  private static String[] words(String line) {
    return WORD.matcher(line)
        .results()
        .map(word -> word.group(1) == null ? word.group(2) : word.group(1))
        .toArray(String[]::new);
  }
}
