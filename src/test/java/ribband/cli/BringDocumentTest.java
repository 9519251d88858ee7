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
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.api.io.TempDir;

/** The commands of {@code docs/bring.md}, run beside its sheets in a journal of its project. */
class BringDocumentTest {
  private static final Path DOCUMENT = Path.of("docs/bring.md");
  private static final Pattern GIVEN =
      Pattern.compile("```(?:yaml|csv) (project\\.yaml|\\S+\\.csv)\n(.*?)```", Pattern.DOTALL);
  private static final Pattern ENTRY =
      Pattern.compile("```markdown (\\S+\\.md)\n(.*?)```", Pattern.DOTALL);
  private static final Pattern COMMAND =
      Pattern.compile("```console\n\\$ ribband ([^\n]*)\n(.*?)```", Pattern.DOTALL);

  @TempDir Path folder;

  private static String document() throws IOException {
    return Files.readString(DOCUMENT, StandardCharsets.UTF_8);
  }

  private InMemory journal() throws IOException {
    InMemory journal = new InMemory(folder);
    for (Matcher given = GIVEN.matcher(document()); given.find(); ) {
      journal.with(given.group(1), given.group(2));
    }
    return journal;
  }

  @TestFactory
  Stream<DynamicTest> everyCommandTellsWhatStandsBelowIt() throws IOException {
    InMemory journal = journal();
    List<DynamicTest> tests = new ArrayList<>();
    for (Matcher command = COMMAND.matcher(document()); command.find(); ) {
      String line = command.group(1);
      String told = command.group(2);
      tests.add(
          DynamicTest.dynamicTest(
              line,
              () -> {
                InMemory.Run run = journal.run(line.split(" "));
                assertEquals(told, run.out() + run.err());
              }));
    }
    assertEquals(3, tests.size());
    return tests.stream();
  }

  @Test
  void theEntryShownIsTheOneWritten() throws IOException {
    assertEquals(0, journal().run("bring", "past.csv", "--write").code());
    Matcher entry = ENTRY.matcher(document());
    assertTrue(entry.find());
    assertEquals(
        entry.group(2), Files.readString(folder.resolve(entry.group(1)), StandardCharsets.UTF_8));
  }
}
