package ribband.past;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.regex.Pattern;
import ribband.measure.Currency;
import ribband.measure.Unreadable;

/**
 * Which mark parts the decimals of a sheet's figures: one for all, where any of them tells it.
 *
 * @param shown the mark; empty where none tells it, or two tell different ones
 */
record DecimalMark(Optional<Character> shown) {
  private static final String SPACES = " '’\u00a0\u202f\u2009";
  private static final Pattern GROUPED =
      Pattern.compile("[0-9]{1,3}(?:[" + SPACES + "][0-9]{3}){1,6}(?:[.,][0-9]{1,9})?");
  private static final Pattern FIGURES = Pattern.compile("[0-9]{1,18}(?:[.,][0-9]{1,18}){0,9}");
  private static final Pattern WHOLE =
      Pattern.compile("[0-9]+|[1-9][0-9]{0,2}(?:(?:,[0-9]{3})+|(?:\\.[0-9]{3})+)");
  private static final Pattern POINTED = Pattern.compile("[0-9]{1,2}\\.[0-9]{1,4}");
  private static final Pattern COMMAED = Pattern.compile("[0-9]{1,2},[0-9]{1,4}");
  private static final int GROUP = 3;

  /**
   * @param costs the sheet's amounts, as written
   * @param hours its lengths of time, which tell the decimal mark as well
   */
  static DecimalMark of(List<String> costs, List<String> hours) {
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
    return new DecimalMark(point == comma ? Optional.empty() : Optional.of(point ? '.' : ','));
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

  /**
   * Figures with a point for the decimals and no thousands marks; what is no number stays as it is.
   */
  String plain(String figures, Currency currency) throws Unreadable {
    String joined =
        GROUPED.matcher(figures).matches() ? figures.replaceAll("[" + SPACES + "]", "") : figures;
    if (!FIGURES.matcher(joined).matches()) {
      return figures;
    }
    OptionalInt point = decimalAt(joined, joined.equals(figures), currency);
    String whole = point.isPresent() ? joined.substring(0, point.getAsInt()) : joined;
    String places = point.isPresent() ? "." + joined.substring(point.getAsInt() + 1) : "";
    return WHOLE.matcher(whole).matches() ? whole.replaceAll("[.,]", "") + places : figures;
  }

  /** Where the decimal mark stands, if there is one. */
  private OptionalInt decimalAt(String figures, boolean mayBeGrouped, Currency currency)
      throws Unreadable {
    int last = Math.max(figures.lastIndexOf('.'), figures.lastIndexOf(','));
    if (last == -1) {
      return OptionalInt.empty();
    }
    char mark = figures.charAt(last);
    Optional<Character> evident = mayBeGrouped ? evident(figures) : Optional.of(mark);
    boolean repeated = figures.indexOf(mark) < last;
    if (repeated) {
      return OptionalInt.empty();
    }
    char decimals = evident.or(() -> shown).orElseGet(() -> likely(mark, currency));
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
  private static char likely(char mark, Currency currency) {
    if (currency.digits() == 0) {
      return mark == '.' ? ',' : '.';
    }
    return mark == '.' && currency.digits() >= GROUP ? '.' : 0;
  }
}
