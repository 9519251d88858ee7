package ribband.nights;

import java.math.BigInteger;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import org.apache.commons.numbers.fraction.BigFraction;
import ribband.joints.Temper;
import ribband.joints.Warm;
import ribband.measure.Quantity;
import ribband.measure.Saying;
import ribband.measure.ShopTalk;
import ribband.measure.Unit;
import ribband.pieces.Rate;
import ribband.shop.Figure;

/** What is said of what a night can bring; what pieces are called stands before it. */
public record NightWords(ShopTalk talk, ZoneId zone) {
  /** {@code clamps bind: 24 hold two at a time (10 each), 8 h at 61 °F, the joint's}. */
  public String binding(Nightly night) {
    return night
        .binding()
        .map(limit -> limit.binds() + ": " + limit(night, limit))
        .orElse(
            night.count().left() == 0
                ? "none are left"
                : "nothing known limits what a night can bring");
  }

  /** {@code 5 nights left at best, 2 pieces tonight; clamps are the limit}. */
  public String left(Nightly night) {
    String limit = night.binding().map(binding -> "; " + binding.binds()).orElse("");
    if (night.nightsLeft().why().equals(Nightly.NONE)) {
      return Nightly.NONE + limit;
    }
    String tonight =
        night.tonight() == 0 ? "none" : Saying.counted(night.tonight(), "piece", "pieces");
    return night
            .nightsLeft()
            .value()
            .map(left -> nights(left) + " left at best")
            .orElse("nights left unknown: " + night.nightsLeft().why())
        + ", "
        + tonight
        + " tonight"
        + limit;
  }

  /** One line for each limit that is known, and for each that is unknown with the reason. */
  public List<String> limits(Nightly night) {
    List<String> lines = new ArrayList<>();
    for (Limit limit : Limit.values()) {
      if (concerns(night, limit)) {
        lines.add(limit.word() + ": " + limit(night, limit));
      }
    }
    return lines;
  }

  private static boolean concerns(Nightly night, Limit limit) {
    return switch (limit) {
      case CLAMPS -> night.count().kind().clamps().orElse(0) > 0;
      case CURE -> night.clamping().value().filter(clamps -> clamps.load() > 0).isPresent();
      case HOURS -> true;
      case RESIN -> night.resin().isPresent();
    };
  }

  private String limit(Nightly night, Limit limit) {
    Figure<String> said =
        switch (limit) {
          case CLAMPS -> night.clamping().map(clamps -> clamps(night, clamps));
          case CURE -> night.clamping().flatMap(clamps -> cure(night, clamps));
          case HOURS -> night.by(limit).map(pieces -> hours(night, pieces));
          case RESIN -> resin(night);
        };
    return said.value().orElseGet(() -> "unknown: " + said.why());
  }

  private String clamps(Nightly night, Clamping clamps) {
    if (clamps.load() == 0) {
      return "each holds "
          + clamps.each()
          + ", the shop has "
          + clamps.shop()
          + ": none can be made";
    }
    String again =
        clamps.loads() == 1 ? "" : ", " + Saying.number(clamps.loads()) + " times an evening";
    String time = night.clampTime().lasts().value().map(on -> ", " + time(night)).orElse("");
    return clamps.shop()
        + (clamps.shop() == 1 ? " holds " : " hold ")
        + Saying.number(clamps.load())
        + " at a time ("
        + clamps.each()
        + " each)"
        + again
        + time;
  }

  /** {@code 8 h at 61 °F, the joint's}. */
  private String time(Nightly night) {
    ClampTime time = night.clampTime();
    String warm =
        Temper.said(time.warm(), time.adhesive(), talk)
            .map(
                said -> " " + said + (time.warm().from() == Warm.From.ENTRY ? ", the joint's" : ""))
            .orElse("");
    return time.lasts().value().map(on -> Saying.span(on.minutesAfter())).orElse("") + warm;
  }

  private Figure<String> cure(Nightly night, Clamping clamps) {
    return clamps
        .every()
        .map(
            nights ->
                time(night)
                    + (nights == 1
                        ? ", so the clamps are free the next evening"
                        : ", so the clamps take "
                            + Saying.number(clamps.load() * clamps.loads())
                            + " every "
                            + Saying.number(nights)
                            + " nights"));
  }

  private static String hours(Nightly night, BigFraction pieces) {
    boolean usual = night.setting().evening().from() == EveningLength.From.USUAL;
    boolean planned = night.count().rate().filter(r -> r.basis() == Rate.Basis.PLANNED).isPresent();
    return (usual ? "the usual evening of " : "an evening of ")
        + night.setting().evening().hours().map(Saying::hoursInWords).orElse("")
        + " makes "
        + few(pieces)
        + ", at "
        + night.each().map(Saying::hoursInWords).orElse("")
        + " each"
        + (planned ? " as planned" : "");
  }

  private static Figure<String> resin(Nightly night) {
    return Figure.of(night.resin(), night.count().kind().name() + " name no adhesive")
        .flatMap(
            resin ->
                resin
                    .pieces()
                    .map(
                        enough ->
                            resin.material()
                                + " for "
                                + (enough >= night.count().left()
                                    ? "all that are left"
                                    : Saying.number(enough) + " more")));
  }

  /** {@code two}, {@code 2½}. */
  private static String few(BigFraction pieces) {
    return pieces.getDenominator().equals(BigInteger.ONE)
        ? Saying.number(pieces.longValue())
        : Saying.quantity(new Quantity(pieces, Unit.PIECES));
  }

  /** {@code 20 on strakes until 04:40 on 15 March 2026}, a line for each. */
  public List<String> held(HeldClamps held) {
    return held.lots().stream()
        .map(lot -> Saying.count(lot.clamps()) + " on " + lot.kind() + until(lot))
        .toList();
  }

  private String until(HeldClamps.Lot lot) {
    return lot.until()
        .map(at -> LocalDateTime.ofInstant(at, zone))
        .map(
            at ->
                " until "
                    + Saying.clock(at.toLocalTime())
                    + " on "
                    + Saying.day(at.toLocalDate())
                    + (lot.basis() == HeldClamps.Basis.END_OF_DAY ? " at the latest" : ""))
        .orElse(", glued too cold to tell until when");
  }

  /** {@code 5 nights instead of 8: 3 nights saved}. */
  public String whatIf(WhatIf change) {
    return change
        .nightsSaved()
        .map(saved -> whatIf(change, saved))
        .value()
        .orElseGet(
            () ->
                change.nightsSaved().why().equals(Nightly.NONE)
                    ? Nightly.NONE
                    : "unknown: " + change.nightsSaved().why());
  }

  private static String whatIf(WhatIf change, long saved) {
    String after = nights(change.changed().nightsLeft().value().orElseThrow());
    if (saved == 0) {
      return after
          + " as before"
          + change.changed().binding().map(limit -> ": " + limit.binds()).orElse("");
    }
    return after
        + " instead of "
        + Saying.count(change.now().nightsLeft().value().orElseThrow())
        + ": "
        + nights(Math.abs(saved))
        + (saved > 0 ? " saved" : " more");
  }

  private static String nights(long number) {
    return Saying.counted(number, "night", "nights");
  }
}
