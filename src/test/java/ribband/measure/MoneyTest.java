package ribband.measure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Money as exact minor units, and the table of ISO 4217. */
class MoneyTest {
  private static Currency currency(String code) throws Unreadable {
    return Currency.readCode(code);
  }

  @ParameterizedTest
  @CsvSource({
    "USD, 88.20, 8820",
    "USD, 7, 700",
    "USD, -20, -2000",
    "USD, 0.1, 10",
    "JPY, 1200, 1200",
    "KWD, 1.005, 1005",
    "CLF, 0.0001, 1",
    "EUR, −3.50, -350",
    "USD, 10000000000, 1000000000000"
  })
  void amountsAreReadToTheSmallestUnit(String code, String written, long minor) throws Unreadable {
    assertEquals(new Money(minor), currency(code).read(written));
  }

  @ParameterizedTest
  @CsvSource({
    "JPY, 12.5, has more decimal places than JPY has (0); write 13",
    "USD, 1.005, has more decimal places than USD has (2); write 1.01",
    "KWD, 1.0005, has more decimal places than KWD has (3); write 1.001",
    "USD, 10000000000.01, 'is more than any boat costs; write figures alone, as 88.20'"
  })
  void morePlacesThanTheCurrencyHasAreRefused(String code, String written, String told)
      throws Unreadable {
    Currency currency = currency(code);
    Unreadable refused = assertThrows(Unreadable.class, () -> currency.read(written));
    assertEquals(told, refused.getMessage());
  }

  /**
   * The minor digits of every code that both tables know, against those of the Java platform
   * (java.util.Currency, after the ISO 4217 maintenance agency's list one).
   */
  @Test
  void minorDigitsAreThoseOfIso4217() {
    Map<String, Integer> platform =
        java.util.Currency.getAvailableCurrencies().stream()
            .collect(
                Collectors.toMap(
                    java.util.Currency::getCurrencyCode,
                    java.util.Currency::getDefaultFractionDigits));
    Map<String, Currency> ours = Currency.all();
    List<String> differ = new ArrayList<>();
    int compared = 0;
    for (Currency currency : ours.values()) {
      Integer digits = platform.get(currency.code());
      if (digits != null) {
        compared++;
        if (digits != currency.digits()) {
          differ.add(currency.code() + " " + currency.digits() + " not " + digits);
        }
      }
    }
    assertEquals(List.of(), differ);
    assertTrue(compared > 150, compared + " codes compared");
  }

  /** Read at the ISO 4217 list: USD EUR GBP 2, JPY 0, KWD BHD 3, CLF 4. */
  @ParameterizedTest
  @CsvSource({"USD, 2", "EUR, 2", "GBP, 2", "JPY, 0", "KWD, 3", "BHD, 3", "CLF, 4"})
  void digitsOfTheCommonCurrencies(String code, int digits) throws Unreadable {
    assertEquals(digits, currency(code).digits());
  }

  /** Metals and test codes have no smallest unit, and are no money to build a boat with. */
  @Test
  void codesWithoutASmallestUnitAreNoCurrency() {
    for (String code : List.of("XAU", "XXX", "XTS", "dollars", "")) {
      assertThrows(Unreadable.class, () -> Currency.readCode(code), code);
    }
  }

  /** The table of java.math.RoundingMode's documentation, for the mode we use, HALF_UP. */
  @ParameterizedTest
  @CsvSource({
    "5.5, 6",
    "2.5, 3",
    "1.6, 2",
    "1.1, 1",
    "1.0, 1",
    "-1.0, -1",
    "-1.1, -1",
    "-1.6, -2",
    "-2.5, -3",
    "-5.5, -6"
  })
  void wholeUnitsAreRoundedHalfUp(String amount, String whole) throws Unreadable {
    Money money = currency("USD").read(amount);
    assertEquals(
        whole.replace("-", "−$").replaceFirst("^(?=[0-9])", "\\$"),
        Saying.moneyRounded(money, currency("USD")));
    assertEquals(new BigDecimal(whole), new BigDecimal(amount).setScale(0, RoundingMode.HALF_UP));
  }

  /** As doubles 0.1 + 0.2 is 0.30000000000000004 and 1000 x 19.99 is 19990.000000000135. */
  @Test
  void sumsThatDoublesGetWrong() throws Unreadable {
    Currency usd = currency("USD");
    assertEquals("0.30", usd.read("0.1").plus(usd.read("0.2")).decimal(usd));
    List<Money> thousand = new ArrayList<>();
    for (int i = 0; i < 1000; i++) {
      thousand.add(usd.read("19.99"));
    }
    assertEquals("19990.00", Money.sum(thousand).decimal(usd));
    assertEquals("$19,990.00", Saying.money(Money.sum(thousand), usd));
  }

  @Test
  void everyCurrencyPrintsWhatItReads() throws Unreadable {
    SplittableRandom random = new SplittableRandom(2);
    for (Currency currency : Currency.all().values()) {
      for (int i = 0; i < 50; i++) {
        Money money = new Money(random.nextLong(-1_000_000_000_000L, 1_000_000_000_001L));
        assertEquals(money, currency.read(money.decimal(currency)), money + " " + currency);
      }
    }
  }

  @Test
  void sumsDoNotDependOnTheirOrder() {
    SplittableRandom random = new SplittableRandom(3);
    List<Money> amounts = new ArrayList<>();
    long expected = 0;
    for (int i = 0; i < 10_000; i++) {
      long minor = random.nextLong(-100_000, 1_000_000);
      expected += minor;
      amounts.add(new Money(minor));
    }
    assertEquals(new Money(expected), Money.sum(amounts));
    java.util.Collections.reverse(amounts);
    assertEquals(new Money(expected), Money.sum(amounts));
  }

  @Test
  void hostileLengthsAreRefusedAtOnce() throws Unreadable {
    Currency usd = currency("USD");
    for (String text :
        List.of(
            "9".repeat(60_000),
            "0." + "1".repeat(60_000),
            "1,".repeat(30_000),
            "$".repeat(60_000))) {
      assertEquals(
          "is not an amount of money; write figures alone, as 88.20",
          assertThrows(Unreadable.class, () -> usd.read(text)).getMessage());
    }
  }
}
