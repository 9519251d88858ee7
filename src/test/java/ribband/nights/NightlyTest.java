package ribband.nights;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import ribband.measure.Hours;
import ribband.measure.Span;
import ribband.shop.Figure;

/**
 * What binds a night; all figures are worked by hand. That a time doubles with every 18 F colder is
 * the rule of thumb named in {@link ribband.shop.Cure}; ten clamps to a strake are common practice,
 * no source.
 */
class NightlyTest {
  private static final String PROJECT =
      """
      adhesives: {epoxy: {rated at: 72 F, clamp time: 8 h, coldest: 50 F, spread: 100 in2 per fl oz}}
      pieces: {strakes: {total: 16, glue area: 1 in x 100 in, adhesive: epoxy, clamps: 10, hours: 5}}
      clamps: 24
      """;
  private static final String STOCKED = "materials: {epoxy: {on hand: 20 fl oz}}\n" + PROJECT;
  private static final String JAN = "shop temperatures: {jan: 54 F}\n";
  private static final String NOW = "2026-01-20T19:00";
  private static final String EMPTY = "2026-01-01\nlesson: Cold.";

  @TempDir Path folder;

  private Nightly strakes(String project, int clamps, int minutes) throws Exception {
    return Shop.at(folder, NOW, project, EMPTY).strakes(Shop.with(clamps, minutes));
  }

  private static String figures(Nightly night) {
    StringBuilder said = new StringBuilder();
    for (Limit limit : Limit.values()) {
      Figure<BigFraction> by = night.by(limit);
      said.append(limit.word()).append(' ');
      said.append(by.value().map(BigFraction::toString).orElse("?")).append(", ");
    }
    return said
        + night.binding().map(Limit::word).orElse("nothing")
        + ", "
        + night.nightsLeft().value().map(String::valueOf).orElse(night.nightsLeft().why());
  }

  /** 24 of 10 hold two; as rated they are off the next evening; 15 h of 5 each make three. */
  @Test
  void clampsBind() throws Exception {
    Nightly night = strakes(STOCKED, 24, 15 * 60);
    assertEquals("clamps 4, cure 4, hours 3, resin 20, hours, 6", figures(night));
    night = strakes(STOCKED, 24, 8 * 60);
    assertEquals("clamps 2, cure 2, hours 8 / 5, resin 20, hours, 10", figures(night));
    night = strakes(STOCKED.replace("hours: 5", "hours: 1"), 24, 8 * 60);
    assertEquals("clamps 2, cure 2, hours 8, resin 20, clamps, 8", figures(night));
    assertEquals(
        "clamps are the limit: 24 hold two at a time (10 each), 8 h as rated at 72 °F",
        Shop.WORDS.binding(night));
    assertEquals(Optional.of(BigFraction.of(2)), night.piecesPerNight());
    assertEquals(2, night.tonight());
  }

  /** At 54 F 8 h are 16 h, off by the next evening. Rated at 16 h they are 32 h: every second. */
  @Test
  void cureBinds() throws Exception {
    String fast = STOCKED.replace("hours: 5", "hours: 1") + JAN;
    assertEquals("clamps 2, cure 2, hours 2, resin 20, clamps, 8", figures(strakes(fast, 24, 120)));
    Nightly slow = strakes(fast.replace("8 h", "16 h"), 24, 120);
    assertEquals("clamps 2, cure 1, hours 2, resin 20, cure, 16", figures(slow));
    assertEquals(
        "cure is the limit: 32 h at 54 °F, the month's mean, so the clamps take two every two nights",
        Shop.WORDS.binding(slow));
    assertEquals(2, slow.tonight());
  }

  /** Exactly a day is from evening to evening; a second more is not. */
  @Test
  void aDayInClampsIsANight() {
    Figure<Span> day = Figure.of(new Span(86_400));
    assertEquals(Figure.of(1L), new Clamping(24, 10, 0, day, Optional.empty()).every());
    Figure<Span> more = Figure.of(new Span(86_401));
    Clamping clamping = new Clamping(24, 10, 0, more, Optional.empty());
    assertEquals(Figure.of(2L), clamping.every());
    assertEquals(Figure.of(BigFraction.ONE), clamping.perNightOfCure());
    assertEquals(BigFraction.of(2), clamping.perNight());
  }

  @Test
  void hoursBind() throws Exception {
    Nightly night = strakes(STOCKED, 24, 150);
    assertEquals("clamps 2, cure 2, hours 1 / 2, resin 20, hours, 32", figures(night));
    assertEquals(
        "hours are the limit: an evening of 2½ hours makes ½, at 5 hours each as planned",
        Shop.WORDS.binding(night));
    assertEquals(0, night.tonight());
    assertEquals(2, night.most());
  }

