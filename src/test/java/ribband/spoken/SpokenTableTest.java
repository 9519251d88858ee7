package ribband.spoken;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.api.io.TempDir;

/** Each row of the tables is a line, and gives what its cells say. */
class SpokenTableTest {
  private static final String HEADER = "| said | hours | money | pieces | into the text |";

  private static final Path CORNERS = Path.of("src/test/resources/ribband/spoken/corners.md");

  @TempDir Path folder;

  @TestFactory
  Stream<DynamicTest> everyLineOfTheDocumentGivesItsCells() throws IOException {
    return everyLineOf(Boat.DOCUMENT);
  }

  @TestFactory
  Stream<DynamicTest> everyCornerGivesItsCells() throws IOException {
    return everyLineOf(CORNERS);
  }

  private Stream<DynamicTest> everyLineOf(Path document) throws IOException {
    Boat boat = Boat.ofDocument(folder);
    List<List<String>> rows = rows(Files.readString(document, StandardCharsets.UTF_8));
    assertTrue(rows.size() >= 40, () -> "only " + rows.size() + " rows");
    assertEquals(
        rows.size(),
        rows.stream().map(row -> row.get(0)).distinct().count(),
        "a line stands twice");
    return rows.stream()
        .map(
            row ->
                DynamicTest.dynamicTest(
                    row.get(0),
                    () -> assertEquals(row.subList(1, row.size()), boat.cells(row.get(0)))));
  }

  private static List<List<String>> rows(String document) {
    return document
        .lines()
        .filter(line -> line.startsWith("|") && !line.equals(HEADER) && !line.startsWith("|-"))
        .map(SpokenTableTest::row)
        .toList();
  }

  private static List<String> row(String line) {
    List<String> cells =
        Arrays.stream(line.substring(1).split("\\|", -1))
            .map(String::strip)
            .map(cell -> cell.replaceAll("^`(.*)`$", "$1"))
            .toList();
    assertEquals(6, cells.size(), line);
    return cells.subList(0, 5);
  }
}
