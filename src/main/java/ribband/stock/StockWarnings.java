package ribband.stock;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import ribband.joints.EstimatedUse;
import ribband.journal.Entry;
import ribband.measure.Name;
import ribband.measure.Saying;
import ribband.measure.Unit;
import ribband.problem.OneLine;
import ribband.problem.Place;
import ribband.problem.Problem;
import ribband.problem.Problems;
import ribband.stock.Move.Kind;

/** Gathers what does not add up on a shelf. */
final class StockWarnings {
  private final Problems problems = new Problems();
  private final Set<String> toldOfMeasure = new HashSet<>();

  List<Problem> sorted() {
    return problems.sorted();
  }

  /**
   * spec: using more than there is gives a warning with the entry and the shortfall.
   *
   * @param place where the amount stands; the entry alone for what was reckoned
   */
  void ofShortfall(Move move, Place place, String material) {
    if (!move.shortfall().isZero()) {
      problems.warning(
          place,
          "of material "
              + OneLine.quote(material)
              + " "
              + Saying.quantity(move.amount())
              + (move.kind() == Kind.ESTIMATED ? " go by estimate, " : " go, ")
              + "but "
              + (move.moved().isZero()
                  ? "none is"
                  : "only " + Saying.quantity(move.moved()) + " are")
              + " on hand, "
              + Saying.quantity(move.shortfall())
              + " short; write what was bought, or what is left on the shelf");
    }
  }

  void ofNoAmount(Entry entry, String material) {
    problems.warning(
        Place.of(entry.file()),
        "material "
            + OneLine.quote(material)
            + " is bought with no amount, so the shelf does not count it; write amount: 1 qt, or"
            + " item: in place of material:");
  }

  /** Once for each material: the cure is one line of the project. */
  void ofOtherMeasure(Entry entry, EstimatedUse use, Unit counted) {
    if (toldOfMeasure.add(Name.fold(use.material()))) {
      problems.warning(
          Place.of(entry.file()),
          "what was glued here took "
              + use.amount().unit().told()
              + " of material "
              + OneLine.quote(use.material())
              + ", which is counted in "
              + counted.told()
              + "; write the adhesive's densities, or what was used");
    }
  }
}
