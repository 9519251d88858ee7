package ribband.journal;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import ribband.journal.Node.Field;
import ribband.journal.Node.Mapping;
import ribband.journal.Node.Text;
import ribband.measure.Dates;
import ribband.measure.Hours;
import ribband.measure.Money;
import ribband.measure.Name;
import ribband.measure.Reading;
import ribband.problem.OneLine;
import ribband.problem.Place;
import ribband.problem.Problems;

/** Reads the project's plan: its phases, and what was done before the journal began. */
final class PlanReader {
  private final Fields fields;
  private final Reading<Money> amounts;
  private final Problems problems;

  PlanReader(Fields fields, Reading<Money> amounts, Problems problems) {
    this.fields = fields;
    this.amounts = amounts;
    this.problems = problems;
  }

  /** The phases in their order; those whose id cannot be read are told and left out. */
  List<Phase> phases() {
    List<Phase> phases = new ArrayList<>();
    Map<String, Place> seen = new LinkedHashMap<>();
    for (Node item : fields.items("phases")) {
      Fields keys = new Fields(keysOf(item), problems);
      Optional<String> id = keys.value("id", Readings::id);
      Optional<String> title = keys.text("title");
      Optional<Hours> hours = keys.value("hours", Hours::read);
      Optional<Money> cost = keys.value("cost", amounts);
      keys.close();
      if (!keys.has("id")) {
        problems.error(
            item.place(), "a phase has no id; write it as - {id: planking, title: Planking}");
      }
      id.filter(name -> isNew(name, keys.placeOfValue("id"), seen))
          .ifPresent(
              name ->
                  phases.add(
                      new Phase(name, title.orElse(Phase.named(name).title()), hours, cost)));
    }
    return phases;
  }

  /** {@code planking} alone is short for {@code {id: planking}}. */
  private static Mapping keysOf(Node item) {
    return item instanceof Mapping mapping
        ? mapping
        : new Mapping(List.of(new Field(new Text("id", item.place()), item)), item.place());
  }

  private boolean isNew(String id, Place place, Map<String, Place> seen) {
    if (Name.fold(id).equals(Phase.UNSORTED.id())) {
      problems.error(
          place,
          "phase \"unsorted\" is where hours without a phase are counted; give yours another id");
      return false;
    }
    Place first = seen.putIfAbsent(Name.fold(id), place);
    if (first != null) {
      problems.error(
          place,
          "phase "
              + OneLine.quote(id)
              + " is listed twice, first at line "
              + first.line()
              + "; keep one");
    }
    return first == null;
  }

  /** What was done before the journal began. */
  Carried carried(Listed phaseNames) {
    return fields
        .mapping("carried")
        .map(
            carried -> {
              Carried read =
                  new Carried(
                      carried.value("through", Dates::readDay),
                      carried.value("sessions", Readings.whole(0, 99_999)).orElse(0),
                      byPhase(carried, "hours", Hours::read, phaseNames),
                      byPhase(carried, "cost", amounts, phaseNames));
              carried.close();
              return read;
            })
        .orElse(Carried.NOTHING);
  }

  private <T> Map<String, T> byPhase(
      Fields carried, String key, Reading<T> reading, Listed phaseNames) {
    Map<String, T> values = new LinkedHashMap<>();
    carried
        .find(key)
        .ifPresent(
            node -> {
              if (node instanceof Mapping mapping) {
                values.putAll(PhaseMap.read(key, mapping, reading, phaseNames, problems));
              } else {
                Values.read(key, node, reading, problems)
                    .ifPresent(value -> values.put(Phase.UNSORTED.id(), value));
                problems.warning(
                    node.place(),
                    "carried "
                        + key
                        + " names no phase and counts under unsorted; write it by"
                        + " phase, as {planking: 44.5}");
              }
            });
    return values;
  }
}
