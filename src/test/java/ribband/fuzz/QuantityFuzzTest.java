package ribband.fuzz;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.code_intelligence.jazzer.junit.FuzzTest;
import java.math.BigInteger;
import java.nio.charset.StandardCharsets;
import org.apache.commons.numbers.fraction.BigFraction;
import ribband.measure.Dimension;
import ribband.measure.Quantity;
import ribband.measure.Saying;
import ribband.measure.Unreadable;

/** An amount is read, and what is said of it is the same amount where eighths can say it. */
class QuantityFuzzTest {
  private static final BigFraction THOUSAND = BigFraction.of(1000);

  @FuzzTest(maxDuration = "4s")
  void quantity(byte[] bytes) throws Unreadable {
    String text = new String(bytes, StandardCharsets.UTF_8);
    Quantity quantity;
    try {
      quantity = Quantity.read(text);
    } catch (Unreadable refusal) {
      Refusal.isOfUse(text, refusal, Quantity::read);
      return;
    }
    assertTrue(quantity.number().signum() >= 0, text);
    assertTrue(quantity.unit().goesWith(quantity.unit()), text);
    assertEquals(quantity.inBase().add(quantity.inBase()), quantity.times(2).inBase(), text);
    String said = Saying.quantity(quantity);
    if (saysAll(quantity)) {
      assertEquals(quantity, Quantity.read(said), text + " is said as " + said);
    }
  }

  private static boolean saysAll(Quantity quantity) {
    BigInteger parts = quantity.number().multiply(8).getDenominator();
    // The last figure of a word for what is counted is said as it is of a unit: raised.
    return parts.equals(BigInteger.ONE)
        && quantity.number().compareTo(THOUSAND) < 0
        && (quantity.unit().dimension() != Dimension.COUNT
            || !quantity.unit().name().matches(".*[23]"));
  }
}
