package ribband.documents;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.api.io.TempDir;
import ribband.cli.InMemory;

/**
 * The format's reference tells every message: what {@code check} can say of a journal stands in it,
 * and each message in it is one that comes of the mistake beside it. (Those of keys are run by
 * {@code ribband.journal.JournalCasesTest}; here are those of texts, shelves, files and pictures.)
 *
 * <p>Words are looked for in the sources piece by piece. A message that is put together from pieces
 * which all stand in other messages would not be missed.
 */
class MessagesTest {
  private static final Path REFERENCE = Path.of("docs/journal-format.md");
  private static final Path MAIN = Path.of("src/main/java/ribband");

  /** Where what {@code check} tells of a journal is put into words. */
  private static final List<Path> SOURCES =
      Stream.of(
              "journal",
              "measure",
              "problem",
              "prose",
              "photo",
              "album",
              "stock/StockWarnings.java",
              "cli/AddressWarning.java")
          .map(MAIN::resolve)
          .toList();

  private static final Pattern ROW = Pattern.compile("\\| *(.*?) *\\| *(?:`(.*?)`|fine) *\\|.*");

  private static final Pattern PROVED =
      Pattern.compile("\\| .* \\| `.*` \\| (?:`([.]?\\w+/\\w+)[. ](\\w+)`|not a test) \\|");

  @TempDir Path folder;
  private int count;

  private record Row(int line, String written, List<String> told) {}

  private static String reference() throws IOException {
    return Files.readString(REFERENCE, StandardCharsets.UTF_8);
  }

  /** The rows of the table whose first column is headed so. */
  private static List<Row> rows(String head) throws IOException {
    List<Row> rows = new ArrayList<>();
    List<String> lines = reference().lines().toList();
    int start = lines.indexOf(head);
    assertTrue(start >= 0, head);
    for (int at = start + 2; at < lines.size() && lines.get(at).startsWith("|"); at++) {
      Matcher row = ROW.matcher(lines.get(at));
      assertTrue(row.matches(), lines.get(at));
      String written = plain(row.group(1));
      String told = row.group(2);
      rows.add(
          new Row(at + 1, written, told == null ? List.of() : List.of(plain(told).split("\n"))));
    }
    return rows;
  }

  private static String plain(String cell) {
    return cell.replaceAll("^`|`$", "").replace("\\|", "|").replace("<br>", "\n");
  }

  @Test
  void everyWordOfAMessageStandsInTheReference() throws IOException {
    String told = plain(reference());
    Set<String> missing = new TreeSet<>();
    Set<String> needless = new TreeSet<>(NoMessage.WORDS);
    for (Map.Entry<String, Set<String>> file : MessageWords.in(SOURCES).entrySet()) {
      for (String words : file.getValue()) {
        if (NoMessage.WORDS.contains(words)) {
          needless.remove(words);
        } else if (!told.contains(words)) {
          missing.add(file.getKey() + ": " + words);
        }
      }
    }
    assertEquals("", String.join("\n", missing));
    assertEquals(Set.of(), needless);
  }

  @TestFactory
  Stream<DynamicTest> whatStandsInATextIsToldAsShown() throws IOException {
    return rows("| in the text | told |").stream()
        .map(
            row ->
                test(
                    row,
                    () -> {
                      Path journal = journal("name: Dunlin\nphases: [planking]\n");
                      new InMemory(journal)
                          .with("2026-03-14-garboard.md", "---\n---\n" + row.written() + "\n")
                          .with("2026-03-15-scarf.md", "---\n---\n## The glue\n")
                          .with("2026-03-16-moulds.md", "---\n---\nNo heading.\n")
                          .with("plan.txt", "Words.\n");
                      return told(journal);
                    }));
  }

  @TestFactory
  Stream<DynamicTest> whatDoesNotAddUpOnAShelfIsToldAsShown() throws IOException {
    String project =
        Example.of(REFERENCE).stream()
            .filter(example -> example.name().equals("project.yaml"))
            .map(Example::content)
            .filter(yaml -> yaml.contains("putty"))
            .findFirst()
            .orElseThrow();
    return rows("| on the shelf | told |").stream()
        .map(
            row ->
                test(
                    row,
                    () -> {
                      Path journal = journal(project);
                      String keys = "---\nphase: planking\n" + row.written() + "\n---\n";
                      new InMemory(journal).with("2026-03-14-garboard.md", keys);
                      return told(journal);
                    }));
  }

  @TestFactory
  Stream<DynamicTest> filesAreToldAsShown() throws IOException {
    return rows("| made | told |").stream()
        .map(
            row ->
                test(
                    row,
                    () -> {
                      Path journal = journal("name: Dunlin\nphases: [planking]\n");
                      SpoiledFiles.file(journal, row.written());
                      return told(journal);
                    }));
  }

  @TestFactory
  Stream<DynamicTest> picturesAreToldAsShown() throws IOException {
    return rows("| picture | told |").stream()
        .map(
            row ->
                test(
                    row,
                    () -> {
                      Path journal = journal("name: Dunlin\nphases: [planking]\n");
                      SpoiledFiles.picture(journal.resolve("hull.jpg"), row.written());
                      new InMemory(journal)
                          .with("2026-03-14-hull.md", "---\nphotos: hull.jpg\n---\n");
                      return told(journal);
                    }));
  }

  /** What comes of the moment is told by the test beside it, in the words shown. */
  @Test
  void whatComesOfTheMomentIsToldByTheTestsNamed() throws IOException {
    List<String> lines = reference().lines().toList();
    int at = lines.indexOf("| when | told | proved by |") + 2;
    assertTrue(at > 1);
    int unproved = 0;
    for (; at < lines.size() && lines.get(at).startsWith("|"); at++) {
      Matcher row = PROVED.matcher(lines.get(at));
      assertTrue(row.matches(), lines.get(at));
      if (row.group(1) == null) {
        unproved++;
      } else {
        Path proof =
            row.group(1).startsWith(".ci/")
                ? Path.of(".ci/fault", row.group(2) + ".sh")
                : Path.of("src/test/java/ribband", row.group(1) + ".java");
        String source = Files.readString(proof, StandardCharsets.UTF_8);
        assertTrue(source.contains(row.group(2) + "("), lines.get(at));
      }
    }
    assertEquals(2, unproved);
  }

  @FunctionalInterface
  private interface Telling {
    List<String> told() throws Exception;
  }

  private static DynamicTest test(Row row, Telling telling) {
    return DynamicTest.dynamicTest(
        "line " + row.line() + ": " + row.written().strip(),
        () ->
            assertEquals(
                String.join("\n", row.told()),
                String.join("\n", telling.told()),
                REFERENCE + ":" + row.line()));
  }

  private Path journal(String project) throws IOException {
    Path journal = Files.createDirectories(folder.toRealPath().resolve("journal-" + count++));
    new InMemory(journal).with("project.yaml", project);
    return journal;
  }

  private static List<String> told(Path journal) {
    return new InMemory(journal)
        .run("check", ".")
        .err()
        .lines()
        .filter(line -> line.matches(".*: (error|warning): .*"))
        .map(line -> line.replaceFirst("^[^ ]*?: (?:error: )?", ""))
        .toList();
  }
}
