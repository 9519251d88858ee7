package ribband.shop;

import java.util.Optional;
import ribband.measure.Mix;
import ribband.measure.Proportion;
import ribband.measure.Span;
import ribband.measure.SpanRange;
import ribband.measure.Spread;
import ribband.measure.Temperature;

/**
 * An adhesive or a coating as its maker's data sheet has it; whatever is not known is empty.
 *
 * @param material the material it is mixed from
 * @param densities of the two parts, in g/ml
 * @param ratedAt the temperature its times hold for
 * @param potLife in the cup
 * @param openTime from spreading to closing the joint
 * @param softFor how long a thin film lets the joint be moved
 * @param recoat when the next coat bonds without sanding
 * @param coldest below this it is not to be used
 */
public record Adhesive(
    String name,
    Optional<String> material,
    Optional<Mix> mix,
    Optional<Proportion> densities,
    Optional<Temperature> ratedAt,
    Optional<Span> potLife,
    Optional<Span> openTime,
    Optional<Span> softFor,
    Optional<Span> clampTime,
    Optional<SpanRange> recoat,
    Optional<Span> fullCure,
    Optional<Temperature> coldest,
    Optional<Spread> spread) {}
