package ribband.site;

import java.time.LocalDate;
import java.util.List;
import ribband.ahead.Ahead;
import ribband.ahead.ForecastWords;
import ribband.chart.Caption;
import ribband.chart.Chart;
import ribband.chart.Fan;
import ribband.chart.Yardstick;
import ribband.measure.Hours;
import ribband.measure.Saying;
import ribband.plan.Forecast;
import ribband.plan.StillLeft;
import ribband.shop.Figure;

/** Hands the forecast to its chart. */
final class FanChart {
  private FanChart() {}

  /** The chart of the hours left; none where no date follows from them. */
  static List<Chart<Fan>> of(Ahead ahead) {
    Forecast forecast = ahead.forecast();
    List<StillLeft> days = ahead.fan();
    if (days.size() < 2) {
      return List.of();
    }
    Caption caption =
        new Caption(
            "fan",
            "Hours left, from now to launch",
            "The hours still left in the draws of a forecast: one curve for the middle draw, a"
                + " narrow band for six of ten and a wide one for nine of ten; both end where"
                + " nothing is left.",
            String.join(" ", ForecastWords.dates(forecast)));
    return List.of(
        Fan.chart(
            caption,
            days.stream()
                .map(
                    day ->
                        new Fan.Day(
                            day.date(),
                            left(day.p5()),
                            left(day.p20()),
                            left(day.p50()),
                            left(day.p80()),
                            left(day.p95())))
                .toList(),
            new Fan.Done(day(forecast.p50()), day(forecast.p80()), day(forecast.p95())),
            ahead.cold().stream()
                .map(cold -> new Fan.ColdMonth(cold.month(), Saying.list(cold.adhesives())))
                .toList(),
            rests(forecast),
            Yardstick.hours()));
  }

  /** Told without their why: that is written for the builder, and no page tells it. */
  private static List<Fan.Rest> rests(Forecast forecast) {
    return forecast.away().stream()
        .filter(away -> !away.to().isBefore(forecast.asOf()))
        .map(away -> new Fan.Rest("nobody builds", away.from(), away.to()))
        .toList();
  }

  private static LocalDate day(Figure<LocalDate> sunday) {
    return sunday.value().orElseThrow();
  }

  private static long left(Hours hours) {
    return ForecastWords.rounded(hours).seconds();
  }
}
