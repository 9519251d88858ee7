package ribband.measure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class WarmthTest {
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "61 F | 61 °F",
        "61F | 61 °F",
        "77 F for 4 h then 59 F | 77 °F for 4 h, then 59 °F",
        "77 F for 4 h, then 59 F for 90 min, then 12 C | 77 °F for 4 h, then 59 °F for 1 h 30 min,"
            + " then 54 °F"
      })
  void isReadAndSaid(String written, String said) throws Unreadable {
    assertEquals(said, new ShopTalk(Units.US).warmth(Warmth.read(written)));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "warm | is not a temperature; write 61 F or 16 C",
        "77 F for 4 h | does not say how warm it is after that; write 77 F for 4 h then 59 F",
        "77 F then 59 F | does not say for how long; write 61 F, or 77 F for 4 h then 59 F",
        "77 F for 4 then 59 F | has no unit of time; write 4 min, h or days"
      })
  void aWrongOneIsTold(String written, String told) {
    assertEquals(told, assertThrows(Unreadable.class, () -> Warmth.read(written)).getMessage());
  }
}
