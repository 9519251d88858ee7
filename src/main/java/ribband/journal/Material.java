package ribband.journal;

import java.util.Optional;
import ribband.measure.Money;
import ribband.measure.Quantity;
import ribband.measure.Span;
import ribband.measure.Unit;

/**
 * A material of the catalogue; all but its name may be unknown.
 *
 * @param onHand on the shelf when the journal began
 * @param worth what that had cost
 * @param leadTime from order to door
 * @param neverBelow what should always be left
 */
public record Material(
    String name,
    Optional<Unit> unit,
    Optional<Quantity> onHand,
    Optional<Money> worth,
    Optional<Span> leadTime,
    Optional<Quantity> neverBelow) {}
