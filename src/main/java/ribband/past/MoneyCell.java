package ribband.past;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import ribband.measure.Currency;
import ribband.measure.Money;
import ribband.measure.Unreadable;

/**
 * Reads amounts of the journal's currency as spreadsheets write them, exactly. Which mark parts the
 * decimals is one for the whole sheet, where any of its figures tells it.
 */
final class MoneyCell {
  private static final String SPACES = " '’\u00a0\u202f\u2009";
  private static final Pattern GROUPED =
      Pattern.compile("[0-9]{1,3}(?:[" + SPACES + "][0-9]{3}){1,6}(?:[.,][0-9]{1,9})?");
  private static final Pattern FIGURES = Pattern.compile("[0-9]{1,18}(?:[.,][0-9]{1,18}){0,9}");
  private static final Pattern WHOLE =
      Pattern.compile("[0-9]+|[1-9][0-9]{0,2}(?:(?:,[0-9]{3})+|(?:\\.[0-9]{3})+)");
  private static final Pattern NAMED =
      Pattern.compile("^(\\p{Sc}|[A-Za-z]{3})|(\\p{Sc}|[A-Za-z]{3})$");
  private static final Pattern POINTED = Pattern.compile("[0-9]{1,2}\\.[0-9]{1,4}");
  private static final Pattern COMMAED = Pattern.compile("[0-9]{1,2},[0-9]{1,4}");
  private static final int GROUP = 3;

  /** Whose sign it is, where it is not the journal's; a dollar sign is one of many dollars. */
  private static final Map<String, List<String>> SIGNS =
      Map.of("€", List.of("EUR"), "£", List.of("GBP"), "¥", List.of("JPY", "CNY"));

  private static final List<String> NO_DOLLARS = List.of("EUR", "GBP", "JPY", "CNY");

  private final Currency currency;
  private final Optional<Character> decimal;

  private MoneyCell(Currency currency, Optional<Character> decimal) {
    this.currency = currency;
    this.decimal = decimal;
  }

  /**
   * @param costs the sheet's amounts, as written
   * @param hours its lengths of time, which tell the decimal mark as well
   */
  static MoneyCell of(Currency currency, List<String> costs, List<String> hours) {
    boolean point = false;
    boolean comma = false;
    for (String text : costs) {
      Optional<Character> mark = evident(figures(text));
      point |= mark.filter(c -> c == '.').isPresent();
      comma |= mark.filter(c -> c == ',').isPresent();
    }
    for (String text : hours) {
      point |= POINTED.matcher(text).matches();
      comma |= COMMAED.matcher(text).matches();
    }
    return new MoneyCell(
        currency, point == comma ? Optional.empty() : Optional.of(point ? '.' : ','));
  }

  /** What is left of an amount when signs, names and parentheses are taken off. */
  private static String figures(String text) {
    return text.replaceAll("[^0-9.," + SPACES + "]", "").strip();
  }

  /** The decimal mark that an amount shows beyond doubt. */
  private static Optional<Character> evident(String figures) {
    if (!figures.matches("[0-9].*[0-9]")) {
      return Optional.empty();
    }
    int last = Math.max(figures.lastIndexOf('.'), figures.lastIndexOf(','));
    if (last == -1) {
      return Optional.empty();
    }
    char mark = figures.charAt(last);
    char other = mark == '.' ? ',' : '.';
    boolean repeated = figures.indexOf(mark) < last;
    if (repeated) {
      return Optional.of(other);
    }
    boolean grouping =
        figures.indexOf(other) == -1
            && figures.length() - last - 1 == GROUP
            && last <= GROUP
            && figures.charAt(0) != '0';
    return grouping ? Optional.empty() : Optional.of(mark);
  }

  /** Reads an amount. */
  Money read(String text) throws Unreadable {
    Bare bare = bare(text);
    if (currency.equals(Currency.NONE)) {
      if (bare.figures().matches("[0.,]+")) {
        return Money.ZERO;
      }
      throw new Unreadable(
          "is an amount, and the journal names no currency",
          "write currency: USD, or another code of ISO 4217, into project.yaml");
    }
    String plain = plain(bare.figures());
    return currency.read(bare.negative() ? "-" + plain : plain);
  }

