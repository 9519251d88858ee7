package ribband.spoken;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import ribband.measure.Currency;

/** How currencies are called beside an amount; from memory, the codes are those of ISO 4217. */
final class CurrencyNames {
  private static final List<String> DOLLARS =
      List.of("USD", "CAD", "AUD", "NZD", "SGD", "HKD", "TWD");
  private static final Map<String, List<String>> CODES =
      Map.ofEntries(
          Map.entry("$", DOLLARS),
          Map.entry("dollar", DOLLARS),
          Map.entry("dollars", DOLLARS),
          Map.entry("€", List.of("EUR")),
          Map.entry("euro", List.of("EUR")),
          Map.entry("euros", List.of("EUR")),
          Map.entry("£", List.of("GBP")),
          Map.entry("¥", List.of("JPY", "CNY")),
          Map.entry("yen", List.of("JPY")),
          Map.entry("franc", List.of("CHF")),
          Map.entry("francs", List.of("CHF")),
          Map.entry("forint", List.of("HUF")),
          Map.entry("forints", List.of("HUF")),
          Map.entry("krona", List.of("SEK", "ISK")),
          Map.entry("kronor", List.of("SEK")),
          Map.entry("kroner", List.of("DKK", "NOK")));

  /** Codes nobody takes for a word; the others must stand in capitals. */
  private static final List<String> PLAIN_CODES =
      List.of("usd", "eur", "gbp", "chf", "jpy", "cad", "aud", "nzd", "sek", "nok", "dkk");

  private CurrencyNames() {}

  /** Whose a name beside an amount is. */
  enum Whose {
    /** The project's own. */
    OWN,
    /** Another currency's. */
    FOREIGN,
    /** No currency's. */
    NONE
  }

  /**
   * @param typed a sign, a code or a word
   * @param plain the same in small letters
   */
  static Whose whose(String typed, String plain, Currency own) {
    if (plain.equalsIgnoreCase(own.code())) {
      return Whose.OWN;
    }
    Optional<List<String>> codes = Optional.ofNullable(CODES.get(plain));
    if (codes.isPresent()) {
      return codes.get().contains(own.code()) ? Whose.OWN : Whose.FOREIGN;
    }
    boolean sign =
        plain.length() == 1 && Character.getType(plain.charAt(0)) == Character.CURRENCY_SYMBOL;
    boolean code = PLAIN_CODES.contains(plain) || Currency.all().containsKey(typed);
    return sign || code ? Whose.FOREIGN : Whose.NONE;
  }
}
