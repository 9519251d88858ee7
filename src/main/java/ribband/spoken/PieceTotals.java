package ribband.spoken;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import ribband.journal.PieceKind;

/** Refuses a part that with those before it counts more than there are, or a piece twice. */
final class PieceTotals {
  private final Map<PieceKind, Integer> counted = new HashMap<>();
  private final Set<String> numbered = new HashSet<>();

  private PieceTotals() {}

  static List<Found> check(List<Found> found) {
    PieceTotals totals = new PieceTotals();
    List<Found> checked = new ArrayList<>();
    found.forEach(
        f ->
            checked.add(
                f.heard().isPresent() && f.heard().get() instanceof Heard.Count count
                    ? totals.check(f, count)
                    : f));
    return checked;
  }

  private Found check(Found found, Heard.Count count) {
    for (Piece piece : count.pieces()) {
      for (int number : piece.numbers()) {
        String one = piece.kind().name() + "/" + piece.side().orElse("") + "/" + Math.abs(number);
        if (!numbered.add(one)) {
          return found.unclear("names a number that was named before; keep one");
        }
      }
      int all = counted.merge(piece.kind(), piece.count(), Integer::sum);
      if (Math.abs(all) > piece.kind().total()) {
        return found.unclear(
            "comes to "
                + Math.abs(all)
                + " with what was said before; there are "
                + piece.kind().total()
                + " "
                + piece.kind().name());
      }
    }
    return found;
  }
}
