package ribband.site;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.ToLongFunction;
import ribband.chart.Caption;
import ribband.chart.Chart;
import ribband.chart.PhaseBars;
import ribband.chart.Weight;
import ribband.chart.Yardstick;
import ribband.journal.Phase;
import ribband.ledger.PhaseRow;
import ribband.plan.PhaseStanding;

/** Sets each phase beside its plan, the one worked on last before all. */
final class PhaseCharts {
  private final Book book;

  PhaseCharts(Book book) {
    this.book = book;
  }

  /** The chart; none where there is no phase. */
  List<Chart<PhaseBars>> beside(
      String id,
      String title,
      ToLongFunction<PhaseRow> actual,
      Function<PhaseRow, Optional<Long>> plan,
      Yardstick yardstick) {
    Optional<String> latest = latest();
    List<PhaseBars.Phase> phases =
        book.ledger().phases().stream()
            .map(
                row ->
                    new PhaseBars.Phase(
                        row.phase().title(),
                        latest.filter(row.phase().id()::equals).isPresent()
                            ? Weight.STRONG
                            : Weight.QUIET,
                        state(row.phase()),
                        actual.applyAsLong(row),
                        plan.apply(row).stream().toList()))
            .toList();
    Caption caption =
        new Caption(
            id,
            title,
            "A bar for each phase, a line across it where the plan has it, and how far it is over"
                + " or under.",
            latest
                .map(phase -> "The work is at " + book.phaseTitle(phase) + ".")
                .orElse("No work yet."));
    return phases.isEmpty() ? List.of() : List.of(PhaseBars.chart(caption, phases, yardstick));
  }

  /** The phase that had the most of the last session. */
  private Optional<String> latest() {
    return book.ledger().entries().stream()
        .filter(row -> !row.hours().isZero())
        .reduce((earlier, later) -> later)
        .flatMap(
            row ->
                book.ledger().phaseIds().stream()
                    .reduce(
                        (one, other) ->
                            row.sums().hoursOf(other).compareTo(row.sums().hoursOf(one)) > 0
                                ? other
                                : one));
  }

  private PhaseBars.State state(Phase phase) {
    return book.whole().standing().phases().stream()
            .filter(standing -> standing.phase().id().equals(phase.id()))
            .anyMatch(PhaseStanding::isDone)
        ? PhaseBars.State.DONE
        : PhaseBars.State.OPEN;
  }
}
