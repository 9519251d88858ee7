package ribband.spoken;

import java.util.HashSet;
import java.util.List;
import ribband.journal.PieceKind;
import ribband.measure.Unreadable;

/** What the total of a kind allows: which numbers, how many in all and on a side. */
record PieceLimits(PieceKind kind) {
  void checkNumbers(List<Integer> which) throws Unreadable {
    if (new HashSet<>(which).size() < which.size()) {
      throw new Unreadable("names a number twice", "keep one");
    }
    if (which.stream().anyMatch(number -> number > kind.total() || number < 1)) {
      throw thereAre(kind.total(), kind.name());
    }
  }

  /**
   * @param sides how many sides that count stands on; 0 where none is named
   */
  void checkCount(int count, int sides) throws Unreadable {
    if (count == 0) {
      throw new Unreadable("counts nothing", "leave it out");
    }
    if (count * Math.max(1, sides) > kind.total()) {
      throw thereAre(kind.total(), kind.name());
    }
    if (sides > 0 && count > mostOnASide()) {
      throw thereAre(mostOnASide(), kind.name() + " on a side");
    }
  }

  /** The sides share the total; where it does not divide one may have one more. */
  private int mostOnASide() {
    return -Math.floorDiv(-kind.total(), kind.sides().size());
  }

  private static Unreadable thereAre(int most, String what) {
    return new Unreadable("there are " + most + " " + what, "look at the figure again");
  }
}
