package ribband.measure;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Amounts as the shop measures them; the factors are those of Unit, exact by definition. */
class ShopUnitsTest {
  @ParameterizedTest
  @CsvSource({
    "1 1/2 fl oz, 44 ml, 1½ fl oz",
    "1 qt, 0.95 l, 1 qt",
    "44 ml, 44 ml, 1½ fl oz",
    "1 l, 1 l, 1 qt",
    "1 lb, 0.45 kg, 1 lb",
    "2 1/2 in x 6 in, 97 cm², 15 in²",
    "38 ft2, 3.53 m², 38 ft²",
    "0.5 m2, ½ m², 5⅜ ft²",
    "6 mm, 6 mm, ¼ in",
    "0.1 mm, 0.1 mm, 0 in",
    "40 screws, 40 screws, 40 screws",
    "12 board feet, 12 bf, 12 bf"
  })
  void amounts(String written, String metric, String us) throws Unreadable {
    Quantity quantity = Quantity.read(written);
    assertEquals(metric, Saying.quantity(ShopUnits.metric(quantity)));
    assertEquals(us, Saying.quantity(ShopUnits.us(quantity)));
  }
}
