package ribband.spoken;

import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import ribband.measure.Currency;
import ribband.spoken.CurrencyNames.Whose;

/**
 * A figure that is money, inside a part.
 *
 * @param figures with a point, as the currency reads it
 * @param first where its first word stands, a currency's name included
 * @param last where its last word stands
 * @param mark what makes it money
 */
record Amount(String figures, int first, int last, Mark mark) {
  /** What makes a figure money. */
  enum Mark {
    /** A sign, a code or a word of the project's currency. */
    OWN,
    /** Another currency's. */
    FOREIGN,
    /** It has just the places of the currency. */
    PLACES,
    /** Nothing: it is money only where the part says that it was paid. */
    NONE
  }

  private static final Pattern FIGURE =
      Pattern.compile(
          "([-−]?)(\\p{Sc}|[a-z]{3})?([-−]?)([0-9.][0-9.,'’]{0,30})(\\p{Sc}|[a-z]{3})?");

  /** The money that a word is the figure of. */
  static Optional<Amount> at(Part part, int at, Currency own) {
    Lexeme word = part.get(at);
    Matcher figure = FIGURE.matcher(word.plain());
    if (!word.isWord() || !figure.matches()) {
      return Optional.empty();
    }
    String typed = part.typed(word);
    Whose inside = inside(typed, figure, own);
    Whose before = at > 0 ? beside(part, at - 1, own) : Whose.NONE;
    Whose after = at + 1 < part.size() ? beside(part, at + 1, own) : Whose.NONE;
    boolean named = figure.group(2) != null || figure.group(5) != null;
    if (named && inside == Whose.NONE) {
      return Optional.empty();
    }
    String figures = figure.group(1) + figure.group(3) + pointed(figure.group(4), own);
    int first = before == Whose.NONE ? at : at - 1;
    int last = after == Whose.NONE ? at : at + 1;
    List<Whose> all = List.of(inside, before, after);
    if (all.contains(Whose.FOREIGN)) {
      return Optional.of(new Amount(figures, first, last, Mark.FOREIGN));
    }
    if (all.contains(Whose.OWN)) {
      return Optional.of(new Amount(figures, first, last, Mark.OWN));
    }
    if (part.is(at + 1, SmallWords.HOUR) || part.is(at + 1, SmallWords.MINUTE)) {
      return Optional.empty();
    }
    boolean places =
        own.digits() > 0 && figures.matches("[-−]?[0-9.,'’]*\\.[0-9]{" + own.digits() + "}");
    return Optional.of(new Amount(figures, at, at, places ? Mark.PLACES : Mark.NONE));
  }

  private static Whose inside(String typed, Matcher figure, Currency own) {
    for (int group : new int[] {2, 5}) {
      if (figure.group(group) != null) {
        boolean sameLength = typed.length() == figure.group().length();
        String raw =
            sameLength
                ? typed.substring(figure.start(group), figure.end(group))
                : figure.group(group);
        return CurrencyNames.whose(raw, figure.group(group), own);
      }
    }
    return Whose.NONE;
  }

  private static Whose beside(Part part, int at, Currency own) {
    Lexeme word = part.get(at);
    return word.isWord() && word.name().isNothing()
        ? CurrencyNames.whose(part.typed(word), word.plain(), own)
        : Whose.NONE;
  }

  /** A comma is a decimal one where it can be no thousands mark. */
  private static String pointed(String figures, Currency own) {
    boolean decimal =
        own.digits() > 0
            && own.digits() != 3
            && figures.matches("[0-9]+,[0-9]{" + own.digits() + "}");
    return decimal ? figures.replace(',', '.') : figures;
  }
}
