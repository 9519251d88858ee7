package ribband.nights;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;
import ribband.journal.PieceKind;
import ribband.journal.Project;
import ribband.measure.Name;
import ribband.measure.Quantity;
import ribband.shop.Adhesive;
import ribband.shop.Figure;
import ribband.stock.Shelf;
import ribband.stock.Stock;

/**
 * What pieces are glued with.
 *
 * @param material that their adhesive is mixed from
 * @param onHand empty where nothing tells it
 * @param each that one piece takes; unknown with the reason
 */
public record Resin(String material, Optional<Quantity> onHand, Figure<Quantity> each) {
  private static final BigDecimal MOST = BigDecimal.valueOf(Long.MAX_VALUE);

  /** Empty where the kind names no adhesive. */
  static Optional<Resin> of(PieceKind kind, Project project, Stock stock) {
    return kind.adhesive()
        .map(name -> project.adhesives().get(Name.fold(name)))
        .map(adhesive -> of(kind, adhesive, stock.shelf(adhesive)));
  }

  private static Resin of(PieceKind kind, Adhesive adhesive, Optional<Shelf> shelf) {
    return new Resin(
        shelf.map(Shelf::material).or(adhesive::material).orElse(adhesive.name()),
        shelf.flatMap(Shelf::amountOnHand),
        Figure.of(
                kind.glueArea().filter(area -> !area.isZero()),
                kind.name() + " have no \"glue area\" in project.yaml")
            .flatMap(
                area ->
                    Figure.of(
                        shelf.flatMap(s -> s.takes(adhesive, area)),
                        "nothing tells how far " + adhesive.name() + " goes")));
  }

  /** Pieces, exact, that what is on hand suffices for. */
  public Figure<BigFraction> suffices() {
    return Figure.of(onHand, "nothing tells how much " + material + " is on hand")
        .flatMap(there -> each.map(there::over));
  }

  /** Whole ones. */
  public Figure<Long> pieces() {
    return suffices().map(n -> n.bigDecimalValue(0, RoundingMode.FLOOR).min(MOST).longValue());
  }
}
