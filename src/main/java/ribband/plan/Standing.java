package ribband.plan;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.apache.commons.numbers.fraction.BigFraction;
import ribband.journal.Journal;
import ribband.ledger.Ledger;
import ribband.ledger.PhaseRow;
import ribband.measure.Hours;
import ribband.measure.Money;
import ribband.pieces.PieceCount;

/**
 * Every phase against its plan, and the whole.
 *
 * @param phases in the ledger's order, {@code unsorted} among them where it has a figure
 * @param pieces of each phase, by phase id; of no phase under the empty id
 */
public record Standing(List<PhaseStanding> phases, Map<String, List<PieceCount>> pieces) {
  private static final String NO_PHASE = "";

  public Standing {
    phases = List.copyOf(phases);
    pieces =
        pieces.entrySet().stream()
            .collect(
                Collectors.toUnmodifiableMap(Map.Entry::getKey, e -> List.copyOf(e.getValue())));
  }

  /**
   * Holds each phase against its plan.
   *
   * @param ledger of the entries up to the same day, carried work included
   * @param pieces counted as of the same day
   * @param asOf what entries after it say about {@code complete} does not count
   */
  public static Standing of(
      Journal journal, Ledger ledger, Map<String, PieceCount> pieces, LocalDate asOf) {
    return of(journal, ledger.phases(), pieces, asOf);
  }

  /**
   * The same from the phases' figures alone.
   *
   * @param rows as they stood on that day
   */
  public static Standing of(
      Journal journal, List<PhaseRow> rows, Map<String, PieceCount> pieces, LocalDate asOf) {
    Progress progress = Progress.of(journal, pieces, asOf);
    List<PhaseStanding> phases = new ArrayList<>();
    for (PhaseRow row : rows) {
      Optional<Hours> planned = row.phase().hours().filter(hours -> !hours.isZero());
      Complete complete = progress.of(row.phase().id(), row.hours(), planned);
      phases.add(new PhaseStanding(row.phase(), row.hours(), row.cost(), complete));
    }
    Map<String, List<PieceCount>> byPhase =
        phases.stream()
            .map(phase -> phase.phase().id())
            .collect(Collectors.toMap(id -> id, progress::kindsOf));
    byPhase.put(
        NO_PHASE, pieces.values().stream().filter(c -> c.kind().phase().isEmpty()).toList());
    return new Standing(phases, byPhase);
  }

  /**
   * All phases with planned hours as one: their sums, by the same formulas; empty where none has.
   */
  public Optional<EarnedValue> whole() {
    List<EarnedValue> all = earned().toList();
    if (all.isEmpty()) {
      return Optional.empty();
    }
    Hours bac = Hours.sum(all.stream().map(EarnedValue::bac).toList());
    Hours ac = Hours.sum(all.stream().map(EarnedValue::ac).toList());
    BigFraction ev = all.stream().map(EarnedValue::ev).reduce(BigFraction.ZERO, BigFraction::add);
    return Optional.of(new EarnedValue(bac, ac, ev.divide(bac.seconds())));
  }

  private Stream<EarnedValue> earned() {
    return phases.stream().flatMap(phase -> phase.earned().stream());
  }

  /** The phases that the whole leaves out, as no hours are planned for them. */
  public List<PhaseStanding> leftOut() {
    return phases.stream().filter(phase -> phase.planned().isEmpty()).toList();
  }

  /** The phases that were begun and whose share is a guess by hours. */
  public List<PhaseStanding> assumed() {
    return phases.stream()
        .filter(phase -> phase.complete().basis() == Complete.Basis.ASSUMED)
        .filter(phase -> !phase.hours().isZero())
        .toList();
  }

  /** Whether no share is known but by guess, so that no rate follows from the whole. */
  boolean isGuess() {
    return phases.stream()
        .filter(phase -> phase.planned().isPresent() && !phase.hours().isZero())
        .allMatch(phase -> phase.complete().basis() == Complete.Basis.ASSUMED);
  }

  /** The money planned; empty where no phase has a plan of it. */
  public Optional<Money> costPlanned() {
    return costed().map(phase -> phase.phase().cost().orElseThrow()).reduce(Money::plus);
  }

  /** The money spent in the phases that have a plan of it. */
  public Money costInPlan() {
    return Money.sum(costed().map(PhaseStanding::cost).toList());
  }

  private Stream<PhaseStanding> costed() {
    return phases.stream().filter(phase -> phase.phase().cost().isPresent());
  }

  List<PieceCount> piecesOf(PhaseStanding phase) {
    return pieces.getOrDefault(phase.phase().id(), List.of());
  }

  List<PieceCount> piecesOfNoPhase() {
    return pieces.getOrDefault(NO_PHASE, List.of());
  }
}
