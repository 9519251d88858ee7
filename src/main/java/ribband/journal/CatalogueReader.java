package ribband.journal;

import java.time.LocalDate;
import java.time.Month;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.function.BiFunction;
import ribband.journal.Node.Mapping;
import ribband.measure.Dates;
import ribband.measure.Dimension;
import ribband.measure.Hours;
import ribband.measure.Mix;
import ribband.measure.Money;
import ribband.measure.Name;
import ribband.measure.Proportion;
import ribband.measure.Quantity;
import ribband.measure.Reading;
import ribband.measure.Span;
import ribband.measure.SpanRange;
import ribband.measure.Spread;
import ribband.measure.Temperature;
import ribband.measure.Unit;
import ribband.measure.Unreadable;
import ribband.problem.Nearest;
import ribband.problem.OneLine;
import ribband.problem.Problems;
import ribband.shop.Adhesive;

/** Reads the project's catalogue: materials, adhesives, pieces, clamps, days away, the shop. */
final class CatalogueReader {
  private final Fields fields;
  private final Reading<Money> amounts;
  private final Listed phases;
  private final Problems problems;
  private Optional<OptionalInt> clamps = Optional.empty();

  CatalogueReader(Fields fields, Reading<Money> amounts, Listed phases, Problems problems) {
    this.fields = fields;
    this.amounts = amounts;
    this.phases = phases;
    this.problems = problems;
  }

  Map<String, Material> materials() {
    return named("materials", Readings::name, this::material);
  }

  private Material material(String name, Fields keys) {
    Optional<Unit> unit = keys.value("unit", Unit::read);
    Reading<Quantity> amount = text -> inUnit(Quantity.read(text), unit);
    return new Material(
        name,
        unit,
        keys.value("on hand", amount),
        keys.value("worth", amounts),
        keys.value("lead time", Span::read),
        keys.value("never below", amount));
  }

  private static Quantity inUnit(Quantity amount, Optional<Unit> unit) throws Unreadable {
    if (unit.isPresent() && !unit.get().goesWith(amount.unit())) {
      throw new Unreadable(
          "is " + amount.unit().dimension().words() + ", but the unit is " + unit.get().told(),
          "write both in units that go together");
    }
    return amount;
  }

  Map<String, Adhesive> adhesives(Map<String, Material> materials) {
    return named("adhesives", Readings::name, (name, keys) -> adhesive(name, keys, materials));
  }

  private Adhesive adhesive(String name, Fields keys, Map<String, Material> materials) {
    return new Adhesive(
        name,
        materialOf(keys, materials),
        keys.value("mix", Mix::read),
        keys.value("densities", Proportion::read),
        keys.value("rated at", Temperature::read),
        keys.value("pot life", Span::read),
        keys.value("open time", Span::read),
        keys.value("soft for", Span::read),
        keys.value("clamp time", Span::read),
        keys.value("recoat", SpanRange::read),
        keys.value("full cure", Span::read),
        keys.value("coldest", Temperature::read),
        keys.value("spread", Spread::read));
  }

  /** A material need not be listed; one that is almost one listed is a slip. */
  private Optional<String> materialOf(Fields keys, Map<String, Material> materials) {
    Optional<String> named = keys.value("material", Readings::name);
    named
        .filter(name -> !materials.containsKey(Name.fold(name)))
        .flatMap(name -> Nearest.to(name, materials.values().stream().map(Material::name).toList()))
        .ifPresent(
            near ->
                problems.warning(
                    keys.placeOfValue("material"),
                    "material "
                        + OneLine.quote(named.orElseThrow())
                        + " is not listed; did you mean "
                        + OneLine.quote(near)
                        + "?"));
    return named;
  }

  /**
   * Kinds of pieces.
   *
   * @param adhesives those they may name
   */
  Map<String, PieceKind> pieces(Listed adhesives) {
    return named("pieces", Readings::id, (name, keys) -> pieceKind(name, keys, adhesives));
  }

