package ribband.shop;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.apache.commons.numbers.fraction.BigFraction;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import ribband.measure.Unit;
import ribband.measure.Unreadable;

/** Resin weighs about as much as the cloth it wets out by hand: common practice, no source. */
class ClothTest {
  /** 6 oz a square yard over 4 ft x 9 ft, which is 4 yd2: 24 oz. */
  @ParameterizedTest
  @CsvSource({
    "6 oz per yd2, 4 ft x 9 ft, 24, oz",
    "6 oz/yd2, 36 ft2, 24, oz",
    "200 g per m2, 1 m x 2 m, 400, g",
    "200 g/m2, 0.5 m2, 100, g",
    "400 g per 2 m2, 0.5 m2, 100, g"
  })
  void resinForCloth(String cloth, String area, int weight, String unit) {
    assertEquals(
        BigFraction.of(weight),
        Read.by(Cloth::read, cloth).resin(Read.quantity(area)).in(Unit.of(unit)).number());
  }

  /** 6 oz a square yard are 203.4 g a square metre, by the definitions. */
  @Test
  void bothSystemsAgree() {
    assertEquals(
        "203.4",
        Read.by(Cloth::read, "6 oz per yd2")
            .resin(Read.quantity("1 m2"))
            .inBase()
            .bigDecimalValue(1, java.math.RoundingMode.HALF_UP)
            .toPlainString());
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "6 oz",
        "6 fl oz per yd2",
        "6 oz per ft",
        "0 oz per yd2",
        "per yd2",
        "6 oz per",
        "x"
      })
  void whatIsNoClothIsRefused(String text) {
    assertEquals(
        "is not a weight for an area; write 6 oz per yd2 or 200 g per m2",
        assertThrows(Unreadable.class, () -> Cloth.read(text)).getMessage());
  }
}
