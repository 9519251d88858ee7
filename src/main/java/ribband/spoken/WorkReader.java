package ribband.spoken;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import ribband.journal.Phase;
import ribband.measure.Hours;
import ribband.measure.Unreadable;
import ribband.problem.Nearest;
import ribband.problem.OneLine;

/** Reads a part as hours, a phase, or both. */
final class WorkReader {
  private static final List<String> BEFORE_A_CLOCK = List.of("at", "from", "until", "till", "by");

  /** A bare decimal above it may be a price. */
  private static final Hours LONG_NIGHT = Hours.ofMinutes(16 * 60);

  private final Part part;
  private final Collection<String> phases;
  private final List<Lexeme> unknown = new ArrayList<>();
  private Optional<Phase> phase = Optional.empty();
  private Optional<TimePhrase> time = Optional.empty();
  private boolean isDecimal;
  private boolean isPriced;
  private Optional<TimePhrase> second = Optional.empty();

  private WorkReader(Part part, Collection<String> phases) {
    this.part = part;
    this.phases = phases;
  }

  /** Empty where the part is not about work. */
  static Optional<Heard> read(Part part, Collection<String> phases) {
    try {
      return new WorkReader(part, phases).read();
    } catch (Unreadable e) {
      return Optional.of(new Heard.Unclear(e.wrong() + "; " + e.cure()));
    }
  }

  private Optional<Heard> read() throws Unreadable {
    int at = 0;
    while (at < part.size()) {
      at = word(at);
    }
    boolean bare = isBare(time) && (second.isEmpty() || isBare(second));
    if (bare && phase.isEmpty()) {
      return Optional.empty();
    }
    if (second.isPresent()) {
      throw new Unreadable("has two figures for hours", "write hours and minutes as 2:45");
    }
    if (bare && (isPriced || isDecimal && time.get().hours().compareTo(LONG_NIGHT) > 0)) {
      throw new Unreadable(
          "may be hours or money",
          "write " + time.get().hours().decimal() + " h, or a currency sign");
    }
    if (!unknown.isEmpty()) {
      return time.map(hours -> new Heard.Unclear(whyNot(hours.form())));
    }
    return phase.isEmpty() && time.isEmpty()
        ? Optional.empty()
        : Optional.of(new Heard.Work(phase, time));
  }

  private static boolean isBare(Optional<TimePhrase> time) {
    return time.filter(t -> t.form() == TimePhrase.Form.BARE).isPresent();
  }

  /** Takes what begins at a word; gives back where the next thing begins. */
  private int word(int at) throws Unreadable {
    Lexeme word = part.get(at);
    Optional<TimePhrase> found =
        word.name().isNothing() ? TimePhrase.at(part, at) : Optional.empty();
    if (found.isPresent()) {
      return time(found.get(), at);
    }
    Optional<Phase> named = word.name().phase();
    if (named.isPresent()) {
      if (phase.isPresent() && !phase.equals(named)) {
        throw new Unreadable(
            "names two phases",
            "write the hours of each, as "
                + phase.get().id()
                + " 1:30, "
                + named.get().id()
                + " 1:15");
      }
      phase = named;
    } else if (!word.isIn(SmallWords.AT_WORK)) {
      unknown.add(word);
    }
    return at + 1;
  }

  private int time(TimePhrase found, int at) throws Unreadable {
    if (part.is(at - 1, BEFORE_A_CLOCK) && part.get(at).plain().indexOf(':') > 0) {
      throw new Unreadable("is a time of day", "write how long it was, as 2:45");
    }
    isDecimal |= part.get(at).whole().isEmpty();
    isPriced |= isDecimal && (part.is(found.end(), "for") || hasNoParts(part.get(at)));
    second = time.map(first -> found);
    time = time.or(() -> Optional.of(found));
    return found.end();
  }

  /** {@code 12.00}: nobody writes whole hours so. */
  private static boolean hasNoParts(Lexeme figure) {
    return figure.plain().endsWith(".00") || figure.plain().endsWith(",00");
  }

  private String whyNot(TimePhrase.Form form) {
    Lexeme word = unknown.get(0);
    boolean mayBePhase = phase.isEmpty() && unknown.size() == 1 && word.isWord();
    if (mayBePhase && phases.contains(word.plain())) {
      return OneLine.quote(part.typed(word))
          + " may be the phase or a plain word; write its hours into the entry";
    }
    if (mayBePhase && !phases.isEmpty()) {
      return OneLine.quote(part.typed(word))
          + " is no phase; "
          + Nearest.hint(word.plain(), phases, "");
    }
    return form == TimePhrase.Form.BARE
        ? Why.unknown(part, word, "not counted")
        : Why.unknown(part, word, "the hours are not counted");
  }
}
