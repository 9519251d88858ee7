package ribband.journal;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import ribband.measure.Dimension;
import ribband.measure.Name;
import ribband.measure.Quantity;
import ribband.measure.Unit;
import ribband.problem.OneLine;
import ribband.problem.Problems;

/** spec: materials may be used without being listed: the first unit binds. */
final class MaterialUnits {
  /** A unit and the file that bound a material to it. */
  private record Bound(Unit unit, String file) {}

  private final Map<String, Bound> bound = new LinkedHashMap<>();
  private final Problems problems;

  private MaterialUnits(Problems problems) {
    this.problems = problems;
  }

  /**
   * @param mentions in the order of the entries
   */
  static void check(Project project, List<Mention> mentions, Problems problems) {
    MaterialUnits units = new MaterialUnits(problems);
    project.materials().forEach(units::bind);
    mentions.forEach(units::check);
  }

  private void bind(String name, Material material) {
    material
        .unit()
        .or(() -> material.onHand().map(Quantity::unit))
        .or(() -> material.neverBelow().map(Quantity::unit))
        .ifPresent(unit -> bound.put(name, new Bound(unit, JournalFolder.PROJECT)));
  }

  private void check(Mention mention) {
    Unit unit = mention.amount().unit();
    Bound first =
        bound.putIfAbsent(
            Name.fold(mention.material().value()), new Bound(unit, mention.place().file()));
    if (first != null && !first.unit().goesWith(unit)) {
      problems.error(
          mention.place(),
          "material "
              + OneLine.quote(mention.material().value())
              + " is written in "
              + unit.told()
              + " here, but in "
              + first.unit().told()
              + " in "
              + first.file()
              + "; "
              + cure(first.unit(), unit));
    }
  }

  private static String cure(Unit first, Unit unit) {
    Optional<String> fluid =
        first.dimension() == Dimension.VOLUME && unit.name().equals("oz")
            ? Optional.of("write fl oz for fluid ounces")
            : Optional.empty();
    return fluid.orElse("write both in units that go together");
  }
}
