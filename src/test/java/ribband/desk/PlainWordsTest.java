package ribband.desk;

import static org.junit.jupiter.api.Assertions.assertEquals;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.InputStream;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import ribband.problem.Problems;
import ribband.prose.Body;
import ribband.prose.Prose;

/** Plain words become Markdown that shows them as they are, marked no more than needed. */
class PlainWordsTest {
  private static final Prose PROSE = new Prose();

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '"',
      value = {
        "Fitted the garboards; 2 3/4 in, 5 x 7 - done! | Fitted the garboards; 2 3/4 in, 5 x 7 - done!",
        "# 3 on | \\# 3 on",
        "#3 on | #3 on",
        "> 2 h | \\> 2 h",
        "- sanded | \\- sanded",
        "-sanded | -sanded",
        "+ sanded | \\+ sanded",
        "* sanded | \\* sanded",
        "1. stem | 1\\. stem",
        "12) stem | 12\\) stem",
        "1.5 h | 1.5 h",
        "--- | \\---",
        "=== | \\===",
        "2 * 3 | 2 * 3",
        "*very* dry | \\*very\\* dry",
        "a_b_c | a_b_c",
        "_very_ dry | \\_very\\_ dry",
        "a `b` | a \\`b\\`",
        "[see](x) | \\[see](x)",
        "![see](x) | \\!\\[see](x)",
        "[ ] later | \\[ ] later",
        "a [ ] later | a [ ] later",
        "<b>x</b> | \\<b>x\\</b>",
        "2 < 3 | 2 < 3",
        "R&D &amp; | R&D \\&amp;",
        "~~no~~ | \\~\\~no\\~\\~",
        "~5 min | ~5 min",
        "C:\\tmp\\* | C:\\tmp\\\\\\*",
        "https://example.org/a_b?c=d&e=f | https://example.org/a_b?c=d&e=f",
        "www.example.org | www.example.org",
      })
  void aBackslashStandsOnlyWhereAMarkWouldBe(String words, String markdown) {
    assertEquals(markdown, PlainWords.markdown(words));
    assertShown(words);
  }

  @Test
  void linesStayLines() {
    assertEquals("a\nb\n\nc", PlainWords.markdown("a  \n   b\n\n\tc"));
    assertEquals("a |\n\\-|-", PlainWords.markdown("a |\n-|-"));
    assertShown("a | b\n--- | ---\nc | d");
    assertShown("Title\n===\ntext");
    assertShown("text[^1]\n\n[^1]: a note");
    assertShown("[x]\n\n[x]: https://example.org");
    assertShown("    four spaces\n\n```\nfenced\n```");
  }

  /** Every example of the CommonMark Spec 0.31.2, as words of a cell. */
  @Test
  void theExamplesOfTheSpecificationAreShownLetterByLetter() throws IOException {
    JsonNode examples;
    try (InputStream in =
        PlainWordsTest.class.getResourceAsStream("/ribband/prose/commonmark-0.31.2.json")) {
      examples = new ObjectMapper().readTree(in);
    }
    assertEquals(652, examples.size());
    for (JsonNode example : examples) {
      assertShown(example.get("markdown").asText());
    }
  }

  @Test
  void anythingAtAllIsShownLetterByLetter() {
    SplittableRandom random = new SplittableRandom(20260314);
    String signs = "abc 12\n\n`*_~[]()!#>-+.|:<&;\\\"'/=^$%@{}?,";
    for (int i = 0; i < 4000; i++) {
      StringBuilder words = new StringBuilder();
      int length = random.nextInt(1, 30);
      for (int j = 0; j < length; j++) {
        words.append(signs.charAt(random.nextInt(signs.length())));
      }
      assertShown(words.toString());
    }
  }

  private static void assertShown(String words) {
    Problems problems = new Problems();
    String markdown = PlainWords.markdown(words);
    String shown = PROSE.read(new Body("a.md", 1, markdown), problems).words();
    assertEquals(oneLine(words), oneLine(shown), () -> "as " + markdown);
    assertEquals(0, problems.errors(), () -> problems.sorted() + " in " + markdown);
  }

  private static String oneLine(String text) {
    return text.replaceAll("\\s+", " ").strip();
  }
}
