package ribband.recap;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;

/** What of a name is pasted. */
class PlainNameTest {
  @Test
  void aNameIsOneLineOfSingleSpaces() {
    assertEquals("a b c d e", PlainName.of(" a\n\nb\tc\u2028d\u00a0 \u2029e\r\n"));
  }

  @Test
  void whatSteersOrCannotBeSeenIsLeftOut() {
    assertEquals("red [31m", PlainName.of("red \u001b[31m\u202e\u200b\u00ad\ufeff\ud83d"));
    assertEquals("", PlainName.of("\u200b\u0007"));
  }

  @Test
  void joinersAndLettersOfAnyScriptStay() {
    assertEquals("نامه\u200cها 👩\u200d🔧 é", PlainName.of("نامه\u200cها 👩\u200d🔧 é"));
  }
}
