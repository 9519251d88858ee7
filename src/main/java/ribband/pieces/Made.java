package ribband.pieces;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import ribband.journal.PieceWork;
import ribband.measure.Hours;
import ribband.measure.Name;

/** What one entry made of one kind. */
final class Made {
  /** Where no side is told. */
  private static final String UNTOLD = "";

  private final Map<String, Long> bySide = new LinkedHashMap<>();

  void add(PieceWork work) {
    bySide.merge(work.side().map(Name::fold).orElse(UNTOLD), (long) work.count(), Long::sum);
  }

  /** Those taken back not counted; below zero where more were taken back. */
  long pieces() {
    return bySide.values().stream().mapToLong(Long::longValue).sum();
  }

  long pieces(String side) {
    return bySide.get(side);
  }

  /** Hours in the proportion of the pieces, for the sides that have more of them now. */
  Map<String, Hours> hoursBySide(Hours hours) {
    List<String> sides = new ArrayList<>();
    List<BigInteger> pieces = new ArrayList<>();
    bySide.forEach(
        (side, count) -> {
          if (count > 0) {
            sides.add(side);
            pieces.add(BigInteger.valueOf(count));
          }
        });
    List<Hours> shares = Shares.of(hours, pieces);
    Map<String, Hours> split = new LinkedHashMap<>();
    for (int i = 0; i < sides.size(); i++) {
      split.put(sides.get(i), shares.get(i));
    }
    return split;
  }
}
