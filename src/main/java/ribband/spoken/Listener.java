package ribband.spoken;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import ribband.measure.Currency;

/** Hears what each part of a line says: the longest stretch that says one thing is a part. */
final class Listener {
  /** A list of numbers behind its kind has so many commas at most. */
  private static final int MOST_NUMBERS = 24;

  /** Hours and minutes, and things bought together, are fewer. */
  private static final int MOST_JOINED = 3;

  private final String line;
  private final Vocabulary names;
  private final Currency currency;
  private final List<Segment> segments;

  Listener(String line, Vocabulary names, Currency currency) {
    this.line = line;
    this.names = names;
    this.currency = currency;
    this.segments = Segment.of(line, Lexer.read(line, names));
  }

  /** The parts in order; together they are the whole line. */
  List<Found> listen() {
    List<Found> found = new ArrayList<>();
    int at = 0;
    while (at < segments.size()) {
      Found next = longestFrom(at);
      found.add(next);
      at += segmentsOf(next, at);
    }
    return found;
  }

  private int segmentsOf(Found found, int at) {
    int count = 1;
    while (segments.get(at + count - 1).end() < found.end()) {
      count++;
    }
    return count;
  }

  private Found longestFrom(int at) {
    for (int last = farthest(at); last > at; last--) {
      Found joined = found(at, last);
      if (!joined.isLoose() && !isSeveral(joined, at, last)) {
        return joined;
      }
    }
    Found alone = found(at, at);
    if (alone.isLoose() && goesOnSoftly(at) && found(at + 1, at + 1).isLoose()) {
      // Neither says anything by itself: what is wrong with both together is nearer the slip.
      Found both = found(at, at + 1);
      if (both.why().isPresent()) {
        return both;
      }
    }
    return alone.heard().isPresent()
        ? alone
        : Why.of(alone.part(), names).map(alone::unclear).orElse(alone);
  }

  private boolean goesOnSoftly(int at) {
    return at + 1 < segments.size()
        && segments.get(at + 1).maybeGoesOn()
        && segments.get(at + 1).join() == Segment.Join.SOFT;
  }

  private int farthest(int at) {
    boolean pieces = hasKind(segments.get(at));
    int last = at;
    while (last + 1 < segments.size()
        && last - at < (pieces ? MOST_NUMBERS : MOST_JOINED)
        && segments.get(last + 1).maybeGoesOn()
        && !(pieces && hasKind(segments.get(last + 1)))) {
      last++;
    }
    return last;
  }

  private static boolean hasKind(Segment segment) {
    return segment.words().stream().anyMatch(word -> word.name().kind().isPresent());
  }

  /** What money went for may hold any words, so what says something of its own is kept out. */
  private boolean isSeveral(Found joined, int first, int last) {
    return joined.heard().filter(Heard.Cost.class::isInstance).isPresent()
        && Stream.iterate(first + 1, n -> n <= last, n -> n + 1)
            .anyMatch(n -> !found(n, n).isLoose());
  }

  private Found found(int first, int last) {
    List<Lexeme> words = new ArrayList<>(segments.get(first).words());
    for (Segment next : segments.subList(first + 1, last + 1)) {
      words.addAll(next.continued());
    }
    Part part = new Part(line, words);
    return new Found(
        part,
        segments.get(first).join(),
        segments.get(first).start(),
        segments.get(last).end(),
        hear(part));
  }

  private Optional<Heard> hear(Part part) {
    Optional<Heard> pieces = PieceReader.read(part);
    Optional<Heard> work = WorkReader.read(part, names.phases());
    List<Heard> all =
        Stream.of(pieces, work, MoneyReader.read(part, currency, names))
            .flatMap(Optional::stream)
            .toList();
    List<Heard> sure = all.stream().filter(heard -> !(heard instanceof Heard.Unclear)).toList();
    if (sure.size() > 1 || (pieces.isPresent() && isBare(work))) {
      return Optional.of(
          new Heard.Unclear("may be two things; write hours as 2:45, money with its sign"));
    }
    return Stream.concat(sure.stream(), all.stream()).findFirst();
  }

  /** A name that is a phase and a kind of pieces makes no hours of a bare figure. */
  private static boolean isBare(Optional<Heard> heard) {
    return heard
        .filter(Heard.Work.class::isInstance)
        .flatMap(work -> ((Heard.Work) work).time())
        .filter(time -> time.form() == TimePhrase.Form.BARE)
        .isPresent();
  }
}