  /** 1.5 fl oz glue one and a half. */
  @Test
  void resinBindsWhereItIsNotEnoughForANight() throws Exception {
    String fast = STOCKED.replace("hours: 5", "hours: 1");
    Nightly night = strakes(fast.replace("20 fl", "1.5 fl"), 24, 120);
    assertEquals("clamps 2, cure 2, hours 2, resin 3 / 2, resin, 8", figures(night));
    assertEquals("resin is the limit: epoxy for one more", Shop.WORDS.binding(night));
    assertEquals(1, night.tonight());
    assertEquals(
        "clamps 2, cure 2, hours 2, resin 2, clamps, 8",
        figures(strakes(fast.replace("20 fl", "2 fl"), 24, 120)));
  }

  /** A night that makes half of one needs the resin of one. */
  @Test
  void resinBindsWhereItIsNotEnoughForTheNextOne() throws Exception {
    assertEquals(
        "clamps 2, cure 2, hours 1 / 2, resin 3 / 4, resin, 32",
        figures(strakes(STOCKED.replace("20 fl", "3/4 fl"), 24, 150)));
    assertEquals(
        "clamps 2, cure 2, hours 1 / 2, resin 1, hours, 32",
        figures(strakes(STOCKED.replace("20 fl", "1 fl"), 24, 150)));
  }

  /** One left, and resin for it: that a whole night's would take more is of no concern. */
  @Test
  void resinForAllThatAreLeftIsEnough() throws Exception {
    String one =
        STOCKED.replace("hours: 5", "hours: 1").replace("16", "1").replace("20 fl", "1 fl");
    Nightly night = strakes(one, 24, 600);
    assertEquals("clamps 4, cure 4, hours 10, resin 1, clamps, 1", figures(night));
    assertEquals("resin: epoxy for all that are left", Shop.WORDS.limits(night).get(3));
    assertEquals(1, night.tonight());
  }

  @Test
  void tooFewClampsForOneAreSaidSo() throws Exception {
    Nightly night = strakes(STOCKED, 8, 300);
    assertEquals("clamps 0, cure 0, hours 1, resin 20, clamps, none can be made", figures(night));
    assertEquals(
        "clamps are the limit: each holds 10, the shop has 8: none can be made",
        Shop.WORDS.binding(night));
    assertEquals(0, night.most());
    assertEquals(
        List.of(
            "clamps: each holds 10, the shop has 8: none can be made",
            "hours: an evening of 5 hours makes one, at 5 hours each as planned",
            "resin: epoxy for all that are left"),
        Shop.WORDS.limits(night));
  }

  @Test
  void noTimeIsPromisedInTheCold() throws Exception {
    Nightly night = strakes(STOCKED + JAN.replace("54", "45"), 24, 600);
    assertEquals("clamps 2, cure ?, hours 2, resin 20, clamps, 8", figures(night));
    assertEquals(
        List.of(
            "clamps: 24 hold two at a time (10 each)",
            "cure: unknown: 45 °F is below the coldest for it, 50 °F; no time is promised, see the"
                + " maker's data sheet",
            "hours: an evening of 10 hours makes two, at 5 hours each as planned",
            "resin: epoxy for all that are left"),
        Shop.WORDS.limits(night));
  }

  /** In three hours clamps of one hour go on three times; not at 54 F, where it is two hours. */
  @Test
  void clampsAreUsedAgainWithinAnEvening() throws Exception {
    String quick = STOCKED.replace("8 h", "1 h").replace("hours: 5", "hours: 1/4");
    Nightly night = strakes(quick, 24, 180);
    assertEquals("clamps 6, cure 6, hours 12, resin 20, clamps, 3", figures(night));
    assertEquals(
        List.of(
            "clamps: 24 hold two at a time (10 each), three times an evening, 1 h as rated at 72 °F",
            "cure: 1 h as rated at 72 °F, so the clamps are free the next evening"),
        Shop.WORDS.limits(night).subList(0, 2));
    assertEquals(6, night.tonight());
    assertEquals(
        "clamps 4, cure 4, hours 12, resin 20, clamps, 4", figures(strakes(quick + JAN, 24, 180)));
  }

  @Test
  void whatIsUnknownLimitsNothing() throws Exception {
    Nightly night = strakes("pieces: {strakes: {total: 16}}\n", -1, -1);
    assertEquals(
        "clamps ?, cure ?, hours ?, resin ?, nothing, nothing known limits what a night can bring",
        figures(night));
    assertEquals("strakes hold no clamps in project.yaml", night.by(Limit.CURE).why());
    assertEquals("strakes name no adhesive", night.by(Limit.RESIN).why());
    assertEquals(16, night.tonight());
    assertEquals("nothing known limits what a night can bring", Shop.WORDS.binding(night));
    assertEquals(
        List.of("hours: unknown: no evening is given and no hours are written"),
        Shop.WORDS.limits(night));
    assertEquals(
        List.of("hours: unknown: nothing tells how long one of the strakes takes"),
        Shop.WORDS.limits(strakes("pieces: {strakes: {total: 16, hours: 0}}\n", -1, 60)));
  }

