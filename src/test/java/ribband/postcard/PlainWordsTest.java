package ribband.postcard;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

class PlainWordsTest {
  @Test
  void wordsAreSetInOneLine() {
    assertEquals("Two lines and a tab", PlainWords.of(" Two\nlines \r\n and\ta tab\u0000 "));
  }

  @Test
  void lettersAreComposed() {
    assertEquals("é", PlainWords.of("e\u0301"));
  }

  @Test
  void marksDoNotPileUp() {
    assertEquals("x\u0301\u0302y\u0330", PlainWords.of("x\u0301\u0302\u0303\u0304y\u0330"));
  }

  @Test
  void whatHasNoShapeIsLeftOut() {
    assertEquals("ab", PlainWords.of("a\u200b\u202e\u00adb"));
    assertEquals("a\u200d\u200cb", PlainWords.of("a\u200d\u200cb"));
  }

  @Test
  void aNoBreakSpaceStays() {
    assertEquals("CHF\u00a012", PlainWords.of("CHF\u00a012"));
  }

  @Test
  void aBookIsNotLettered() {
    assertEquals(600, PlainWords.of("x".repeat(9000)).length());
  }

  @Test
  void marksAreKnown() {
    assertTrue(PlainWords.isMark(0x301));
    assertTrue(PlainWords.isMark(0x20DD));
    assertFalse(PlainWords.isMark('a'));
  }
}