  /** An amount without its sign and its currency. */
  private record Bare(boolean negative, String figures) {}

  private Bare bare(String text) throws Unreadable {
    String left = text.strip().replace('−', '-').replace('–', '-');
    int minus = 0;
    for (String before = ""; !left.equals(before); ) {
      before = left;
      if (left.startsWith("(") && left.endsWith(")")) {
        minus++;
        left = left.substring(1, left.length() - 1).strip();
      }
      if (left.startsWith("-") || left.endsWith("-")) {
        minus++;
        left = left.replaceFirst(left.startsWith("-") ? "^-" : "-$", "").strip();
      }
      Matcher named = NAMED.matcher(left);
      if (named.find()) {
        refuseOther(named.group().toUpperCase(Locale.ROOT));
        boolean known =
            named.group().length() == 1 || named.group().equalsIgnoreCase(currency.code());
        left = known ? strip(left, named) : left;
      }
    }
    if (minus > 1) {
      throw new Unreadable("is below zero twice", "write one minus, as -12.00");
    }
    return new Bare(minus == 1, left);
  }

  private static String strip(String text, Matcher named) {
    return (text.substring(0, named.start()) + text.substring(named.end())).strip();
  }

  /** Refuses a sign or a code of another currency; anything else is let pass. */
  void refuseOther(String name) throws Unreadable {
    boolean other = isCode(name) && !name.equals(currency.code());
    if (name.equals("$")) {
      other = NO_DOLLARS.contains(currency.code());
    } else if (SIGNS.containsKey(name)) {
      other = !SIGNS.get(name).contains(currency.code());
    }
    if (other && !currency.equals(Currency.NONE)) {
      throw new Unreadable(
          "is in " + name + ", and the journal in " + currency.code(),
          "reckon it in " + currency.code());
    }
  }

  private static boolean isCode(String name) {
    return name.length() == 3 && Currency.all().containsKey(name);
  }

  /** With a point for the decimals and no thousands marks; what is no number stays as it is. */
  private String plain(String figures) throws Unreadable {
    String joined =
        GROUPED.matcher(figures).matches() ? figures.replaceAll("[" + SPACES + "]", "") : figures;
    if (!FIGURES.matcher(joined).matches()) {
      return figures;
    }
    OptionalInt point = decimalAt(joined, joined.equals(figures));
    String whole = point.isPresent() ? joined.substring(0, point.getAsInt()) : joined;
    String places = point.isPresent() ? "." + joined.substring(point.getAsInt() + 1) : "";
    return WHOLE.matcher(whole).matches() ? whole.replaceAll("[.,]", "") + places : figures;
  }

  /** Where the decimal mark stands, if there is one. */
  private OptionalInt decimalAt(String figures, boolean mayBeGrouped) throws Unreadable {
    int last = Math.max(figures.lastIndexOf('.'), figures.lastIndexOf(','));
    if (last == -1) {
      return OptionalInt.empty();
    }
    char mark = figures.charAt(last);
    Optional<Character> shown = mayBeGrouped ? evident(figures) : Optional.of(mark);
    boolean repeated = figures.indexOf(mark) < last;
    if (repeated) {
      return OptionalInt.empty();
    }
    char decimals = shown.or(() -> decimal).orElseGet(() -> likely(mark));
    if (decimals == 0) {
      String thousand = figures.replace(Character.toString(mark), "");
      throw new Unreadable(
          "may be " + thousand + " or " + figures.replace(mark, '.'),
          "write it without a thousands mark, as "
              + thousand
              + "."
              + "0".repeat(currency.digits()));
    }
    return mark == decimals ? OptionalInt.of(last) : OptionalInt.empty();
  }

  /** Where nothing else tells: what the currency alone allows; 0 where it allows both. */
  private char likely(char mark) {
    if (currency.digits() == 0) {
      return mark == '.' ? ',' : '.';
    }
    return mark == '.' && currency.digits() >= GROUP ? '.' : 0;
  }
}
