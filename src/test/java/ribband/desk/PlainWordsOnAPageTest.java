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
class PlainWordsOnAPageTest {
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
    String markdown = PlainWords.markdown(words);
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
    assertEquals(markdown, PlainWords.markdown(words));
    isShownAsSaid(words);
  }

  /** As in any entry's text. */
  @Test
  void anAddressIsALink() {
    assertEquals(
        "https://example.org/a",
        page(PlainWords.markdown("<https://example.org/a>")).select("a").text());
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
}
