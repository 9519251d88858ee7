package ribband.shop;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import ribband.measure.Mix;
import ribband.measure.Proportion;
import ribband.measure.Quantity;
import ribband.measure.Saying;
import ribband.measure.Span;
import ribband.measure.Temperature;
import ribband.measure.Units;
import ribband.measure.Warmth;
import ribband.shop.MixPlan.Measured;
import ribband.shop.MixPlan.Steps;

/** A mix as a whole; the times are those of the sheet times 2^((72 - T)/18), reckoned by hand. */
class MixPlanTest {
  private static final Adhesive EPOXY = adhesive("2 to 1 by volume", Optional.of("1.15 to 0.97"));

  private static Adhesive adhesive(String mix, Optional<String> densities) {
    return new Adhesive(
        "epoxy",
        Optional.empty(),
        Optional.of(Read.by(Mix::read, mix)),
        densities.map(d -> Read.by(Proportion::read, d)),
        Optional.of(Read.by(Temperature::read, "72 F")),
        Optional.of(Read.by(Span::read, "20 min")),
        Optional.of(Read.by(Span::read, "60 min")),
        Optional.of(Read.by(Span::read, "90 min")),
        Optional.of(Read.by(Span::read, "8 h")),
        Optional.empty(),
        Optional.empty(),
        Optional.of(Read.by(Temperature::read, "50 F")),
        Optional.empty());
  }

  private static MixPlan plan(Adhesive adhesive, String needed, String warmth, String takes) {
    return MixPlan.of(
        adhesive,
        Read.quantity(needed),
        Optional.of(warmth).filter(w -> !w.isEmpty()).map(w -> Read.by(Warmth::read, w)),
        Optional.of(takes).filter(t -> !t.isEmpty()).map(t -> Read.by(Span::read, t)),
        Steps.usual(Units.US));
  }

  private static String parts(Optional<Measured> measured) {
    return measured
        .flatMap(Measured::parts)
        .map(p -> Saying.quantity(p.first()) + " + " + Saying.quantity(p.second()))
        .orElse("unknown");
  }

  private static long minutes(Figure<Span> figure) {
    return figure.value().orElseThrow().seconds() / 60;
  }

  /**
   * At 61 F times are 2^(11/18) = 1.5275 as long: 20 min are 30.55, 60 are 91.65, 90 are 137.47 and
   * 480 are 733.18. Deadlines are told at the minute before, the wait at the minute after.
   */
  @Test
  void timesAtAColderTemperature() {
    MixPlan plan = plan(EPOXY, "3 fl oz", "61 F", "");
    assertEquals(30, minutes(plan.cup()));
    assertEquals(91, minutes(plan.close()));
    assertEquals(137, minutes(plan.soft()));
    assertEquals(Optional.of(new Span(122 * 60)), plan.lastLook());
    assertEquals(734, minutes(plan.clampsOff()));
    assertEquals(6, minutes(plan.takes()));
    assertEquals(1, plan.batches().value().orElseThrow().count());
    assertEquals(Optional.empty(), plan.cold());
  }

  @Test
  void withoutATemperatureTheTimesAreThoseOfTheSheet() {
    MixPlan plan = plan(EPOXY, "3 fl oz", "", "");
    assertEquals(20, minutes(plan.cup()));
    assertEquals(60, minutes(plan.close()));
    assertEquals(480, minutes(plan.clampsOff()));
  }

  /** 3 fl oz are 2 and 1; at 1.09 g/ml they weigh 96.70 g, 3.41 oz: 2.4 and 1 of tenths. */
  @Test
  void bothPartsByVolumeAndByWeight() {
    MixPlan plan = plan(EPOXY, "3 fl oz", "72 F", "");
    assertEquals("2 fl oz + 1 fl oz", parts(plan.volume()));
    assertEquals("2.4 oz + 1 oz", parts(plan.weight()));
    assertFalse(plan.isRaised());
  }

  /**
   * 45 min in cups that last 20 are three of 2 fl oz each, which is 10.67 and 5.33 eighths: 10 and
   * 5 would be short, 12 and 6 are the next that are 2 to 1.
   */
  @Test
  void severalBatchesAreOneSize() {
    MixPlan plan = plan(EPOXY, "6 fl oz", "72 F", "45 min");
    assertEquals(new Batches(3, Read.quantity("2 fl oz")), plan.batches().value().orElseThrow());
    assertEquals("1½ fl oz + ¾ fl oz", parts(plan.volume()));
    assertFalse(plan.isPartedTooFine());
  }

