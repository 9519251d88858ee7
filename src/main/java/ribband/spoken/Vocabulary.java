package ribband.spoken;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.UnaryOperator;
import ribband.journal.Phase;
import ribband.journal.PieceKind;
import ribband.journal.Project;
import ribband.measure.Name;

/** The names a project has: phases, kinds of pieces, sides; in every form they are said in. */
final class Vocabulary {
  private final Map<String, Named> names = new HashMap<>();
  private final List<String> phases = new ArrayList<>();
  private final List<String> kinds = new ArrayList<>();
  private int longest = 1;

  Vocabulary(Project project, List<Phase> phases) {
    for (Phase phase : phases) {
      this.phases.add(phase.id());
      add(phase.title(), name -> name.withPhase(phase));
    }
    phases.forEach(phase -> add(phase.id(), name -> name.withPhase(phase)));
    firstWords(phases);
    project.pieces().values().forEach(this::add);
  }

  /** The first word of a title stands for its phase where no other title begins with it. */
  private void firstWords(List<Phase> phases) {
    Map<String, Phase> byFirst = new HashMap<>();
    Set<String> shared = new HashSet<>();
    for (Phase phase : phases) {
      String first = key(phase.title()).replaceFirst("-.*", "");
      Phase other = byFirst.putIfAbsent(first, phase);
      if (other != null && !other.equals(phase)) {
        shared.add(first);
      }
    }
    byFirst.forEach(
        (first, phase) -> {
          if (!shared.contains(first) && find(first).phase().isEmpty()) {
            add(first, name -> name.withPhase(phase));
          }
        });
  }

  private void add(PieceKind kind) {
    kinds.add(kind.name());
    String name = key(kind.name());
    String one = Plural.singular(name);
    String several = one.equals(name) ? Plural.of(name) : name;
    add(several, n -> n.withKind(kind, Named.Form.SEVERAL));
    add(one, n -> n.withKind(kind, Named.Form.ONE));
    kind.sides().forEach(side -> add(side, n -> n.withSide(key(side))));
  }

  private void add(String name, UnaryOperator<Named> with) {
    String key = key(name);
    // A name that is also a number, a unit or a small word says nothing for certain.
    if (!key.isEmpty() && !SmallWords.isTaken(key)) {
      names.put(key, with.apply(find(key)));
      longest = Math.max(longest, key.split("-", -1).length);
    }
  }

  /** Letters and figures of a name, folded, with hyphens between its words. */
  private static String key(String name) {
    return Name.fold(name.replace("&", " and ").replaceAll("[^\\p{L}\\p{M}\\p{N}'.]+", " "));
  }

  /**
   * @param folded words joined by hyphens
   */
  Named find(String folded) {
    return names.getOrDefault(folded, Named.NOTHING);
  }

  /** The most words a name has. */
  int longest() {
    return longest;
  }

  Collection<String> phases() {
    return phases;
  }

  Collection<String> kinds() {
    return kinds;
  }
}
