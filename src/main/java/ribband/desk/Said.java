package ribband.desk;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import ribband.journal.Project;
import ribband.measure.Hours;
import ribband.measure.Money;
import ribband.measure.Name;
import ribband.measure.Ordered;
import ribband.spoken.Loose;
import ribband.spoken.Spent;
import ribband.spoken.Spoken;
import ribband.spoken.Worked;

/**
 * What was said of a night, as an entry has it.
 *
 * @param hours lines of YAML; empty where none were said
 * @param cost lines of YAML, those of things bought among them
 * @param pieces by name of their kind, each as YAML
 * @param text lines of Markdown
 */
record Said(List<String> hours, List<String> cost, Map<String, String> pieces, List<String> text) {
  static final Said NOTHING = new Said(List.of(), List.of(), Map.of(), List.of());

  Said {
    hours = List.copyOf(hours);
    cost = List.copyOf(cost);
    pieces = Ordered.copy(pieces);
    text = List.copyOf(text);
  }

  /**
   * Puts it in the entry's keys, and what they cannot hold into its text.
   *
   * @param phase the entry's; empty where none is known
   */
  static Said of(Spoken spoken, Project project, Optional<String> phase) {
    SaidPieces pieces = SaidPieces.of(spoken.pieces());
    List<String> text = new ArrayList<>();
    pieces.lost().forEach(words -> text.add(PlainWords.markdown(Yaml.line(words))));
    spoken.loose().stream()
        .map(Loose::words)
        .forEach(words -> text.add(PlainWords.markdown(Yaml.line(words))));
    return new Said(
        hours(spoken.worked(), phase), cost(spoken.spent(), project), pieces.byKind(), text);
  }

  private static List<String> hours(List<Worked> worked, Optional<String> phase) {
    Map<Optional<String>, Hours> byPhase = new LinkedHashMap<>();
    worked.forEach(work -> byPhase.merge(work.phase().or(() -> phase), work.hours(), Hours::plus));
    if (byPhase.isEmpty()) {
      return List.of();
    }
    if (byPhase.keySet().equals(Set.of(phase))) {
      return List.of("hours: " + Yaml.hours(byPhase.get(phase)));
    }
    return List.of(
        byPhase.entrySet().stream()
            .map(e -> Yaml.text(e.getKey().orElse("unsorted")) + ": " + Yaml.hours(e.getValue()))
            .collect(Collectors.joining(", ", "hours: {", "}")));
  }

  /**
   * spec: {@code cost} is the whole, items are inside it and may not exceed it, so money that came
   * back beside a purchase is an item too.
   */
  private static List<String> cost(List<Spent> spent, Project project) {
    if (spent.isEmpty()) {
      return List.of();
    }
    List<String> lines = new ArrayList<>();
    Money whole = Money.sum(spent.stream().map(Spent::amount).toList());
    lines.add("cost: " + whole.decimal(project.currency()));
    List<Spent> items = new ArrayList<>(spent);
    items.removeIf(one -> one.what().isBlank());
    if (items.isEmpty()) {
      return lines;
    }
    Money rest = whole.minus(Money.sum(items.stream().map(Spent::amount).toList()));
    if (rest.isNegative()) {
      items.add(new Spent("money back", rest));
    }
    lines.add("materials:");
    lines.add("  bought:");
    for (Spent item : items) {
      lines.add("    - item: " + Yaml.text(item.what()));
      String cost = "      cost: " + item.amount().decimal(project.currency());
      boolean isKept = project.materials().containsKey(Name.fold(item.what()));
      lines.add(isKept ? Draft.beside(cost, "for the shelf write material: and amount:") : cost);
    }
    return lines;
  }
}
