package ribband.ahead;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import ribband.measure.Hours;
import ribband.nights.Nightly;
import ribband.nights.WhatIf;
import ribband.plan.Forecast;
import ribband.plan.WeeksWorked;
import ribband.shop.Figure;

/**
 * What other evenings or other clamps would change.
 *
 * @param kinds those with pieces left
 * @param launch the forecast with every night as long as the evening wished; empty where none is
 */
public record Changes(Wish wish, List<Kind> kinds, Optional<Forecast> launch) {
  private static final Hours HOUR = Hours.ofMinutes(60);

  public Changes {
    kinds = List.copyOf(kinds);
  }

  /**
   * One kind of pieces.
   *
   * @param before the Sunday with even odds that they are all made, every night being theirs
   * @param after the same as wished
   */
  public record Kind(WhatIf whatIf, Figure<LocalDate> before, Figure<LocalDate> after) {}

  static Changes of(
      Wish wish, Forecast forecast, Map<String, Nightly> now, Map<String, Nightly> changed) {
    List<Kind> kinds = new ArrayList<>();
    now.forEach(
        (fold, kind) ->
            kinds.add(
                new Kind(
                    new WhatIf(kind, changed.get(fold)),
                    made(kind, forecast),
                    made(changed.get(fold), forecast))));
    return new Changes(
        wish,
        kinds,
        wish.evening()
            .map(
                evening ->
                    Ahead.again(forecast, forecast.left(), forecast.past().withEvenings(evening))));
  }

  /** Nights are worked off as hours are: each week brings as many as one of those before did. */
  private static Figure<LocalDate> made(Nightly kind, Forecast forecast) {
    WeeksWorked nights = forecast.past().withEvenings(HOUR);
    Figure<Hours> left =
        kind.nightsLeft().map(n -> new Hours(Math.multiplyExact(n, HOUR.seconds())));
    return Ahead.again(forecast, left, nights).p50();
  }
}
