package ribband.journal;

import java.util.Collection;
import java.util.List;
import java.util.Set;
import ribband.measure.Currency;
import ribband.measure.Name;
import ribband.shop.Adhesive;

/**
 * What the entries may name, as {@code project.yaml} has it.
 *
 * @param unsure keys of the project that could not be read whole; what they would list is not asked
 *     of the entries, so that one slip there is told once and not again in every entry
 */
record Known(Project project, Set<String> unsure) {
  /** Stands in where no currency is known: takes every amount that some currency could have. */
  private static final Currency ANY = new Currency("any currency", 4, "");

  Known {
    unsure = Set.copyOf(unsure);
  }

  Listed phases() {
    return phases(project.phases(), unsure);
  }

  Listed adhesives() {
    return adhesives(project.adhesives().values(), unsure);
  }

  Listed pieces() {
    return list("pieces", project.pieces().values().stream().map(PieceKind::name).toList(), unsure);
  }

  /** The currency to read amounts by. */
  Currency currency() {
    return readable(project.currency());
  }

  /** Whether the project names no currency, and not by a slip that has been told. */
  boolean lacksCurrency() {
    return project.currency().equals(Currency.NONE) && !unsure.contains("currency");
  }

  /** spec: phases that project.yaml does not list are errors, unless it lists none. */
  static Listed phases(List<Phase> phases, Set<String> unsure) {
    return phases.isEmpty()
        ? new Listed(text -> Name.fold(Readings.id(text)))
        : list("phases", phases.stream().map(Phase::id).toList(), unsure);
  }

  static Listed adhesives(Collection<Adhesive> adhesives, Set<String> unsure) {
    return list("adhesives", adhesives.stream().map(Adhesive::name).toList(), unsure);
  }

  static Currency readable(Currency currency) {
    return currency.equals(Currency.NONE) ? ANY : currency;
  }

  private static Listed list(String key, Collection<String> names, Set<String> unsure) {
    return unsure.contains(key)
        ? new Listed(text -> text)
        : new Listed(key + " of project.yaml", names);
  }
}