  @Test
  void piecesWithoutClampsNeedNone() throws Exception {
    assertEquals(
        "clamps ?, cure ?, hours 1, resin 20, hours, 16",
        figures(strakes(STOCKED.replace("clamps: 10", "clamps: 0"), 24, 300)));
  }

  @Test
  void anUnknownShopIsSaidSo() throws Exception {
    Nightly night = strakes(PROJECT.replace("clamps: 24", ""), -1, 300);
    assertEquals("clamps ?, cure ?, hours 1, resin ?, hours, 16", figures(night));
    assertEquals(
        List.of(
            "clamps: unknown: project.yaml does not say how many clamps the shop has",
            "hours: an evening of 5 hours makes one, at 5 hours each as planned",
            "resin: unknown: nothing tells how much epoxy is on hand"),
        Shop.WORDS.limits(night));
  }

  @Test
  void resinOfUnknownSpreadOrAreaIsUnknown() throws Exception {
    assertEquals(
        "nothing tells how far epoxy goes",
        strakes(STOCKED.replace(", spread: 100 in2 per fl oz", ""), 24, 60).by(Limit.RESIN).why());
    assertEquals(
        "strakes have no \"glue area\" in project.yaml",
        strakes(STOCKED.replace("glue area: 1 in x 100 in, ", ""), 24, 60).by(Limit.RESIN).why());
  }

  @Test
  void noGlueAreaAtAllIsUnknown() throws Exception {
    assertEquals(
        "strakes have no \"glue area\" in project.yaml",
        strakes(STOCKED.replace("1 in x 100 in", "0 in2"), 24, 60).by(Limit.RESIN).why());
  }

  @Test
  void anEveningOfNothingMakesNone() throws Exception {
    assertEquals(
        "clamps 2, cure 2, hours 0, resin 20, hours, none can be made",
        figures(strakes(STOCKED, 24, 0)));
  }

  @Test
  void whatIsDoneTakesNoNight() throws Exception {
    Nightly night =
        Shop.at(folder, NOW, STOCKED, "2026-01-10\npieces: {strakes: 16}")
            .strakes(Shop.with(24, 300));
    assertEquals(Figure.of(0L), night.nightsLeft());
    assertEquals("none are left", Shop.WORDS.binding(night));
    assertEquals(0, night.tonight());
  }

  /** 2 made in 3 h: an evening of 3 h makes 2; the builder's usual is that one. */
  @Test
  void theUsualEveningAndTheActualRate() throws Exception {
    Shop shop =
        Shop.at(
            folder,
            NOW,
            STOCKED,
            "2026-01-10\nhours: 3\npieces: {strakes: 2}\njoints: [{name: Garboard, adhesive: epoxy,"
                + " spread at: 20:00, temperature: 54 F}]");
    Nightly night = shop.strakes(shop.usual());
    assertEquals("clamps 2, cure 2, hours 2, resin 20, clamps, 7", figures(night));
    assertEquals(
        List.of(
            "clamps: 24 hold two at a time (10 each), 16 h at 54 °F, the joint's",
            "cure: 16 h at 54 °F, the joint's, so the clamps are free the next evening",
            "hours: the usual evening of 3 hours makes two, at 1½ hours each",
            "resin: epoxy for all that are left"),
        Shop.WORDS.limits(night));
  }

  @Test
  void whatMoreClampsOrALongerEveningChange() throws Exception {
    Shop shop = Shop.at(folder, NOW, STOCKED.replace("hours: 5", "hours: 1"), EMPTY);
    Setting now = Shop.with(24, 180);
    WhatIf more = shop.whatIf(now, now.withClamps(36));
    assertEquals(Figure.of(2L), more.nightsSaved());
    assertEquals("6 nights instead of 8: 2 nights saved", Shop.WORDS.whatIf(more));
    WhatIf longer = shop.whatIf(now, now.withEvening(Hours.ofMinutes(240)));
    assertEquals("8 nights as before: clamps are the limit", Shop.WORDS.whatIf(longer));
    WhatIf fewer = shop.whatIf(now, now.withClamps(10));
    assertEquals("16 nights instead of 8: 8 nights more", Shop.WORDS.whatIf(fewer));
    WhatIf none = shop.whatIf(now, now.withClamps(9));
    assertEquals("none can be made", Shop.WORDS.whatIf(none));
    WhatIf one =
        shop.whatIf(
            now.withClamps(100).withEvening(Hours.ofMinutes(480)),
            now.withClamps(160).withEvening(Hours.ofMinutes(960)));
    assertEquals("1 night instead of 2: 1 night saved", Shop.WORDS.whatIf(one));
  }
}
