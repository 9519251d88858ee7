package ribband.spoken;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import ribband.measure.Currency;
import ribband.measure.Money;
import ribband.measure.Unreadable;
import ribband.problem.OneLine;

/** Reads a part as money and what it went for. */
final class MoneyReader {
  /** What money went for is said in fewer words; more are a remark. */
  private static final int MOST_WORDS = 12;

  private final Part part;
  private final Currency currency;
  private final Vocabulary names;
  private final boolean paid;

  private MoneyReader(Part part, Currency currency, Vocabulary names) {
    this.part = part;
    this.currency = currency;
    this.names = names;
    this.paid = part.words().stream().anyMatch(word -> word.isIn(SmallWords.PAID));
  }

  /** Empty where the part is not about money. */
  static Optional<Heard> read(Part part, Currency currency, Vocabulary names) {
    return new MoneyReader(part, currency, names).read();
  }

  private Optional<Heard> read() {
    List<Amount> amounts = amounts();
    if (amounts.isEmpty() || part.words().stream().anyMatch(w -> w.mark() == Lexeme.Mark.COMMA)) {
      return Optional.empty();
    }
    Amount amount = amounts.get(0);
    if (amounts.size() > 1) {
      return unclear("has two amounts; put a comma between them");
    }
    if (currency.equals(Currency.NONE)) {
      return paid || amount.mark() == Amount.Mark.FOREIGN
          ? unclear("project.yaml names no currency; write there currency: USD or your own")
          : Optional.empty();
    }
    if (amount.mark() == Amount.Mark.FOREIGN) {
      return unclear(
          "is not in " + currency.code() + "; write what it came to in " + currency.code());
    }
    List<Lexeme> before = trimmed(part.words().subList(0, amount.first()));
    List<Lexeme> after = trimmed(part.words().subList(amount.last() + 1, part.size()));
    List<Lexeme> words = Stream.concat(before.stream(), after.stream()).toList();
    return whyNot(amount, words)
        .map(why -> unclear(why))
        .orElseGet(() -> cost(amount, before, after));
  }

  /** Figures that are money; a bare whole number only where nothing else is, and it was paid. */
  private List<Amount> amounts() {
    List<Amount> all =
        IntStream.range(0, part.size())
            .mapToObj(at -> Amount.at(part, at, currency))
            .flatMap(Optional::stream)
            .toList();
    List<Amount> marked = all.stream().filter(a -> a.mark() != Amount.Mark.NONE).toList();
    return marked.isEmpty() && paid ? all : marked;
  }

  private Optional<Heard> cost(Amount amount, List<Lexeme> before, List<Lexeme> after) {
    try {
      Money money = currency.read(amount.figures());
      boolean back = part.words().stream().anyMatch(w -> w.isIn(SmallWords.CAME_BACK));
      Money signed = back && !money.isNegative() ? Money.ZERO.minus(money) : money;
      return Optional.of(
          new Heard.Cost(new Spent((typed(before) + " " + typed(after)).strip(), signed)));
    } catch (Unreadable e) {
      return unclear(e.wrong() + "; " + e.cure());
    }
  }

  private static Optional<Heard> unclear(String why) {
    return Optional.of(new Heard.Unclear(why));
  }

  /** What keeps the words from being what the money went for. */
  private Optional<String> whyNot(Amount amount, List<Lexeme> words) {
    Optional<Lexeme> doubt =
        words.stream().filter(word -> word.isIn(SmallWords.DOUBTFUL)).findFirst();
    if (doubt.isPresent()) {
      return Optional.of(
          "with "
              + OneLine.quote(part.typed(doubt.get()))
              + " it is not clear what was paid; write the sum alone, as 23.70 sanding discs");
    }
    if (words.size() > MOST_WORDS) {
      return Optional.of("is long for what money went for; put a comma behind it");
    }
    Optional<Lexeme> figure = strayFigure(words);
    if (figure.isPresent()) {
      return Optional.of(
          "has a figure beside the money, "
              + OneLine.quote(part.typed(figure.get()))
              + "; put a comma between the two");
    }
    return switch (amount.mark()) {
      case OWN, FOREIGN, NONE -> Optional.empty();
      case PLACES -> paid ? Optional.empty() : hoursPerhaps(amount, words);
    };
  }

  /** A figure with no sign may be hours, where no word says what was bought. */
  private Optional<String> hoursPerhaps(Amount amount, List<Lexeme> words) {
    boolean named = words.stream().anyMatch(w -> w.name().kind().isPresent());
    Optional<String> slip = words.stream().flatMap(w -> Why.near(w, names).stream()).findFirst();
    boolean phase =
        IntStream.range(0, words.size())
            .anyMatch(
                i ->
                    words.get(i).name().phase().isPresent()
                        && !(i == words.size() - 1 && i > 1 && words.get(i - 1).is("for")));
    boolean measured = part.words().stream().anyMatch(w -> w.isIn(SmallWords.MEASURES));
    if (measured || part.is(amount.first() - 1, "at")) {
      return Optional.of("may be no money; if it is write " + signed(amount));
    }
    if (words.isEmpty() || named || phase) {
      return Optional.of(
          "may be hours or money; write " + amount.figures() + " h or " + signed(amount));
    }
    return slip.map(
        name -> "did you mean " + OneLine.quote(name) + "? If it is money write " + signed(amount));
  }

  private String signed(Amount amount) {
    return currency.sign().replace('\u00a0', ' ') + amount.figures();
  }

  /**
   * {@code 80 grit} and {@code two packs} are what was bought; a figure with nothing behind is not.
   */
  private Optional<Lexeme> strayFigure(List<Lexeme> words) {
    for (int i = 0; i < words.size(); i++) {
      Lexeme word = words.get(i);
      boolean figure = word.whole().isPresent() || word.plain().matches("[-−]?[0-9].*");
      boolean clocked = figure && word.plain().indexOf(':') > 0;
      boolean counts = i + 1 < words.size() && isPlainWord(words.get(i + 1));
      if (clocked || (figure && !counts)) {
        return Optional.of(word);
      }
    }
    return Optional.empty();
  }

  private static boolean isPlainWord(Lexeme word) {
    return word.isWord()
        && word.name().isNothing()
        && word.whole().isEmpty()
        && !word.isIn(SmallWords.HOUR)
        && !word.isIn(SmallWords.MINUTE);
  }

  /** Without small words at either end, nor those that say that it came back. */
  private static List<Lexeme> trimmed(List<Lexeme> words) {
    List<Lexeme> left = new ArrayList<>(words);
    while (!left.isEmpty() && isSmall(left.get(0))) {
      left.remove(0);
    }
    while (!left.isEmpty() && isSmall(left.get(left.size() - 1))) {
      left.remove(left.size() - 1);
    }
    return left;
  }

  private static boolean isSmall(Lexeme word) {
    return word.isIn(SmallWords.AT_THE_SHOP) || word.isIn(SmallWords.CAME_BACK);
  }

  private String typed(List<Lexeme> words) {
    return words.isEmpty()
        ? ""
        : part.line().substring(words.get(0).start(), words.get(words.size() - 1).end());
  }
}