  /** Warmer by 18 F the cup lasts half as long, so as many cups more. */
  @ParameterizedTest
  @CsvSource({"54 F, 40, 1", "72 F, 20, 2", "90 F, 10, 4"})
  void warmthMakesMoreBatches(String warmth, long cup, long count) {
    MixPlan plan = plan(EPOXY, "8 fl oz", warmth, "40 min");
    assertEquals(cup, minutes(plan.cup()));
    assertEquals(count, plan.batches().value().orElseThrow().count());
  }

  @Test
  void tooLittleIsRaisedToWhatCanBeMeasured() {
    MixPlan plan = plan(EPOXY, "0.9 fl oz", "72 F", "");
    assertTrue(plan.isRaised());
    assertEquals(Optional.of(Read.exactly("1.875", "fl oz")), plan.smallest());
    assertEquals(Read.exactly("1.875", "fl oz"), plan.total());
    assertEquals(Optional.of(Read.exactly("0.9", "fl oz")), plan.volume().map(Measured::needed));
    assertEquals("1¼ fl oz + ⅝ fl oz", parts(plan.volume()));
    Quantity step = Read.quantity("1 ml");
    MixPlan finer =
        MixPlan.of(
            EPOXY,
            Read.quantity("0.9 fl oz"),
            Optional.empty(),
            Optional.empty(),
            Steps.usual(Units.US).with(step));
    assertFalse(finer.isRaised());
    assertEquals("18 ml + 9 ml", parts(finer.volume()));
  }

  /** Nothing is parted that would miss the ratio. */
  @Test
  void batchesTooSmallToMeasureAreNotParted() {
    MixPlan plan = plan(EPOXY, "3 fl oz", "72 F", "40 min");
    assertTrue(plan.isPartedTooFine());
    assertEquals("unknown", parts(plan.volume()));
    assertEquals("unknown", parts(plan.weight()));
  }

  @Test
  void belowTheColdestNoTimeIsPromised() {
    MixPlan plan = plan(EPOXY, "3 fl oz", "49 F", "");
    String why =
        "49 °F is below the coldest for it, 50 °F; no time is promised, see the maker's data"
            + " sheet";
    assertEquals(Optional.of(why), plan.cold());
    assertEquals(Figure.unknown(why), plan.cup());
    assertEquals(Figure.unknown(why), plan.batches());
    assertEquals(Figure.unknown(why), plan.clampsOff());
    assertEquals(Optional.empty(), plan.lastLook());
  }

  /** Cold that comes when all is done is no matter. */
  @Test
  void coldAfterTheClampsAreOff() {
    assertEquals(Optional.empty(), plan(EPOXY, "3 fl oz", "72 F for 9 h then 40 F", "").cold());
    MixPlan before = plan(EPOXY, "3 fl oz", "72 F for 5 h then 40 F", "");
    assertTrue(before.cold().isPresent());
    assertEquals(90, minutes(before.soft()));
    assertEquals(Optional.empty(), before.clampsOff().value());
  }

  @Test
  void aMixByWeightWithoutDensitiesCannotPartAVolume() {
    MixPlan plan = plan(adhesive("100 to 42 by weight", Optional.empty()), "3 fl oz", "72 F", "");
    assertEquals("unknown", parts(plan.volume()));
    assertEquals(Optional.empty(), plan.weight());
    MixPlan weighed = plan(adhesive("100 to 42 by weight", Optional.empty()), "10 oz", "72 F", "");
    assertEquals("7.1 oz + 3 oz", parts(weighed.weight()));
    assertEquals(
        Figure.unknown("nobody says how long spreading takes, and it is known by weight alone"),
        weighed.takes());
    assertEquals(
        1,
        plan(adhesive("100 to 42 by weight", Optional.empty()), "10 oz", "72 F", "9 min")
            .batches()
            .value()
            .orElseThrow()
            .count());
  }

  private static Adhesive bare(Optional<String> softFor, Optional<String> coldest) {
    return new Adhesive(
        "bare",
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        softFor.map(s -> Read.by(Span::read, s)),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        coldest.map(c -> Read.by(Temperature::read, c)),
        Optional.empty());
  }

  /** The cold is told of a coating whose times nobody knows, too. */
  @Test
  void coldIsToldWhereNoTimeIsKnown() {
    Adhesive coating = bare(Optional.empty(), Optional.of("50 F"));
    assertTrue(plan(coating, "3 fl oz", "45 F", "").cold().isPresent());
    assertEquals(Optional.empty(), plan(coating, "3 fl oz", "50 F", "").cold());
  }

  @Test
  void aQuarterOfAnHourOrLessIsLookedAtAtOnce() {
    Adhesive quick = bare(Optional.of("15 min"), Optional.empty());
    MixPlan plan = plan(quick, "3 fl oz", "", "");
    assertEquals(15, minutes(plan.soft()));
    assertEquals(Optional.empty(), plan.lastLook());
    assertEquals(Figure.unknown("no \"pot life\" is given for it"), plan.cup());
  }
}
