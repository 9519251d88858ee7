package ribband.fuzz;

import static org.junit.jupiter.api.Assertions.assertEquals;

import com.code_intelligence.jazzer.junit.FuzzTest;
import java.nio.charset.StandardCharsets;
import java.util.List;
import ribband.measure.Currency;
import ribband.measure.Money;
import ribband.measure.Unreadable;

/** An amount is read and prints back in a currency of no, two or three places, or is refused. */
class MoneyFuzzTest {
  private static final List<Currency> CURRENCIES =
      List.of(Currency.all().get("JPY"), Currency.all().get("USD"), Currency.all().get("KWD"));

  @FuzzTest(maxDuration = "4s")
  void money(byte[] bytes) throws Unreadable {
    String text = new String(bytes, StandardCharsets.UTF_8);
    for (Currency currency : CURRENCIES) {
      Money money;
      try {
        money = currency.read(text);
      } catch (Unreadable refusal) {
        Refusal.isOfUse(text, refusal, currency::read);
        continue;
      }
      assertEquals(money, currency.read(money.decimal(currency)), text);
    }
  }
}
