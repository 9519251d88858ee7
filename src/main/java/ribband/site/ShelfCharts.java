package ribband.site;

import java.math.RoundingMode;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.apache.commons.numbers.fraction.BigFraction;
import ribband.chart.Caption;
import ribband.chart.Chart;
import ribband.chart.RunningCurve;
import ribband.chart.ShelfLevel;
import ribband.chart.Yardstick;
import ribband.journal.Entry;
import ribband.measure.Quantity;
import ribband.measure.Saying;
import ribband.measure.ShopUnits;
import ribband.measure.Unit;
import ribband.measure.Units;
import ribband.stock.Move;
import ribband.stock.Need;
import ribband.stock.Shelf;

/** Hands a shelf's moves to its chart, in thousandths of the unit it is shown in. */
final class ShelfCharts {
  private static final int PARTS = 1000;
  private static final int FEWEST_DAYS = 2;
  private static final BigFraction MOST = BigFraction.of(1_000_000_000).multiply(1000);

  private final Book book;

  ShelfCharts(Book book) {
    this.book = book;
  }

  /** The chart of a shelf; none where too little moved to tell anything. */
  List<Chart<ShelfLevel>> level(Shelf shelf, String id) {
    Unit unit = unit(shelf);
    if (shelf.onHand().isEmpty() || isBeyondDrawing(shelf, unit)) {
      return List.of();
    }
    List<ShelfLevel.Day> days = days(shelf, unit);
    if (days.size() < FEWEST_DAYS) {
      return List.of();
    }
    Caption caption =
        new Caption(
            id + "-chart",
            shelf.material() + " on hand",
            "The amount on the shelf, level from one day to the next.",
            summary(shelf, unit));
    return List.of(
        ShelfLevel.chart(
            caption,
            parts(shelf.sum(Move.Kind.OPENING), unit),
            days,
            book.journal().asOf().orElseThrow(),
            deliveries(shelf, unit),
            shelf.need().map(Need::neverBelow).filter(q -> !q.isZero()).stream()
                .map(q -> new RunningCurve.Plan(parts(q, unit), "never below " + said(q, unit)))
                .toList(),
            yardstick(unit)));
  }

  private static boolean isBeyondDrawing(Shelf shelf, Unit unit) {
    Quantity all =
        shelf.moves().stream()
            .map(Move::amount)
            .reduce(shelf.need().orElseThrow().neverBelow(), Quantity::plus);
    return all.in(unit).number().compareTo(MOST) > 0;
  }

  private String summary(Shelf shelf, Unit unit) {
    String reserve =
        shelf
            .need()
            .map(Need::neverBelow)
            .filter(q -> !q.isZero())
            .map(q -> ", " + said(q, unit) + " to be kept in reserve")
            .orElse("");
    return "Now " + said(shelf.amountOnHand().orElseThrow(), unit) + reserve + ".";
  }

  /** The smallest that what is there and what should be there are said in: one for all. */
  private Unit unit(Shelf shelf) {
    return Stream.of(
            Optional.of(Quantity.none(shelf.unit())),
            shelf.amountOnHand(),
            shelf.need().map(Need::neverBelow))
        .flatMap(Optional::stream)
        .map(amount -> ShopUnits.rounded(amount, units(), shelf.unit()).unit())
        .min(Comparator.comparing(Unit::size))
        .orElseThrow();
  }

  private Units units() {
    return book.journal().project().units();
  }

  /** Rounded as a shop measures, but never said in another unit than the rest of the chart. */
  private String said(Quantity amount, Unit unit) {
    Quantity usual = ShopUnits.rounded(amount, units(), unit);
    return Saying.quantity(usual.unit().equals(unit) ? usual : quantity(parts(amount, unit), unit));
  }

  private static List<ShelfLevel.Day> days(Shelf shelf, Unit unit) {
    TreeMap<LocalDate, ShelfLevel.Day> days = new TreeMap<>();
    for (Move move : shelf.moves()) {
      if (move.date().isPresent() && move.onHand().isPresent()) {
        long moved = parts(move.moved(), unit);
        ShelfLevel.Day day =
            new ShelfLevel.Day(
                move.date().get(),
                move.kind().comes() ? moved : 0,
                move.kind().comes() ? 0 : moved,
                parts(move.onHand().get(), unit));
        days.merge(
            day.date(),
            day,
            (a, b) ->
                new ShelfLevel.Day(a.date(), a.came() + b.came(), a.went() + b.went(), b.level()));
      }
    }
    return new ArrayList<>(days.values());
  }

  private List<ShelfLevel.Delivery> deliveries(Shelf shelf, Unit unit) {
    return shelf.moves().stream()
        .filter(move -> move.kind() == Move.Kind.BOUGHT)
        .filter(move -> move.entry().filter(Entry::isPublic).isPresent())
        .map(
            move ->
                new ShelfLevel.Delivery(
                    move.date().orElseThrow(), said(move.amount(), unit) + " came"))
        .toList();
  }

  private static long parts(Quantity amount, Unit unit) {
    return amount
        .in(unit)
        .number()
        .multiply(PARTS)
        .bigDecimalValue(0, RoundingMode.HALF_UP)
        .longValueExact();
  }

  private Yardstick yardstick(Unit unit) {
    return new Yardstick(
        "On hand",
        PARTS,
        Yardstick.Division.TENTHS,
        parts -> Saying.quantity(quantity(parts, Unit.PIECES)),
        parts -> Saying.quantity(quantity(parts, unit)),
        parts -> said(quantity(parts, unit), unit),
        parts -> said(quantity(parts, unit), unit));
  }

  private static Quantity quantity(long parts, Unit unit) {
    return new Quantity(BigFraction.of(parts, PARTS), unit);
  }
}
