package ribband.spoken;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import ribband.journal.PieceKind;
import ribband.measure.Name;
import ribband.measure.Unreadable;
import ribband.spoken.Lexeme.Mark;

/** Reads a part as pieces of one kind: how many, or which, on which side, done or taken back. */
final class PieceReader {
  private final Part part;
  private final int kindAt;
  private final PieceKind kind;
  private final List<String> sides = new ArrayList<>();
  private final PieceNumbers numbers;
  private Optional<Integer> count = Optional.empty();
  private Optional<Lexeme> unknown = Optional.empty();
  private boolean each;
  private boolean back;
  private boolean said;

  private PieceReader(Part part, int kindAt) {
    this.part = part;
    this.kindAt = kindAt;
    this.kind = part.get(kindAt).name().kind().orElseThrow();
    this.numbers = new PieceNumbers(part);
  }

  /** Empty where the part is not about pieces. */
  static Optional<Heard> read(Part part) {
    int[] kinds =
        IntStream.range(0, part.size())
            .filter(at -> part.get(at).name().kind().isPresent())
            .toArray();
    if (kinds.length != 1) {
      return Optional.empty();
    }
    try {
      return new PieceReader(part, kinds[0]).read();
    } catch (Unreadable e) {
      return Optional.of(new Heard.Unclear(e.wrong() + "; " + e.cure()));
    }
  }

  private Optional<Heard> read() throws Unreadable {
    int at = 0;
    while (at < part.size()) {
      at = at == kindAt ? at + 1 : word(at);
    }
    if (unknown.isPresent()) {
      return count.isPresent() || !numbers.all().isEmpty()
          ? Optional.of(new Heard.Unclear(Why.unknown(part, unknown.get(), "it is not counted")))
          : Optional.empty();
    }
    if (!said && count.isEmpty() && numbers.all().isEmpty() && sides.isEmpty() && !each) {
      return Optional.empty();
    }
    return Optional.of(new Heard.Count(pieces()));
  }

  /** Takes what begins at a word; gives back where the next thing begins. */
  private int word(int at) throws Unreadable {
    Lexeme word = part.get(at);
    if (word.name().side().isPresent()) {
      return side(word, at);
    }
    if (part.is(at, SmallWords.EACH) && (part.is(at + 1, "side") || part.is(at + 1, "sides"))) {
      each = true;
      return at + 2;
    }
    if (word.mark() == Mark.COMMA
        && at > kindAt
        && at + 1 < part.size()
        && part.get(at + 1).name().side().isPresent()) {
      return at + 1;
    }
    Optional<Integer> list = numbers.listAt(at, at > kindAt);
    if (list.isPresent()) {
      return list.get();
    }
    Optional<Integer> counted = at < kindAt ? counted(at) : Optional.empty();
    if (counted.isPresent()) {
      return counted.get();
    }
    if (part.is(at, SmallWords.SCRAPPED) || (word.is("back") && part.is(at + 1, "off"))) {
      back = true;
      return word.is("back") ? at + 2 : at + 1;
    }
    if (word.is("took") || word.is("off")) {
      return off(at);
    }
    if (part.is(at, SmallWords.FINISHED)) {
      said = true;
    } else if (!part.is(at, SmallWords.AT_THE_BOAT) && unknown.isEmpty()) {
      unknown = Optional.of(word);
    }
    return at + 1;
  }

  private int side(Lexeme word, int at) throws Unreadable {
    sides.add(ownSide(word));
    boolean more = part.isMark(at + 1, Mark.AND) && at + 2 < part.size();
    return more && part.get(at + 2).name().side().isPresent() ? at + 2 : at + 1;
  }

  private String ownSide(Lexeme word) throws Unreadable {
    String wanted = word.name().side().orElseThrow();
    return kind.sides().stream()
        .filter(side -> Name.fold(side).equals(wanted))
        .findFirst()
        .orElseThrow(
            () ->
                new Unreadable(
                    kind.name() + " have no side " + part.typed(word) + " in project.yaml",
                    "leave the side out"));
  }

  private Optional<Integer> counted(int at) throws Unreadable {
    Lexeme word = part.get(at);
    Optional<Integer> number = part.whole(at).or(() -> belowZero(word));
    if (number.isPresent()) {
      count(number.get());
      return Optional.of(at + 1);
    }
    if (word.isIn(SmallWords.ARTICLES) && part.is(at + 1, "pair")) {
      count(2);
      return Optional.of(at + 2);
    }
    if (!word.isIn(SmallWords.COUNTING)) {
      return Optional.empty();
    }
    count(word.is("both") || word.is("pair") ? 2 : 1);
    return Optional.of(at + 1);
  }

  private Optional<Integer> belowZero(Lexeme word) {
    if (!word.plain().matches("[-−][1-9][0-9]{0,4}")) {
      return Optional.empty();
    }
    back = true;
    return Optional.of(Integer.parseInt(word.plain().substring(1)));
  }

  private void count(int number) throws Unreadable {
    if (count.isPresent()) {
      throw new Unreadable("has two counts", "write the pieces of one kind as 2 " + kind.name());
    }
    count = Optional.of(number);
  }

  /**
   * {@code took a strake off} takes back; {@code off the list} is done; off alone may be either.
   */
  private int off(int at) throws Unreadable {
    if (part.is(at, "off") && part.is(at + 1, "the") && part.is(at + 2, "list")) {
      said = true;
      return at + 3;
    }
    boolean took = part.words().stream().anyMatch(w -> w.is("took"));
    boolean off = part.words().stream().anyMatch(w -> w.is("off"));
    if (!took || !off) {
      throw new Unreadable("may be done or taken back", "write 1 strake on, or took 1 strake off");
    }
    back = true;
    return at + 1;
  }

  private List<Piece> pieces() throws Unreadable {
    List<Integer> which = numbers.all();
    PieceLimits limits = new PieceLimits(kind);
    limits.checkNumbers(which);
    boolean several = part.get(kindAt).name().form() == Named.Form.SEVERAL;
    if (which.size() == 1 && several && !numbers.isMarked()) {
      throw new Unreadable(
          "may be a count or a number",
          "write " + which.get(0) + " " + kind.name() + ", or number " + which.get(0));
    }
    if (count.isPresent() && !which.isEmpty() && count.get() != which.size()) {
      throw new Unreadable("counts other than it names", "write the numbers alone");
    }
    if (count.isEmpty() && which.isEmpty() && several) {
      throw new Unreadable("does not say how many", "write 2 " + kind.name());
    }
    List<String> on = onSides(which);
    int number = which.isEmpty() ? count.orElse(1) : which.size();
    limits.checkCount(number, on.size());
    int sign = back ? -1 : 1;
    return (on.isEmpty() ? Stream.of(Optional.<String>empty()) : on.stream().map(Optional::of))
        .map(
            side ->
                new Piece(kind, side, which.stream().map(n -> sign * n).toList(), sign * number))
        .toList();
  }

  /** Empty where none is named. */
  private List<String> onSides(List<Integer> which) throws Unreadable {
    if (each && kind.sides().isEmpty()) {
      throw new Unreadable(kind.name() + " have no sides in project.yaml", "write how many in all");
    }
    if (each && !sides.isEmpty()) {
      throw new Unreadable("names a side and each side", "write the one or the other");
    }
    if (sides.size() > 1 && which.isEmpty()) {
      throw new Unreadable(
          "does not say how many on which side",
          "write 1 "
              + kind.name()
              + " "
              + sides.get(0)
              + ", 1 "
              + kind.name()
              + " "
              + sides.get(1));
    }
    return each ? kind.sides() : sides.stream().distinct().toList();
  }
}
