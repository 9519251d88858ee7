package ribband.feed;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** Against XML 1.0, fifth edition, 2.2: {@code Char}, the whole range of code points. */
class XmlTextTest {
  @Test
  void theCharactersOfXmlStayAndNoOthers() {
    for (int c = 0; c <= Character.MAX_CODE_POINT; c++) {
      boolean isChar =
          c == 0x9
              || c == 0xA
              || c >= 0x20 && c < 0xD800
              || c > 0xDFFF && c != 0xFFFE && c != 0xFFFF;
      if (c != '\r') {
        String one = "a" + Character.toString(c) + "b";
        assertEquals(isChar ? one : "ab", XmlText.of(one), Integer.toHexString(c));
      }
    }
  }

  @Test
  void lineEndsAreAsAReaderOfXmlHearsThem() {
    assertEquals("a\nb\nc\n\nd\n", XmlText.of("a\r\nb\rc\r\n\nd\r"));
  }

  @Test
  void pairsStayTogetherAndHalvesGo() {
    String wrench = new String(Character.toChars(0x1F6E0));
    assertEquals(wrench, XmlText.of(wrench));
    assertEquals("xy", XmlText.of("x" + wrench.charAt(0) + "y" + wrench.charAt(1)));
    assertEquals(5, IntStream.of(XmlText.of("a\tb\u0000 c").codePoints().toArray()).count());
  }
}