  private PieceKind pieceKind(String name, Fields keys, Listed adhesives) {
    Optional<Integer> total = keys.value("total", Readings.whole(1, 99_999));
    if (!keys.has("total")) {
      problems.error(
          keys.place(), "pieces " + OneLine.quote(name) + " have no total; write total: 16");
    }
    OptionalInt holds = number(keys.value("clamps", Readings.whole(0, 9_999)));
    if (holds.isPresent() && clamps().isPresent() && holds.getAsInt() > clamps().getAsInt()) {
      problems.warning(
          keys.placeOfValue("clamps"),
          "one of the "
              + name
              + " holds "
              + holds.getAsInt()
              + " clamps, more than the "
              + clamps().getAsInt()
              + " of the shop, so none can be glued; change one of the two");
    }
    return new PieceKind(
        name,
        total.orElse(1),
        keys.value("phase", phases.reading()),
        sides(name, keys),
        keys.value("glue area", Quantity.of(Dimension.AREA)),
        keys.value("adhesive", adhesives.reading()),
        holds,
        keys.value("hours", Hours::read));
  }

  private List<String> sides(String name, Fields keys) {
    List<String> sides = new ArrayList<>();
    Set<String> seen = new HashSet<>();
    for (String side : keys.values("sides", Readings::id)) {
      if (seen.add(Name.fold(side))) {
        sides.add(side);
      } else {
        problems.error(
            keys.placeOfValue("sides"),
            "side " + OneLine.quote(side) + " of " + name + " stands twice; keep one");
      }
    }
    return sides;
  }

  /** Read once: its mistake is told once. */
  OptionalInt clamps() {
    if (clamps.isEmpty()) {
      clamps = Optional.of(number(fields.value("clamps", Readings.whole(0, 9_999))));
    }
    return clamps.get();
  }

  private static OptionalInt number(Optional<Integer> number) {
    return number.isPresent() ? OptionalInt.of(number.get()) : OptionalInt.empty();
  }

  List<Away> away() {
    List<Away> ranges = new ArrayList<>();
    fields.eachMapping(
        "away",
        (keys, place) -> {
          Optional<LocalDate> from = keys.value("from", Dates::readDay);
          Optional<LocalDate> to = keys.value("to", Dates::readDay);
          Optional<String> why = keys.text("why");
          if (!keys.has("from") || !keys.has("to")) {
            problems.error(
                place, "away has no from or no to; write {from: 2026-07-01, to: 2026-07-20}");
          } else if (from.isPresent() && to.isPresent()) {
            if (to.get().isBefore(from.get())) {
              problems.error(
                  keys.placeOfValue("to"), "away ends before it begins; change from or to");
            } else {
              ranges.add(new Away(from.get(), to.get(), why));
            }
          }
        });
    return ranges;
  }

  Map<Month, Temperature> shopTemperatures() {
    Map<Month, Temperature> means = new LinkedHashMap<>();
    fields.eachNamed(
        "shop temperatures",
        (name, node) -> {
          Optional<Month> month = Values.read("month", name, CatalogueReader::month, problems);
          Values.read("shop temperature", node, Temperature::read, problems)
              .ifPresent(mean -> month.ifPresent(m -> means.put(m, mean)));
        });
    return means;
  }

  private static Month month(String text) throws Unreadable {
    String plain = text.toUpperCase(Locale.ROOT);
    for (Month month : Month.values()) {
      if (plain.length() >= 3 && month.name().startsWith(plain)) {
        return month;
      }
    }
    throw new Unreadable("is no month", "write jan, feb, mar and so on");
  }

  /** Reads things by name; a name with nothing behind it lists the name alone. */
  private <T> Map<String, T> named(
      String key, Reading<String> naming, BiFunction<String, Fields, T> reader) {
    Map<String, T> things = new LinkedHashMap<>();
    fields.eachNamed(
        key,
        (written, node) -> {
          Node named = node.isBlank() ? new Mapping(List.of(), written.place()) : node;
          Optional<String> name = Values.read("name", written, naming, problems);
          Optional<Fields> keys = Values.mapping(written.value(), named, problems);
          if (name.isPresent() && keys.isPresent()) {
            things.put(Name.fold(name.get()), reader.apply(name.get(), keys.get()));
            keys.get().close();
          }
        });
    return things;
  }
}
