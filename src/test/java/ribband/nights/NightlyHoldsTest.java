package ribband.nights;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import org.apache.commons.numbers.fraction.BigFraction;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import ribband.measure.Hours;

/**
 * Whatever a journal holds: no night brings more than its limits, and more of anything never costs.
 */
class NightlyHoldsTest {
  private static final List<String> ADHESIVES =
      List.of(
          "epoxy: {rated at: 72 F, clamp time: 8 h, coldest: 50 F, spread: 100 in2 per fl oz}",
          "epoxy: {rated at: 60 F, clamp time: 30 h, spread: 10 cm2 per g}",
          "epoxy: {clamp time: 40 min}",
          "epoxy: {}");

  @TempDir Path folder;

  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12})
  void limitsHoldAndMoreNeverCosts(long seed) throws Exception {
    SplittableRandom random = new SplittableRandom(seed);
    List<String> entries = new ArrayList<>();
    LocalDate day = LocalDate.of(2026, 1, 1);
    for (int i = 0; i < 12; i++) {
      day = day.plusDays(random.nextInt(3));
      entries.add(day + "-" + i + "\n" + keys(random));
    }
    Shop shop = Shop.at(folder, day + "T22:30", project(random), entries.toArray(String[]::new));
    check(shop.strakes(shop.usual()));
    for (int i = 0; i < 40; i++) {
      Setting now = Shop.with(random.nextInt(-1, 60), random.nextInt(-1, 700));
      Nightly night = shop.strakes(now);
      check(night);
      if (now.clamps().isPresent()) {
        int more = now.clamps().getAsInt() + random.nextInt(30);
        noWorse(new WhatIf(night, shop.strakes(now.withClamps(more))));
      }
      now.evening()
          .hours()
          .map(length -> length.plus(Hours.ofMinutes(random.nextInt(300))))
          .ifPresent(longer -> noWorse(new WhatIf(night, shop.strakes(now.withEvening(longer)))));
    }
  }

  private static void check(Nightly night) {
    Optional<BigFraction> each = night.piecesPerNight();
    for (Limit limit : List.of(Limit.CLAMPS, Limit.CURE, Limit.HOURS)) {
      night
          .by(limit)
          .value()
          .ifPresent(most -> assertTrue(each.orElseThrow().compareTo(most) <= 0, limit.word()));
    }
    assertTrue(night.tonight() >= 0 && night.tonight() <= night.most());
    assertTrue(night.most() <= night.count().left());
    night.resin().flatMap(r -> r.pieces().value()).ifPresent(n -> assertTrue(night.most() <= n));
    night
        .clamping()
        .value()
        .ifPresent(
            clamps ->
                assertTrue(BigFraction.of((int) night.most()).compareTo(clamps.perNight()) <= 0));
    long left = night.count().left();
    night
        .nightsLeft()
        .value()
        .filter(nights -> left > 0)
        .ifPresent(
            nights -> {
              BigFraction all = each.orElseThrow().multiply(nights.intValue());
              assertTrue(all.compareTo(BigFraction.of((int) left)) >= 0);
              assertTrue(
                  all.subtract(each.orElseThrow()).compareTo(BigFraction.of((int) left)) < 0);
            });
    assertEquals(
        left > 0 && (each.isPresent() || night.binding().equals(Optional.of(Limit.RESIN))),
        night.binding().isPresent());
    assertTrue(!Shop.WORDS.binding(night).isEmpty());
    assertTrue(!Shop.WORDS.limits(night).isEmpty());
    Shop.WORDS.held(night.held());
  }

  private static void noWorse(WhatIf change) {
    change.nightsSaved().value().ifPresent(saved -> assertTrue(saved >= 0, change::toString));
    boolean possible = change.now().nightsLeft().value().isPresent();
    assertTrue(!possible || change.changed().nightsLeft().value().isPresent());
    assertTrue(change.changed().most() >= change.now().most());
    assertTrue(change.changed().tonight() >= change.now().tonight());
    assertTrue(!Shop.WORDS.whatIf(change).isEmpty());
  }

  private static String project(SplittableRandom random) {
    return "materials: {epoxy: {on hand: "
        + random.nextInt(30)
        + " fl oz}}\nadhesives: {"
        + ADHESIVES.get(random.nextInt(ADHESIVES.size()))
        + "}\npieces: {strakes: {total: 16"
        + (random.nextBoolean() ? ", adhesive: epoxy, glue area: 1 in x 99 in" : "")
        + (random.nextInt(4) > 0 ? ", clamps: " + random.nextInt(12) : "")
        + (random.nextBoolean() ? ", hours: " + random.nextInt(6) : "")
        + "}}\n"
        + (random.nextBoolean()
            ? "shop temperatures: {jan: " + random.nextInt(30, 90) + " F}"
            : "");
  }

  private static String keys(SplittableRandom random) {
    return "hours: "
        + random.nextInt(5)
        + "\nprivate: "
        + random.nextBoolean()
        + (random.nextBoolean() ? "\npieces: {strakes: 1}" : "")
        + (random.nextBoolean()
            ? "\njoints: [{name: Lap, adhesive: epoxy"
                + (random.nextBoolean() ? ", clamped at: 21:10" : "")
                + (random.nextBoolean() ? ", temperature: " + random.nextInt(30, 90) + " F" : "")
                + "}]"
            : "");
  }
}
