package ribband.spoken;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import ribband.measure.Unreadable;
import ribband.spoken.Lexeme.Mark;

/** Gathers which pieces a part names by number: {@code 3}, {@code 3, 4 and 5}, {@code 3-5}. */
final class PieceNumbers {
  private static final Pattern RANGE = Pattern.compile("([1-9][0-9]{0,4})[-–]([1-9][0-9]{0,4})");
  private static final List<String> TO = List.of("to", "through");
  private static final int MOST = 200;

  private final Part part;
  private final List<Integer> all = new ArrayList<>();
  private boolean marked;

  PieceNumbers(Part part) {
    this.part = part;
  }

  List<Integer> all() {
    return all;
  }

  /** Whether they can be no count: {@code number 5}. */
  boolean isMarked() {
    return marked;
  }

  /**
   * Takes the list that begins at a word.
   *
   * @param behind whether it stands behind its kind, where no word need mark it
   * @return where the next thing begins; empty where no list begins here
   */
  Optional<Integer> listAt(int at, boolean behind) throws Unreadable {
    boolean mark = part.is(at, SmallWords.NUMBER);
    int first = mark ? at + 1 : at;
    if ((!mark && !behind) || first == part.size()) {
      return Optional.empty();
    }
    int end = itemAt(first);
    if (end == first) {
      return Optional.empty();
    }
    marked |= mark;
    while (part.isMark(end, Mark.AND) || part.isMark(end, Mark.COMMA)) {
      int next = part.is(end + 1, SmallWords.NUMBER) ? end + 2 : end + 1;
      int behindItem = itemAt(next);
      if (behindItem == next) {
        break;
      }
      end = behindItem;
    }
    return Optional.of(end);
  }

  /** Takes one number or range; gives back where the next thing begins, here if it is none. */
  private int itemAt(int at) throws Unreadable {
    if (at >= part.size()) {
      return at;
    }
    Matcher range = RANGE.matcher(part.get(at).plain());
    if (range.matches()) {
      range(Integer.parseInt(range.group(1)), Integer.parseInt(range.group(2)));
      return at + 1;
    }
    Optional<Integer> one = part.whole(at);
    if (one.isEmpty()) {
      return at;
    }
    Optional<Integer> last = part.is(at + 1, TO) ? part.whole(at + 2) : Optional.empty();
    if (last.isPresent()) {
      range(one.get(), last.get());
      return at + 3;
    }
    all.add(one.get());
    return at + 1;
  }

  private void range(int first, int last) throws Unreadable {
    if (last <= first || last - first > MOST) {
      throw new Unreadable("has a range that runs backwards or far", "write 3-5");
    }
    marked = true;
    for (int number = first; number <= last; number++) {
      all.add(number);
    }
  }
}
