package ribband.cli;

import java.util.Objects;
import java.util.Optional;
import java.util.stream.Stream;
import org.apache.commons.numbers.fraction.BigFraction;
import picocli.CommandLine.Option;
import ribband.measure.Dimension;
import ribband.measure.Percent;
import ribband.measure.Quantity;
import ribband.measure.Saying;
import ribband.measure.ShopTalk;
import ribband.measure.Unit;
import ribband.measure.Unreadable;
import ribband.shop.Adhesive;
import ribband.shop.Cloth;
import ribband.shop.Fillet;
import ribband.shop.Spreading;
import ribband.shop.TwoParts;

/** What is to be glued, filled or wetted out, as options. */
final class NeedOptions {
  /** More than any shop mixes: beyond it a unit was mistyped. */
  private static final BigFraction MOST = BigFraction.of(1_000_000);

  private static final BigFraction THOUSAND = BigFraction.of(1_000);

  @Option(
      names = "--area",
      paramLabel = "AREA",
      order = 2,
      description = "of one glued face: \"2 in x 8 ft\", 3ft2, 0.5m2")
  private String area;

  @Option(
      names = "--cloth",
      paramLabel = "WEIGHT",
      order = 3,
      description = "the area takes cloth, wetted out by hand: \"6 oz per yd2\"")
  private String cloth;

  @Option(names = "--fillet", paramLabel = "RADIUS", order = 4, description = "a fillet's: 1/2in")
  private String fillet;

  @Option(names = "--length", paramLabel = "LENGTH", order = 5, description = "and its length: 8ft")
  private String length;

  @Option(
      names = "--neat",
      paramLabel = "SHARE",
      order = 6,
      description = "how much of the fillet is resin, the rest being filler: 60%%; all if not said")
  private String neat;

  @Option(names = "--amount", paramLabel = "AMOUNT", order = 7, description = "mixed: 3floz, 200ml")
  private String amount;

  @Option(
      names = "--pieces",
      paramLabel = "N",
      order = 8,
      description = "so many areas, fillets or amounts")
  private String pieces;

  @Option(
      names = "--waste",
      paramLabel = "SHARE",
      order = 9,
      description = "more for what stays in the cup and on the brush: 10%%")
  private String waste;

  /**
   * A need that could be read.
   *
   * @param mixed how much to mix, a volume or a weight, more than 0
   * @param what it is for
   * @param granted what was taken for granted, a sentence; may be empty
   */
  record Need(Quantity mixed, String what, String granted) {}

  /** The amount that is asked about, as typed; empty where none is, or none that can be read. */
  Optional<Quantity> question() {
    return Stream.of(area, fillet, amount)
        .filter(Objects::nonNull)
        .findFirst()
        .flatMap(typed -> new Wants().read("", typed, Quantity::read));
  }

  /** What is needed; empty where that cannot be said, which the wants then tell. */
  Optional<Need> read(Wants wants, Adhesive used, ShopTalk shop) {
    Optional<Quantity> face = wants.read("--area", area, Wants.some(Dimension.AREA));
    Optional<Cloth> laid = wants.read("--cloth", cloth, Cloth::read);
    Optional<Quantity> radius = wants.read("--fillet", fillet, Wants.some(Dimension.LENGTH));
    Optional<Quantity> run = wants.read("--length", length, Wants.some(Dimension.LENGTH));
    Optional<Percent> resin = wants.read("--neat", neat, NeedOptions::resin);
    Optional<Quantity> mixed = wants.read("--amount", amount, Wants::volumeOrWeight);
    Optional<Integer> count = wants.read("--pieces", pieces, Wants.whole(2));
    Optional<Percent> lost = wants.read("--waste", waste, Percent::read);
    refuseWhatDoesNotFit(wants);
    int times = count.orElse(1);
    Optional<Need> once =
        face.map(
                f ->
                    laid.map(c -> wetted(c, f, times, used, shop))
                        .orElseGet(() -> glued(f, times, used, shop)))
            .or(() -> radius.flatMap(r -> run.map(l -> filled(r, l, resin, times, shop))))
            .or(() -> mixed.map(m -> poured(m, times, shop)));
    Optional<Need> all = once.map(need -> times(need, times, lost));
    all.filter(need -> need.mixed().inBase().compareTo(MOST) > 0)
        .ifPresent(
            need ->
                wants.refuse(
                    Saying.quantity(need.mixed())
                        + " to mix is more than any shop does; look at the units of what you"
                        + " typed"));
    return all;
  }

