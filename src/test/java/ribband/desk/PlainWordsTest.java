package ribband.desk;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Optional;
import java.util.Random;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import ribband.problem.Problems;
import ribband.prose.Body;
import ribband.prose.Mention;
import ribband.prose.Print;
import ribband.prose.Prose;
import ribband.prose.Surroundings;

/** The page shows the words as they were said; the reader of Markdown is the one of entries. */
class PlainWordsTest {
  private static final Prose PROSE = new Prose();

  private static final Surroundings NOWHERE =
      new Surroundings() {
        @Override
        public Optional<String> href(Mention link) {
          return Optional.of("x.html");
        }

        @Override
        public Optional<Print> print(Mention picture) {
          return Optional.empty();
        }
      };

  private static Element page(String markdown) {
    Problems problems = new Problems();
    String html = PROSE.html(PROSE.read(new Body("e.md", 1, markdown + "\n"), problems), NOWHERE);
    return Jsoup.parseBodyFragment(html).body();
  }

  private static void isShownAsSaid(String words) {
    String markdown = PlainWords.of(words);
    Element page = page(markdown);
    String about = words + " as " + markdown + " gave " + page.html();
    assertEquals(1, page.childrenSize(), about);
    Element paragraph = page.child(0);
    assertEquals("p", paragraph.tagName(), about);
    assertEquals(0, paragraph.childrenSize(), about);
    assertEquals(words, paragraph.wholeText(), about);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "# heading",
        "#",
        "####### seven",
        "> quoted",
        "- item",
        "-",
        "+ item",
        "* item",
        "---",
        "- - -",
        "***",
        "___",
        "1. first",
        "14) last",
        "123456789. long",
        "```",
        "~~~",
        "a *b* c",
        "a **b** c",
        "_a_",
        "a __b__ c",
        "`code`",
        "[link](x.md)",
        "[note]: x.md",
        "[^1]: a footnote",
        "![picture](x.jpg)",
        "<b>bold</b>",
        "<!-- gone -->",
        "<?php ?>",
        "a &amp; b &#65; &#x41; &copy;",
        "~~struck~~",
        "~struck~",
        "back\\*slash\\",
        "end\\",
        "| a | b |",
        "===",
        "[ ] open",
        "- [x] done",
        "5 * 3 * 2",
        "\"quoted\" and 'quoted'"
      })
  void marksAreWords(String words) {
    isShownAsSaid(words);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "the wood smelled of rain|the wood smelled of rain",
        "5 * 3 is 15|5 * 3 is 15",
        "file_name_here|file_name_here",
        "3.5 mm of play|3.5 mm of play",
        "a < b & c > d|a < b & c > d",
        "-5 C outside|-5 C outside",
        "plank #3|plank #3",
        "1. first|1\\. first",
        "# one *two*|\\# one \\*two\\*"
      })
  void aBackslashStandsOnlyWhereItIsNeeded(String words, String markdown) {
    assertEquals(markdown, PlainWords.of(words));
    isShownAsSaid(words);
  }

  /** As in any entry's text. */
  @Test
  void anAddressIsALink() {
    assertEquals(
        "https://example.org/a", page(PlainWords.of("<https://example.org/a>")).select("a").text());
  }

  @Test
  void whatCannotBeSeenIsASpace() {
    assertEquals("a b c", PlainWords.of(" a\nb\u0007c\u2028"));
  }

  @Test
  void anyMixOfMarksIsShownAsItWasSaid() {
    String[] parts = {
      "a", "B2", " ", " ", "*", "_", "`", "[", "]", "(", ")", "<", ">", "&", ";", "amp", "#", "-",
      "+", ".", "1", "~", "\\", "!", "|", ":", "=", "\"", "^", "/", "x"
    };
    Random random = new Random(14);
    for (int run = 0; run < 6_000; run++) {
      StringBuilder words = new StringBuilder();
      int length = 1 + random.nextInt(12);
      for (int i = 0; i < length; i++) {
        words.append(parts[random.nextInt(parts.length)]);
      }
      String line = words.toString().strip();
      if (!line.isEmpty()) {
        isShownAsSaid(line);
      }
    }
  }
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.InputStream;
import java.util.SplittableRandom;
/** Plain words become Markdown that shows them as they are, marked no more than needed. */
      quoteCharacter = '"',
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
  void aBackslashStandsOnlyWhereAMarkWouldBe(String words, String markdown) {
    assertEquals(markdown, PlainWords.markdown(words));
    assertShown(words);
  void linesStayLines() {
    assertEquals("a\nb\n\nc", PlainWords.markdown("a  \n   b\n\n\tc"));
    assertEquals("a |\n\\-|-", PlainWords.markdown("a |\n-|-"));
    assertShown("a | b\n--- | ---\nc | d");
    assertShown("Title\n===\ntext");
    assertShown("text[^1]\n\n[^1]: a note");
    assertShown("[x]\n\n[x]: https://example.org");
    assertShown("    four spaces\n\n```\nfenced\n```");
  /** Every example of the CommonMark Spec 0.31.2, as words of a cell. */
  void theExamplesOfTheSpecificationAreShownLetterByLetter() throws IOException {
    JsonNode examples;
    try (InputStream in =
        PlainWordsTest.class.getResourceAsStream("/ribband/prose/commonmark-0.31.2.json")) {
      examples = new ObjectMapper().readTree(in);
    assertEquals(652, examples.size());
    for (JsonNode example : examples) {
      assertShown(example.get("markdown").asText());
  void anythingAtAllIsShownLetterByLetter() {
    SplittableRandom random = new SplittableRandom(20260314);
    String signs = "abc 12\n\n`*_~[]()!#>-+.|:<&;\\\"'/=^$%@{}?,";
    for (int i = 0; i < 4000; i++) {
      int length = random.nextInt(1, 30);
      for (int j = 0; j < length; j++) {
        words.append(signs.charAt(random.nextInt(signs.length())));
      assertShown(words.toString());
  private static void assertShown(String words) {
    String markdown = PlainWords.markdown(words);
    String shown = PROSE.read(new Body("a.md", 1, markdown), problems).words();
    assertEquals(oneLine(words), oneLine(shown), () -> "as " + markdown);
    assertEquals(0, problems.errors(), () -> problems.sorted() + " in " + markdown);
  private static String oneLine(String text) {
    return text.replaceAll("\\s+", " ").strip();
}
