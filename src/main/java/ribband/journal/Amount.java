package ribband.journal;

import ribband.measure.Quantity;
import ribband.problem.Place;

/**
 * An amount of a material that an entry used, or counted on the shelf.
 *
 * @param material as spelled there
 * @param place where the amount stands
 */
public record Amount(String material, Quantity quantity, Place place) {}
