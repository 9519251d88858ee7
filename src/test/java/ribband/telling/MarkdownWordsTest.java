package ribband.telling;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * What is escaped of plain words: CommonMark 0.31.2, section 2.4, lets every ASCII punctuation
 * character be; links by themselves, tables and strikethrough are those of the GitHub Flavored
 * Markdown Spec 0.29.
 */
class MarkdownWordsTest {
  @ParameterizedTest
  @ValueSource(
      strings = {
        "Planking: 2¾ hours, 12¾ hours to date",
        "$1,234.50 went out − R&D, fish & chips; (a) 3 > 2? 'yes' \"no\"!",
        "26 hours, 4-6 of 16 left, 2. not at its start",
        "10:30, wwwx.org"
      })
  void plainWordsStayAsTheyAre(String words) {
    assertEquals(words, MarkdownWords.of(words));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = ';',
      value = {
        "a*b_c`d; a\\*b\\_c\\`d",
        "[a](b) {c} <d>; \\[a\\](b) \\{c\\} \\<d>",
        "a\\b|c~d^e=f#g; a\\\\b\\|c\\~d\\^e\\=f\\#g",
        "&amp, &copy, &x1; &amp, &copy, &x1",
        "1. one; 1\\. one",
        "12) one; 12\\) one",
        "- one; \\- one",
        "+ one; \\+ one",
        "> one; \\> one",
        "http://a.example; http\\://a.example",
        "WWW.a.example; WWW\\.a.example"
      })
  void whatWouldBeMarkupIsEscaped(String words, String escaped) {
    assertEquals(escaped, MarkdownWords.of(words));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {"&amp; | \\&amp;", "&frac34; | \\&frac34;", "&#35; | &\\#35;", "&#x23; | &\\#x23;"})
  void aCharacterByItsNameOrNumberIsEscaped(String words, String escaped) {
    assertEquals(escaped, MarkdownWords.of(words));
  }
}
