package ribband.journal;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import ribband.measure.Name;
import ribband.measure.Quantity;
import ribband.measure.Unit;
import ribband.problem.OneLine;
import ribband.problem.Place;
import ribband.problem.Problems;

/**
 * spec: materials may be used without being listed: the first unit binds. Keeps what it has seen.
 */
final class MaterialUnits {
  private final Map<String, Unit> bound = new LinkedHashMap<>();
  private final Map<String, String> boundBy = new LinkedHashMap<>();
  private final Problems problems;

  MaterialUnits(Project project, Problems problems) {
    this.problems = problems;
    project
        .materials()
        .forEach(
            (name, material) ->
                unitOf(material)
                    .ifPresent(
                        unit -> {
                          bound.put(name, unit);
                          boundBy.put(name, JournalFolder.PROJECT);
                        }));
  }

  private static Optional<Unit> unitOf(Material material) {
    return material
        .unit()
        .or(() -> material.onHand().map(Quantity::unit))
        .or(() -> material.neverBelow().map(Quantity::unit));
  }

  void check(Entry entry) {
    entry.used().forEach((name, amount) -> check(entry, name, amount));
    entry.left().forEach((name, amount) -> check(entry, name, amount));
    for (Outlay outlay : entry.outlays()) {
      outlay
          .purchase()
          .filter(purchase -> purchase.material().isPresent() && purchase.amount().isPresent())
          .ifPresent(
              purchase ->
                  check(
                      entry,
                      purchase.material().orElseThrow(),
                      purchase.amount().orElseThrow().pack()));
    }
  }

  private void check(Entry entry, String name, Quantity amount) {
    Unit first = bound.putIfAbsent(Name.fold(name), amount.unit());
    if (first == null) {
      boundBy.put(Name.fold(name), entry.file());
    } else if (!first.goesWith(amount.unit())) {
      problems.error(
          new Place(entry.file(), 1, 1),
          "material "
              + OneLine.quote(name)
              + " is written here in "
              + amount.unit().told()
              + ", but in "
              + boundBy.get(Name.fold(name))
              + " in "
              + first.told()
              + "; write both in units that go together");
    }
  }
}
