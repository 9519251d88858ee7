package ribband.fuzz;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import com.code_intelligence.jazzer.junit.FuzzTest;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import ribband.site.ReadBack;
import ribband.site.SearchEntry;
import ribband.site.SearchScript;

/**
 * Whatever titles and captions say, the script of search is one line that ends no element and reads
 * back as what went in, its words as a second time.
 */
class SearchFuzzTest {
  @FuzzTest(maxDuration = "6s")
  void search(byte[] bytes) throws IOException {
    String[] words = new String(bytes, StandardCharsets.UTF_8).split("\n", -1);
    List<SearchEntry> entries = new ArrayList<>();
    for (int i = 0; i < words.length; i++) {
      String next = words[(i + 1) % words.length];
      List<String> texts = List.of(next, words[i]);
      entries.add(
          new SearchEntry(
              "entries/" + i, words[i], next, words[i], List.of(next), texts, texts, texts, next));
    }
    byte[] script = SearchScript.of(entries, List.of(words));

    String line = new String(script, StandardCharsets.UTF_8).replaceFirst("\n$", "");
    assertFalse(line.chars().anyMatch(c -> c == '<' || Character.isISOControl(c)), line);
    List<SearchEntry> read = ReadBack.of(script).entries();
    for (int i = 0; i < entries.size(); i++) {
      assertEquals(shown(entries.get(i)), shown(read.get(i)));
    }
    // Words are small and plain already, so they stay as they are.
    assertEquals(read, ReadBack.of(SearchScript.of(read, List.of(words))).entries());
  }

  private static List<?> shown(SearchEntry entry) {
    return List.of(
        entry.href(), entry.title(), entry.day(), entry.hours(), entry.phases(), entry.materials());
  }
}
