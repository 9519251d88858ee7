package ribband.stock;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import ribband.journal.Entry;
import ribband.measure.Money;
import ribband.measure.Name;
import ribband.measure.Quantity;
import ribband.measure.Unit;
import ribband.shop.Adhesive;

/**
 * One material, as of a day.
 *
 * @param material as the project, else the first public entry spells it
 * @param shown private where neither the project nor any public entry names it
 * @param onHand empty where nothing tells it: a material that was only ever used
 * @param moves in their order
 * @param kits oldest first
 * @param spreads of the adhesives that are mixed from it
 */
public record Shelf(
    String material,
    Unit unit,
    Entry.Shown shown,
    Optional<Holding> onHand,
    List<Move> moves,
    List<Kit> kits,
    List<OnOrder> onOrder,
    List<SpreadRate> spreads,
    Optional<Need> need) {
  public Shelf {
    moves = List.copyOf(moves);
    kits = List.copyOf(kits);
    onOrder = List.copyOf(onOrder);
    spreads = List.copyOf(spreads);
  }

  /** How much of it came or went by moves of those kinds. */
  public Quantity sum(Move.Kind... kinds) {
    Set<Move.Kind> wanted = Set.of(kinds);
    return moves.stream()
        .filter(move -> wanted.contains(move.kind()))
        .map(Move::amount)
        .reduce(Quantity.none(unit), Quantity::plus);
  }

  /**
   * What gluing an area takes of it, exactly.
   *
   * @return a volume or a weight; empty where no spread is known, or no density to turn it with
   */
  public Optional<Quantity> takes(Adhesive adhesive, Quantity area) {
    return spreads.stream()
        .filter(rate -> Name.fold(rate.adhesive().name()).equals(Name.fold(adhesive.name())))
        .findFirst()
        .flatMap(rate -> rate.takes(area, unit.dimension()));
  }

  public Optional<Quantity> amountOnHand() {
    return onHand.map(Holding::amount);
  }

  public Optional<Money> worthOnHand() {
    return onHand.map(Holding::worth);
  }

  public Quantity amountOnOrder() {
    return onOrder.stream().map(OnOrder::amount).reduce(Quantity.none(unit), Quantity::plus);
  }
}
