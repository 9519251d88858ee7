package ribband.cli;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import ribband.measure.Saying;
import ribband.measure.ShopTalk;
import ribband.shop.Batches;
import ribband.shop.MixPlan;

/** What a builder is warned of in a mix. */
record MixWarnings(MixPlan plan, ShopTalk shop) {
  List<String> all() {
    return Stream.of(plan.cold(), tooLittle(), outlasts(), tooFine())
        .flatMap(Optional::stream)
        .toList();
  }

  /** More is mixed than is needed. */
  Optional<String> tooLittle() {
    return plan.smallest()
        .filter(smallest -> plan.isRaised())
        .map(
            smallest ->
                "less than "
                    + shop.reckoned(smallest)
                    + " cannot be measured to the ratio, so the parts are of that much; for less,"
                    + " measure finer and say so with --step");
  }

  /** One cup sets before it is spread. */
  Optional<String> outlasts() {
    return plan.batches()
        .value()
        .filter(batches -> batches.count() > 1)
        .map(
            batches ->
                "one batch would outlast its pot life: make "
                    + Saying.count(batches.count())
                    + " of "
                    + each(batches));
  }

  /** As it is measured, where it can be parted. */
  private String each(Batches batches) {
    return plan.volume()
        .or(plan::weight)
        .flatMap(MixPlan.Measured::parts)
        .map(parts -> Saying.quantity(parts.total()))
        .orElseGet(() -> shop.reckoned(batches.each()));
  }

  /** So many cups that each holds less than can be measured well. */
  Optional<String> tooFine() {
    return plan.smallest()
        .filter(smallest -> plan.isPartedTooFine())
        .map(
            smallest ->
                "less than "
                    + shop.reckoned(smallest)
                    + " cannot be measured to the ratio; glue fewer at a time, or measure finer and"
                    + " say so with --step");
  }
}
