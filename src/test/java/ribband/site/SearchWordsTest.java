package ribband.site;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class SearchWordsTest {
  private static final Path TABLE =
      Path.of("src/test/resources/ribband/site/search-words.txt").toAbsolutePath();

  /** What is written, and its words parted by spaces. */
  static List<Map.Entry<String, String>> table() throws IOException {
    return Files.readString(TABLE, StandardCharsets.UTF_8)
        .lines()
        .filter(line -> !line.startsWith("#"))
        .map(line -> line.replace("\\u0301", "\u0301").split(" \\|", 2))
        .map(row -> Map.entry(row[0], row[1].strip()))
        .toList();
  }

  @ParameterizedTest
  @MethodSource("table")
  void writtenTextBecomesTheWordsOfTheTable(Map.Entry<String, String> row) {
    assertEquals(row.getValue(), String.join(" ", SearchWords.of(row.getKey())));
  }

  @ParameterizedTest
  @MethodSource("table")
  void wordsStayAsTheyAreWhenTheyAreReadAgain(Map.Entry<String, String> row) {
    assertEquals(row.getValue(), String.join(" ", SearchWords.of(row.getValue())));
  }

  @Test
  void nothingHasNoWords() {
    assertEquals(List.of(), SearchWords.of(""));
    assertEquals(List.of(), SearchWords.of(" \n—!"));
  }
}
