package ribband.pieces;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import ribband.journal.Entry;
import ribband.journal.PieceWork;
import ribband.measure.Hours;

/** Counts the pieces of a kind, or of one side of it; for one pass. */
final class Lot {
  private final List<Session> sessions = new ArrayList<>();
  private final TreeSet<Integer> numbers = new TreeSet<>();
  private boolean numbered = true;
  private long done;

  void add(PieceWork work) {
    done += work.count();
    numbered = numbered && (!work.numbers().isEmpty() || work.count() == 0);
    for (int number : work.numbers()) {
      if (number > 0) {
        numbers.add(number);
      } else {
        numbers.remove(-number);
      }
    }
  }

  void made(Entry entry, int pieces, Hours hours) {
    sessions.add(new Session(entry, pieces, hours));
  }

  int done(int total) {
    return within(done, total);
  }

  /** A journal without errors is within; any other is not to stop the counting. */
  static int within(long number, int total) {
    return (int) Math.max(0, Math.min(number, total));
  }

  Optional<Numbered> numbered(int total) {
    boolean told =
        numbered && numbers.size() == done && numbers.headSet(total, true).size() == done;
    return told ? Optional.of(new Numbered(List.copyOf(numbers), total)) : Optional.empty();
  }

  Sessions sessions() {
    return new Sessions(sessions);
  }
}
