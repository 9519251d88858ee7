package ribband.whole;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import ribband.cli.InMemory;

/** An entry without a title goes by its first words, and no day stands twice in a row. */
class EntryNamesTest {
  @TempDir private Path folder;

  private List<String> row(String text) throws IOException {
    new InMemory(folder)
        .with("project.yaml", "phases: [planking]\n")
        .with("2026-03-14.md", "---\nhours: 2\nphase: planking\n---\n" + text + "\n");
    Published site = new Builder(folder).publish();
    return site.page("months/2026-03.html").select(".notice .told > *").eachText();
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          Swept the shed.                      | Swept the shed.
          No stop at the end                   | No stop at the end
          Cold. Swept and tidied.              | Cold. / Swept and tidied.
          Why 2.5 coats? Because.              | Why 2.5 coats? / Because.
          船底を塗った。寒かった。                     | 船底を塗った。 / 寒かった。
          A sentence that does not come to its end within a line, but later. Then more. | A sentence that does not come to its end within a line, but… / …later. Then more.
          A sentence that does not come to its end within a line of, but later. | A sentence that does not come to its end within a line of… / …but later.
          """)
  void theFirstSentenceIsItsNameAndTheRestFollows(String text, String told) throws IOException {
    List<String> row = row(text);

    assertEquals(told, String.join(" / ", row.subList(0, row.size() - 1)));
    assertEquals("2 hours Planking", row.get(row.size() - 1));
  }

  @Test
  void withoutWordsItsDayIs() throws IOException {
    assertEquals(List.of("14 March 2026", "2 hours Planking"), row(""));
  }

  @Test
  void aTableLeavesTheFullStopOut() throws IOException {
    row("Cold. Swept and tidied.");

    assertEquals(
        "14 March 2026 Cold 2:00 2:00",
        new Published(folder.resolve("site"))
            .page("phases/planking.html")
            .select("table:has(caption:contains(Entry by entry)) tbody tr")
            .text());
  }
}
