package ribband.architecture;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** Every proof that {@code docs/reliability.md} and {@code docs/privacy.md} name is there. */
class PromisesTest {
  private static final Path DOC = Path.of("docs/reliability.md");
  private static final Path PRIVACY = Path.of("docs/privacy.md");
  private static final Path TESTS = Path.of("src/test/java/ribband");
  private static final Path TABLES = Path.of("src/test/resources/ribband");
  private static final Path FAULTS = Path.of(".ci/fault");

  private static final Pattern TEST = Pattern.compile("`(\\w+/\\w+Test)\\.(\\w+)`");
  private static final Pattern TABLE = Pattern.compile("`(\\w+/[\\w-]+\\.md): ([^`]+)`");
  private static final Pattern GROUP = Pattern.compile("`\\.ci/faults (\\w+)`");
  private static final Pattern GROUP_THERE = Pattern.compile("(?m)^group_(\\w+)\\(\\)");

  private static String read(Path file) throws IOException {
    return Files.isRegularFile(file) ? Files.readString(file, StandardCharsets.UTF_8) : "";
  }

  /** What a text names that is not there. */
  private static Set<String> missing(String text) throws IOException {
    Set<String> missing = new TreeSet<>();
    for (Matcher named = TEST.matcher(text); named.find(); ) {
      String source = read(TESTS.resolve(named.group(1) + ".java"));
      Pattern test =
          Pattern.compile(
              "@(Test|ParameterizedTest)\\b(?:(?!;\\n)[\\s\\S])*?\\bvoid "
                  + named.group(2)
                  + "\\(");
      if (!test.matcher(source).find()) {
        missing.add(named.group());
      }
    }
    for (Matcher named = TABLE.matcher(text); named.find(); ) {
      if (!read(TABLES.resolve(named.group(1))).contains("\n## " + named.group(2) + "\n")) {
        missing.add(named.group());
      }
    }
    Set<String> groups = groupsThere();
    for (String group : groups(GROUP, text)) {
      if (!groups.contains(group)) {
        missing.add(".ci/faults " + group);
      }
    }
    return missing;
  }

  private static Set<String> groupsThere() throws IOException {
    Set<String> groups = new TreeSet<>();
    try (DirectoryStream<Path> parts = Files.newDirectoryStream(FAULTS, "*.sh")) {
      for (Path part : parts) {
        groups.addAll(groups(GROUP_THERE, read(part)));
      }
    }
    return groups;
  }

  private static Set<String> groups(Pattern pattern, String text) {
    Set<String> groups = new TreeSet<>();
    for (Matcher named = pattern.matcher(text); named.find(); ) {
      groups.add(named.group(1));
    }
    return groups;
  }

  @Test
  void everyProofThatIsNamedIsThere() throws IOException {
    assertEquals(Set.of(), missing(read(DOC)));
    assertEquals(Set.of(), missing(read(PRIVACY)));
  }

  @Test
  void everyRowNamesAProofOrSaysWhyNone() throws IOException {
    String both = read(DOC) + read(PRIVACY);
    List<String> rows = both.lines().filter(line -> line.startsWith("| ")).toList();
    assertTrue(rows.size() > 60, "rows " + rows.size());
    for (String row : rows) {
      boolean proof =
          TEST.matcher(row).find() || TABLE.matcher(row).find() || GROUP.matcher(row).find();
      boolean reason = row.contains("does not apply") || row.contains("not a test");
      boolean head =
          row.contains("| proved by |")
              || row.contains("| provoked by |")
              || row.contains("| held by |");
      assertTrue(proof || reason || head, row);
    }
  }

  @Test
  void everyGroupOfFaultsIsNamed() throws IOException {
    assertEquals(groupsThere(), groups(GROUP, read(DOC)));
  }

  @Test
  void aProofThatIsNotThereIsFound() throws IOException {
    assertEquals(
        Set.of(
            "`press/PressTest.noSuchTest`",
            "`press/PressTest.publish`",
            "`press/NoSuchTest.nothing`",
            "`journal/dates.md: No such heading`",
            ".ci/faults nosuchgroup"),
        missing(
            "`press/PressTest.noSuchTest` `press/PressTest.publish` `press/NoSuchTest.nothing`"
                + " `journal/dates.md: No such heading` `.ci/faults nosuchgroup`"
                + " `press/PressTest.filesOfOthersStayAsTheyAre` `journal/dates.md: In the keys`"));
  }
}
