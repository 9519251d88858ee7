package ribband.stock;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import ribband.measure.Packs;
import ribband.measure.Quantity;

/**
 * What is still needed of a material, and when to order it.
 *
 * @param area that the pieces not yet made are glued over
 * @param forPieces the amount that area takes
 * @param unreckoned kinds of pieces it is needed for too, with no glue area or no spread to go by
 * @param neverBelow what should always be left; 0 where nothing is asked
 * @param lacking of all that beside what is on hand and on order; 0 where there is enough
 * @param order the packs to buy, of the size last bought; empty where there is enough or no pack is
 *     known
 * @param runsOut the day the last of it is used, at the present pace; empty without a pace
 * @param orderBy the day to order, so that it arrives in time; empty where there is enough, or no
 *     pace to tell it by
 */
public record Need(
    Quantity area,
    Quantity forPieces,
    List<String> unreckoned,
    Quantity neverBelow,
    Quantity lacking,
    Optional<Packs> order,
    Optional<LocalDate> runsOut,
    Optional<LocalDate> orderBy) {
  public Need {
    unreckoned = List.copyOf(unreckoned);
  }

  public boolean isEnough() {
    return lacking.isZero();
  }

  /** Whether anything at all asks for the material. */
  public boolean isAsked() {
    return !forPieces.isZero() || !neverBelow.isZero() || !unreckoned.isEmpty();
  }
}
