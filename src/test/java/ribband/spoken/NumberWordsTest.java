package ribband.spoken;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.HashMap;
import java.util.Map;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class NumberWordsTest {
  /**
   * The spelling out of English cardinals as the Unicode CLDR has it (rule set {@code
   * spellout-cardinal} of {@code rbnf/en.xml}: a word up to 19 and for each ten, ten and unit
   * joined by a hyphen), from memory.
   */
  private static String spelled(int number) {
    String[] units = {
      "",
      "one",
      "two",
      "three",
      "four",
      "five",
      "six",
      "seven",
      "eight",
      "nine",
      "ten",
      "eleven",
      "twelve",
      "thirteen",
      "fourteen",
      "fifteen",
      "sixteen",
      "seventeen",
      "eighteen",
      "nineteen"
    };
    String[] tens = {
      "", "", "twenty", "thirty", "forty", "fifty", "sixty", "seventy", "eighty", "ninety"
    };
    if (number < 20) {
      return units[number];
    }
    return tens[number / 10] + (number % 10 == 0 ? "" : "-" + units[number % 10]);
  }

  @Test
  void everyNumberToNinetyNineIsRead() {
    Map<String, Integer> read = new HashMap<>();
    for (int number = 1; number <= 99; number++) {
      assertEquals(OptionalInt.of(number), NumberWords.read(spelled(number)), spelled(number));
      read.put(spelled(number), number);
    }
    assertEquals(99, read.size());
  }

  @ParameterizedTest
  @CsvSource({"0, 0", "7, 7", "16, 16", "99999, 99999"})
  void figuresAreRead(String written, int number) {
    assertEquals(OptionalInt.of(number), NumberWords.read(written));
  }

  @ParameterizedTest
  @ValueSource(strings = {"", "07", "-1", "1.5", "100000", "hundred", "twenty-ten", "fourty"})
  void allElseIsNoNumber(String written) {
    assertEquals(OptionalInt.empty(), NumberWords.read(written));
  }

  @ParameterizedTest
  @CsvSource({
    "strake, strakes", "knee, knees", "half, halves", "shelf, shelves", "bench, benches",
    "box, boxes", "brace, braces", "key, keys", "body, bodies", "compass, compasses",
    "thwart, thwarts", "oar, oars"
  })
  void oneAndSeveralAreTold(String one, String several) {
    assertEquals(one, Plural.singular(several));
    assertEquals(one, Plural.singular(one));
    assertEquals(several, Plural.of(one));
  }

  @ParameterizedTest
  @CsvSource({"pies, pie", "as, as", "glass, glass"})
  void shortNamesAreTakenAsTheyLook(String name, String one) {
    assertEquals(one, Plural.singular(name));
  }
}
