package ribband.spoken;

import java.util.Locale;
import java.util.Optional;
import java.util.regex.Pattern;
import ribband.measure.Hours;
import ribband.measure.Unreadable;
import ribband.spoken.Lexeme.Mark;

/**
 * A length of time in words or figures, inside a part.
 *
 * @param end just behind its last word
 * @param form whether it can be nothing else
 */
record TimePhrase(Hours hours, int end, Form form) {
  /** Whether it is hours by itself. */
  enum Form {
    /** {@code 2:45}, {@code two hours}. */
    CERTAIN,
    /** {@code 2.75}: hours beside a phase alone. */
    BARE
  }

  private static final Pattern CLOCKED = Pattern.compile("[0-9]{1,4}(?::[0-9].*|h[0-9].*)");
  private static final Pattern FIGURES = Pattern.compile("[0-9]+[.,][0-9]+");
  private static final Pattern FRACTION =
      Pattern.compile("[0-9]{1,4}/[0-9]{1,4}|[0-9]{0,4}[¼½¾⅓⅔⅛⅜⅝⅞]");

  /** Minutes of one digit, as a clock has them. */
  private static final Pattern PADDED = Pattern.compile("0[0-9]");

  /** A number of hours or minutes, before its unit is known. */
  private record Value(String written, int end, boolean inWords) {}

  /**
   * The time that begins at a word, if one does.
   *
   * @throws Unreadable where it begins as one and is wrong
   */
  static Optional<TimePhrase> at(Part part, int at) throws Unreadable {
    if (part.get(at).isWord() && CLOCKED.matcher(part.get(at).plain()).matches()) {
      int end = part.is(at + 1, SmallWords.HOUR) ? at + 2 : at + 1;
      return Optional.of(new TimePhrase(Hours.read(part.get(at).plain()), end, Form.CERTAIN));
    }
    Optional<Value> value = value(part, at);
    if (value.isEmpty()) {
      return Optional.empty();
    }
    Value read = value.get();
    int unit = afterOf(part, read.end());
    if (part.is(unit, SmallWords.HOUR)) {
      return Optional.of(withRest(part, Hours.read(read.written()), unit + 1));
    }
    if (part.is(read.end(), SmallWords.MINUTE) && part.whole(read.end() - 1).isPresent()) {
      return Optional.of(
          new TimePhrase(Hours.read(read.written() + " min"), read.end() + 1, Form.CERTAIN));
    }
    return read.inWords()
        ? Optional.empty()
        : Optional.of(new TimePhrase(Hours.read(read.written()), read.end(), Form.BARE));
  }

  /** {@code half an hour}, {@code three quarters of an hour}. */
  private static int afterOf(Part part, int at) {
    int unit = part.is(at, "of") ? at + 1 : at;
    return part.is(unit, SmallWords.ARTICLES) ? unit + 1 : unit;
  }

  private static Optional<Value> value(Part part, int at) {
    Lexeme first = part.get(at);
    if (first.is("a") || first.is("an")) {
      return part.is(at + 1, SmallWords.HOUR)
          ? Optional.of(new Value("1", at + 1, true))
          : fractionWord(part, at);
    }
    Optional<Integer> whole = part.whole(at);
    if (whole.isEmpty()) {
      boolean figures =
          first.isWord()
              && (FIGURES.matcher(first.plain()).matches()
                  || FRACTION.matcher(first.plain()).matches());
      return figures
          ? Optional.of(new Value(first.plain(), at + 1, false))
          : fractionWord(part, at);
    }
    if (at + 1 < part.size() && FRACTION.matcher(part.get(at + 1).plain()).matches()) {
      return Optional.of(new Value(whole.get() + " " + part.get(at + 1).plain(), at + 2, false));
    }
    if (whole.get() == 3 && part.is(at + 1, SmallWords.QUARTER)) {
      return Optional.of(new Value("3/4", at + 2, true));
    }
    Optional<Value> more =
        part.isMark(at + 1, Mark.AND) ? fractionWord(part, at + 2) : Optional.empty();
    return Optional.of(
        more.map(rest -> new Value(whole.get() + " " + rest.written(), rest.end(), false))
            .orElse(new Value(whole.get().toString(), at + 1, false)));
  }

  /** {@code half}, {@code a half}, {@code a quarter}, {@code three quarters}. */
  private static Optional<Value> fractionWord(Part part, int from) {
    int at = part.is(from, "a") || part.is(from, "one") ? from + 1 : from;
    if (part.is(at, "half")) {
      return Optional.of(new Value("1/2", at + 1, true));
    }
    if (part.is(at, "quarter")) {
      return Optional.of(new Value("1/4", at + 1, true));
    }
    boolean threeQuarters = part.is(at, "three") || part.is(at, "3");
    return threeQuarters && part.is(at + 1, SmallWords.QUARTER)
        ? Optional.of(new Value("3/4", at + 2, true))
        : Optional.empty();
  }

  /** What follows the word for hours: minutes, or a part of an hour. */
  private static TimePhrase withRest(Part part, Hours hours, int end) throws Unreadable {
    boolean comma = part.isMark(end, Mark.COMMA);
    boolean and = part.isMark(end, Mark.AND);
    int at = comma || and ? end + 1 : end;
    boolean padded = at < part.size() && PADDED.matcher(part.get(at).plain()).matches();
    Optional<Integer> minutes =
        padded ? Optional.of(Integer.parseInt(part.get(at).plain())) : part.whole(at);
    if (minutes.isPresent() && part.is(at + 1, SmallWords.MINUTE)) {
      return new TimePhrase(hours.plus(minutes(minutes.get())), at + 2, Form.CERTAIN);
    }
    Optional<Value> fraction = and ? fractionWord(part, at) : Optional.empty();
    if (fraction.isPresent()) {
      int unit = afterOf(part, fraction.get().end());
      int behind = part.is(unit, SmallWords.HOUR) ? unit + 1 : fraction.get().end();
      return new TimePhrase(hours.plus(Hours.read(fraction.get().written())), behind, Form.CERTAIN);
    }
    if (minutes.isPresent() && !comma) {
      if (minutes.get() < 10 && !padded) {
        throw new Unreadable(
            "has one digit of minutes",
            "write 0" + minutes.get() + " or " + minutes.get() + " min");
      }
      return new TimePhrase(hours.plus(minutes(minutes.get())), at + 1, Form.CERTAIN);
    }
    return new TimePhrase(hours, end, Form.CERTAIN);
  }

  private static Hours minutes(int minutes) throws Unreadable {
    if (minutes > 59) {
      throw new Unreadable(
          String.format(Locale.ROOT, "has %d minutes beside its hours", minutes),
          "minutes go up to 59");
    }
    return Hours.ofMinutes(minutes);
  }
}
