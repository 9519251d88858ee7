package ribband.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;

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

/** The commands of {@code docs/recap.md}, run in the sample journal long after its last day. */
class RecapDocumentTest {
  private static final Path DOCUMENT = Path.of("docs/recap.md");
  private static final Pattern COMMAND =
      Pattern.compile("```console\n\\$ ribband ([^\n]*)\n(.*?)```", Pattern.DOTALL);

  @TestFactory
  Stream<DynamicTest> everyCommandTellsWhatStandsBelowIt() throws IOException {
    String document = Files.readString(DOCUMENT, StandardCharsets.UTF_8);
    InMemory sample = new InMemory(Path.of("sample-journal")).at("2027-01-02T20:00");
    List<DynamicTest> tests = new ArrayList<>();
    for (Matcher command = COMMAND.matcher(document); command.find(); ) {
      String line = command.group(1);
      String told = command.group(2);
      tests.add(
          DynamicTest.dynamicTest(
              line,
              () -> {
                InMemory.Run run = sample.run(line.split(" "));
                assertEquals(new InMemory.Run(0, told, ""), run);
              }));
    }
    assertEquals(4, tests.size());
    return tests.stream();
  }
}
