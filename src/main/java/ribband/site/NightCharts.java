package ribband.site;

import java.time.LocalDate;
import java.time.Year;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import ribband.chart.Caption;
import ribband.chart.Chart;
import ribband.chart.Yardstick;
import ribband.chart.YearOfNights;
import ribband.journal.Entry;
import ribband.measure.Hours;
import ribband.measure.Saying;

/** Hands a year's nights to their chart. */
final class NightCharts {
  private final Book book;

  NightCharts(Book book) {
    this.book = book;
  }

  /** The nights of a year that may be shown; the others stand in their months' sums alone. */
  Chart<YearOfNights> of(Year year, String page) {
    Map<LocalDate, Entry> entries = book.firstEntryOfDay();
    ShownNights shown = ShownNights.of(book);
    List<YearOfNights.Night> nights = new ArrayList<>();
    shown
        .nights()
        .forEach(
            (date, hours) -> {
              String href =
                  Optional.ofNullable(entries.get(date))
                      .map(entry -> Addresses.href(page, Addresses.entry(entry)))
                      .orElse("");
              nights.add(new YearOfNights.Night(date, hours.seconds(), href));
            });
    Map<YearMonth, Long> untold = new TreeMap<>();
    shown.untold().forEach((month, hours) -> untold.put(month, hours.seconds()));
    return YearOfNights.chart(
        new Caption(
            "nights-" + year,
            "Nights of " + year,
            "A ruled line for each month; on it a tick for each night, as tall as its hours.",
            summary(year, shown)),
        year.getValue(),
        nights,
        untold,
        Yardstick.hours());
  }

  private String summary(Year year, ShownNights shown) {
    List<Hours> worked =
        book.ledger().nights().entrySet().stream()
            .filter(night -> Year.from(night.getKey()).equals(year))
            .map(Map.Entry::getValue)
            .toList();
    return Saying.counted(worked.size(), "night", "nights")
        + ", "
        + Saying.hoursInWords(Hours.sum(worked))
        + "."
        + untold(year, shown);
  }

  private static String untold(Year year, ShownNights shown) {
    List<Hours> hours =
        shown.untold().entrySet().stream()
            .filter(month -> Year.from(month.getKey()).equals(year))
            .map(Map.Entry::getValue)
            .toList();
    return hours.isEmpty()
        ? ""
        : " "
            + Saying.capitalised(Saying.hoursInWords(Hours.sum(hours)))
            + " of them not shown by night.";
  }
}