  private void refuseWhatDoesNotFit(Wants wants) {
    long ways = Stream.of(area, fillet, amount).filter(way -> way != null).count();
    if (ways == 0) {
      wants.refuse(
          "nothing says how much is needed; give --area, --amount, or --fillet with --length");
    } else if (ways > 1) {
      wants.refuse("--area, --fillet and --amount each say how much is needed; keep one");
    }
    if (cloth != null && area == null) {
      wants.refuse("--cloth needs the --area that it covers");
    }
    if ((fillet == null) != (length == null)) {
      wants.refuse("--fillet and --length go together, as --fillet 1/2in --length 8ft");
    }
    if (neat != null && fillet == null) {
      wants.refuse("--neat is a share of the putty of a --fillet");
    }
  }

  private static Percent resin(String text) throws Unreadable {
    Percent share = Percent.read(text);
    if (share.value().signum() == 0) {
      throw new Unreadable("leaves no resin", "write 60%");
    }
    return share;
  }

  private static Need glued(Quantity area, int count, Adhesive used, ShopTalk shop) {
    return new Need(
        Spreading.amount(area, used.spread().orElse(Spreading.RULE_OF_THUMB)),
        each(count, "one face of ", " faces of ", said(area, shop)),
        used.spread().isPresent()
            ? ""
            : "No spread is known for it: "
                + shop.spread(Spreading.RULE_OF_THUMB)
                + " is assumed, which is common practice.");
  }

  private static Need wetted(Cloth cloth, Quantity area, int count, Adhesive used, ShopTalk shop) {
    Quantity weight = cloth.resin(area);
    return new Need(
        TwoParts.of(used).measuredBy(Dimension.VOLUME, weight).orElse(weight),
        each(count, "", " pieces of ", said(area, shop))
            + " in cloth of "
            + Saying.quantity(cloth.weight())
            + " per "
            + Saying.quantity(cloth.area()).replaceFirst("^1 ", ""),
        "The resin is taken to weigh as much as the cloth, which is common practice by hand.");
  }

  private static Need filled(
      Quantity radius, Quantity length, Optional<Percent> resin, int count, ShopTalk shop) {
    Quantity putty = Quantity.none(shopVolume(shop)).plus(Fillet.volume(radius, length));
    return new Need(
        putty.times(resin.map(Percent::share).orElse(BigFraction.ONE)),
        each(
            count,
            "one fillet of ",
            " fillets of ",
            shop.written(radius) + " radius and " + shop.written(length) + " length"),
        "One fillet takes "
            + shop.reckoned(putty)
            + " of thickened putty, "
            + resin
                .map(share -> Saying.percent(share) + " of it resin.")
                .orElse("and resin is reckoned for all of it; filler makes it less, see --neat."));
  }

  private static Need poured(Quantity mixed, int count, ShopTalk shop) {
    return new Need(mixed, each(count, "", " times ", shop.written(mixed)), "");
  }

  /** As it was written, or in a larger unit where that is easier to picture. */
  private static String said(Quantity area, ShopTalk shop) {
    return area.number().compareTo(THOUSAND) < 0 ? shop.written(area) : shop.reckoned(area);
  }

  private static String each(int count, String one, String several, String what) {
    return (count == 1 ? one : Saying.count(count) + several) + what;
  }

  private static Unit shopVolume(ShopTalk shop) {
    return switch (shop.units()) {
      case US -> Unit.of("fl oz");
      case METRIC -> Unit.of("ml");
    };
  }

  private static Need times(Need once, int count, Optional<Percent> lost) {
    BigFraction share = lost.map(Percent::share).orElse(BigFraction.ZERO);
    return new Need(
        once.mixed().times(BigFraction.ONE.add(share).multiply(count)),
        once.what() + lost.map(percent -> ", and " + Saying.percent(percent) + " waste").orElse(""),
        once.granted());
  }
}
