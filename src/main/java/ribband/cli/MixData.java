package ribband.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import ribband.ledger.Cell;
import ribband.ledger.Cell.Blank;
import ribband.ledger.Cell.Count;
import ribband.ledger.Cell.Words;
import ribband.ledger.Sheet;
import ribband.measure.Quantity;
import ribband.measure.Saying;
import ribband.measure.ShopTalk;
import ribband.measure.Span;
import ribband.measure.Unit;
import ribband.measure.Units;
import ribband.shop.Adhesive;
import ribband.shop.Figure;
import ribband.shop.MeasuredPair;
import ribband.shop.MixPlan;
import ribband.shop.MixPlan.Measured;

/**
 * A mix as a sheet of one row for other programs: amounts in fluid ounces and ounces, or in
 * millilitres and grams; the parts are of one batch; times in whole minutes.
 */
final class MixData {
  private static final List<String> COLUMNS =
      List.of(
          "adhesive",
          "volume_unit",
          "volume_needed",
          "volume_a",
          "volume_b",
          "weight_unit",
          "weight_needed",
          "weight_a",
          "weight_b",
          "batches",
          "spreading_minutes",
          "cup_minutes",
          "close_minutes",
          "soft_minutes",
          "last_look_minutes",
          "clamp_minutes",
          "warnings",
          "unknown");

  private MixData() {}

  static Sheet of(MixPlan plan, Adhesive adhesive, Units units) {
    boolean us = units == Units.US;
    List<Cell> row = new ArrayList<>();
    row.add(Words.of(adhesive.name()));
    addAmounts(row, plan.volume(), Unit.of(us ? "fl oz" : "ml"));
    addAmounts(row, plan.weight(), Unit.of(us ? "oz" : "g"));
    row.add(plan.batches().value().<Cell>map(b -> new Count(b.count())).orElse(new Blank()));
    row.add(minutes(plan.takes().value()));
    row.add(minutes(plan.cup().value()));
    row.add(minutes(plan.close().value()));
    row.add(minutes(plan.soft().value()));
    row.add(lastLook(plan));
    row.add(minutes(plan.clampsOff().value()));
    row.add(Words.of(String.join("; ", new MixWarnings(plan, new ShopTalk(units)).all())));
    row.add(Words.of(String.join("; ", unknown(plan))));
    return Sheet.of(COLUMNS, List.of(row));
  }

  private static void addAmounts(List<Cell> row, Optional<Measured> by, Unit unit) {
    Optional<MeasuredPair> parts = by.flatMap(Measured::parts);
    row.add(Words.of(unit.name()));
    row.add(amount(by.map(Measured::needed), unit));
    row.add(amount(parts.map(MeasuredPair::first), unit));
    row.add(amount(parts.map(MeasuredPair::second), unit));
  }

  private static Cell amount(Optional<Quantity> amount, Unit unit) {
    return amount
        .map(a -> a.in(unit))
        .<Cell>map(a -> new Cell.Measured(a, Saying.quantity(a)))
        .orElse(new Blank());
  }

  private static Cell minutes(Optional<Span> span) {
    return span.<Cell>map(s -> new Count(s.seconds() / 60)).orElse(new Blank());
  }

  private static Cell lastLook(MixPlan plan) {
    boolean atOnce = plan.soft().value().isPresent() && plan.lastLook().isEmpty();
    return atOnce ? new Count(0) : minutes(plan.lastLook());
  }

  private static List<String> unknown(MixPlan plan) {
    List<Figure<?>> figures =
        List.of(plan.takes(), plan.cup(), plan.close(), plan.soft(), plan.clampsOff());
    return figures.stream()
        .filter(figure -> figure.value().isEmpty())
        .map(Figure::why)
        .distinct()
        .toList();
  }
}
