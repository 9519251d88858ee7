package ribband.stock;

import java.util.List;
import java.util.Optional;
import ribband.journal.Entry;
import ribband.measure.Dimension;
import ribband.measure.Quantity;
import ribband.measure.Spread;
import ribband.shop.Adhesive;
import ribband.shop.Spreading;
import ribband.shop.TwoParts;

/**
 * How far an adhesive went at this builder's bench, beside what is stated of it.
 *
 * @param measures in the order of the entries
 */
public record SpreadRate(Adhesive adhesive, List<Measure> measures) {
  /** spec: the stated spread holds while there are fewer than 5 measurements. */
  private static final int ENOUGH = 5;

  /** One entry: the amount used, by the area glued. */
  public record Measure(Entry entry, Quantity area, Quantity amount) {
    public Spread spread() {
      return new Spread(area, amount);
    }
  }

  public SpreadRate {
    measures = List.copyOf(measures);
  }

  /** All that was glued by all that was used for it. */
  public Optional<Spread> measured() {
    return measures.stream()
        .map(Measure::spread)
        .reduce((a, b) -> new Spread(a.area().plus(b.area()), a.amount().plus(b.amount())));
  }

  /** Where a rate to reckon with comes from. */
  public enum Basis {
    MEASURED,
    STATED
  }

  public Basis basis() {
    return measures.size() >= ENOUGH || adhesive.spread().isEmpty() ? Basis.MEASURED : Basis.STATED;
  }

  /**
   * What an area takes of it mixed, exactly.
   *
   * @param by a volume or a weight
   * @return empty where no rate is known, or no density to turn it with
   */
  Optional<Quantity> takes(Quantity area, Dimension by) {
    return inForce()
        .map(spread -> Spreading.amount(area, spread))
        .flatMap(mixed -> TwoParts.of(adhesive).measuredBy(by, mixed));
  }

  /** The rate to reckon with; empty where nothing is stated and nothing was measured. */
  public Optional<Spread> inForce() {
    return basis() == Basis.MEASURED ? measured() : adhesive.spread();
  }
}
