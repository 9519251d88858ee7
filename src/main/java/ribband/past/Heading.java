package ribband.past;

import java.text.Normalizer;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import ribband.measure.Unreadable;
import ribband.past.HoursCell.Unit;

/**
 * What stands at the head of a column.
 *
 * @param text as written
 * @param words in small letters, without what stands in brackets
 * @param bracketed what stands in brackets: a unit, or a currency; may be empty
 */
record Heading(String text, List<String> words, String bracketed) {
  private static final Pattern BRACKETS =
      Pattern.compile("[(\\[{]([^()\\[\\]{}]*)[)\\]}]|(\\p{Sc})");
  private static final Pattern APART = Pattern.compile("[^\\p{L}\\p{M}\\p{N}']+");

  /** What follows these says what the column is of, and not what it is. */
  private static final Set<String> OF = Set.of("of", "on", "for", "in", "at");

  /** A column with one of these holds no figures of one session. */
  private static final Set<String> OTHER =
      Set.of(
          "to",
          "running",
          "cumulative",
          "cum",
          "total",
          "totals",
          "subtotal",
          "sum",
          "rank",
          "planned",
          "plan",
          "estimate",
          "estimated",
          "budget",
          "left",
          "remaining",
          "balance",
          "average",
          "mean",
          "rate",
          "per",
          "so");

  /** Clock times of which the hours would have to be reckoned. */
  private static final Set<String> CLOCK =
      Set.of("start", "started", "end", "ended", "begin", "began", "until", "stop", "finish");

  private static final Set<String> MINUTES = Set.of("min", "mins", "minutes", "minute");

  Heading {
    words = List.copyOf(words);
  }

  static Heading of(String cell) {
    String text = cell.strip();
    String plain = Normalizer.normalize(text, Normalizer.Form.NFC);
    Matcher brackets = BRACKETS.matcher(plain);
    String inside = "";
    if (brackets.find()) {
      inside = brackets.group(1) == null ? brackets.group(2) : brackets.group(1).strip();
    }
    String bare = BRACKETS.matcher(plain).replaceAll(" ").toLowerCase(Locale.ROOT);
    List<String> words = new ArrayList<>(Arrays.asList(APART.split(bare)));
    words.removeIf(String::isEmpty);
    return new Heading(text, words, inside);
  }

  /**
   * How well it names what a column tells: 3 by its own name, 2 by another word for it, 1 by a word
   * within, 0 not at all.
   */
  int fit(What what) {
    int whole = what.fit(String.join("-", words));
    if (whole > 0) {
      return whole + 1;
    }
    return within().filter(what::equals).isPresent() ? 1 : 0;
  }

  /** What its last telling word names: work hours are hours. */
  private Optional<What> within() {
    if (isClock() || words.stream().anyMatch(OTHER::contains)) {
      return Optional.empty();
    }
    Optional<What> named = Optional.empty();
    for (String word : words) {
      if (OF.contains(word)) {
        break;
      }
      for (What what : What.values()) {
        // An entry's name is one only where nothing else stands beside it.
        if (what != What.ENTRY && what.fit(word) > 0) {
          named = Optional.of(what);
        }
      }
    }
    return named;
  }

  boolean isClock() {
    return words.stream().anyMatch(CLOCK::contains);
  }

  Unit unit() {
    return MINUTES.contains(bracketed.toLowerCase(Locale.ROOT))
            || words.stream().anyMatch(MINUTES::contains)
        ? Unit.MINUTES
        : Unit.HOURS;
  }

  /** Refuses a heading that names another currency than the journal's. */
  void refuseOtherCurrency(MoneyCell money) throws Unreadable {
    money.refuseOther(bracketed);
  }
}
