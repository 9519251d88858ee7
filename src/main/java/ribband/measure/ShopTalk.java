package ribband.measure;

import java.util.stream.Collectors;
import ribband.measure.Temperature.Scale;

/** Says amounts and temperatures in a project's units, rounded as a shop measures. */
public record ShopTalk(Units units) {
  /** An amount as someone wrote it; one in such units already stays as it is. */
  public String written(Quantity amount) {
    return Saying.quantity(units == Units.METRIC ? ShopUnits.metric(amount) : ShopUnits.us(amount));
  }

  /** An amount that was reckoned: {@code 1½ fl oz}, {@code 44 ml}. */
  public String reckoned(Quantity amount) {
    return Saying.quantity(ShopUnits.rounded(amount, units));
  }

  /** The same in a unit of its own, where a shop of that system has it. */
  public String reckoned(Quantity amount, Unit kept) {
    return Saying.quantity(ShopUnits.rounded(amount, units, kept));
  }

  /** To the whole degree: {@code 61 °F}. */
  public String temperature(Temperature written) {
    Scale scale = units == Units.METRIC ? Scale.C : Scale.F;
    return Saying.temperature(written.in(scale).whole());
  }

  /** {@code 77 °F for 4 h, then 59 °F}. */
  public String warmth(Warmth warmth) {
    return warmth.stays().stream()
        .map(
            stay ->
                temperature(stay.at())
                    + stay.lasting().map(span -> " for " + Saying.span(span)).orElse(""))
        .collect(Collectors.joining(", then "));
  }

  /** How far an adhesive goes: {@code 140 in² per fl oz}, {@code 31 cm² per ml}. */
  public String spread(Spread spread) {
    Spread each = spread.perUnit(units);
    return reckoned(each.area()) + " per " + each.amount().unit().name();
  }
}
