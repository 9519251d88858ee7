package ribband.cli;

import java.io.PrintWriter;
import java.math.BigDecimal;
import java.util.EnumSet;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import ribband.cli.NeedOptions.Need;
import ribband.measure.Saying;
import ribband.measure.ShopTalk;
import ribband.measure.Span;
import ribband.measure.Temperature;
import ribband.measure.Temperature.Scale;
import ribband.measure.Units;
import ribband.measure.Warmth;
import ribband.problem.Paragraph;
import ribband.shop.Adhesive;
import ribband.shop.Batches;
import ribband.shop.Caution;
import ribband.shop.Figure;
import ribband.shop.MeasuredPair;
import ribband.shop.MixPlan;
import ribband.shop.MixPlan.Measured;

/** Tells a mix to the builder at the bench. */
final class MixTable {
  private static final int LABEL = 16;
  private static final String NOT_PARTED =
      "unknown: the amount is known by one measure and the mix by the other, and the densities of"
          + " its parts are not given";

  /** Below it a shop is heated: common practice, no source. */
  private static final BigDecimal COLD = BigDecimal.valueOf(60);

  private final MixPlan plan;
  private final Adhesive adhesive;
  private final SheetGaps gaps;
  private final Optional<Warmth> warmth;
  private final ShopTalk shop;
  private final MixWarnings warnings;
  private final PrintWriter out;

  MixTable(MixPlan plan, Adhesive adhesive, Optional<Warmth> warmth, Units units, PrintWriter out) {
    this.plan = plan;
    this.adhesive = adhesive;
    this.gaps = new SheetGaps(adhesive);
    this.warmth = warmth;
    this.shop = new ShopTalk(units);
    this.warnings = new MixWarnings(plan, shop);
    this.out = out;
  }

  /**
   * Tells all of it.
   *
   * @param timed whether the builder said how long spreading takes
   */
  void tell(Need need, boolean timed) {
    String name = adhesive.name();
    String verb = gaps.isCoating() ? "Take " : "Mix ";
    paragraph((name.isEmpty() ? "Mix" : verb + name) + " for " + need.what());
    out.println();
    amounts();
    out.println();
    row("temperature", gaps.isCoating() ? ofTheCoating() : temperature());
    cups(timed);
    out.println();
    if (gaps.isForJoints()) {
      times();
      out.println();
    }
    if (!gaps.missing().isEmpty()) {
      paragraph("Not given, so nothing is told of it: " + Saying.list(gaps.missing()) + ".");
    }
    if (!need.granted().isEmpty()) {
      paragraph(need.granted());
    }
    cautions().forEach(caution -> paragraph(caution.words()));
    paragraph(Caution.GOVERNS);
  }

  private void amounts() {
    row("needed", both(plan.volume(), plan.weight(), m -> shop.reckoned(m.needed())));
    Optional<MeasuredPair> volume = plan.volume().flatMap(Measured::parts);
    Optional<MeasuredPair> weight = plan.weight().flatMap(Measured::parts);
    if (adhesive.mix().isEmpty()) {
      return;
    }
    if (volume.isEmpty() && weight.isEmpty()) {
      row("part A, part B", warnings.tooFine().orElse(NOT_PARTED));
      return;
    }
    String each = count() > 1 ? ", in each batch" : "";
    row("part A, resin", both(volume, weight, p -> Saying.quantity(p.first())) + each);
    row("part B, hardener", both(volume, weight, p -> Saying.quantity(p.second())) + each);
    row("together", both(volume, weight, p -> Saying.quantity(p.total())) + each);
    if (weight.isEmpty()) {
      row("by weight", "unknown: the densities of its parts are not given");
    }
    if (volume.isEmpty()) {
      row("by volume", "unknown: the densities of its parts are not given");
    }
    warnings.tooLittle().ifPresent(words -> row("too little", words));
  }

  private static <T> String both(Optional<T> volume, Optional<T> weight, Function<T, String> said) {
    return Stream.of(volume, weight)
        .flatMap(Optional::stream)
        .map(said)
        .collect(Collectors.joining(", or "));
  }

  private long count() {
    return plan.batches().value().map(Batches::count).orElse(1L);
  }

  /** Times are those of the data sheet where nobody says how warm it is. */
  private String temperature() {
    if (warmth.isEmpty()) {
      return adhesive
          .ratedAt()
          .map(shop::temperature)
          .map(at -> "not said: the times below hold at " + at)
          .orElse("not said: the times below are as given");
    }
    boolean saysItself = plan.cold().isPresent() && warmth.get().stays().size() == 1;
    return (saysItself ? "" : shop.warmth(warmth.get()) + "; ")
        + plan.cold().orElseGet(this::reckoned);
  }

  private String ofTheCoating() {
    return plan.cold().or(() -> warmth.map(shop::warmth)).orElse("not said");
  }

  private String reckoned() {
    return adhesive
        .ratedAt()
        .map(shop::temperature)
        .map(at -> "the times are reckoned from those at " + at)
        .orElse("nothing says what the times are rated at, so they stay as given");
  }

  private void cups(boolean timed) {
    if (adhesive.potLife().isPresent()) {
      row("in the cup", told(plan.cup(), "at most "));
    }
    String assumed = timed ? "" : ", at 2 minutes a fluid ounce (assumed, common practice)";
    row("to spread it", told(plan.takes(), "") + (isKnown(plan.takes()) ? assumed : ""));
    if (adhesive.potLife().isPresent()) {
      row(
          "batches",
          plan.batches()
              .value()
              .map(cups -> warnings.outlasts().orElse("one"))
              .orElseGet(() -> unknown(plan.batches())));
    }
    if (isKnown(plan.cup())) {
      row("", "A deep or full cup sets sooner than the rule says: spread it out at once.");
    }
  }

  private void times() {
    if (adhesive.openTime().isPresent()) {
      row("close the joint", told(plan.close(), "within ", " of spreading"));
    }
    if (adhesive.softFor().isPresent()) {
      row("stays soft", told(plan.soft(), "", " after spreading"));
      row("last look", lastLook());
    }
    if (adhesive.clampTime().isPresent()) {
      row("clamps off", told(plan.clampsOff(), "", " after closing, not yet fully cured"));
    }
  }

  private String lastLook() {
    return isKnown(plan.soft())
        ? plan.lastLook()
            .map(span -> Saying.span(span) + " after spreading")
            .orElse("at once, it sets within a quarter of an hour")
        : unknown(plan.soft());
  }

  private static boolean isKnown(Figure<Span> figure) {
    return figure.value().isPresent();
  }

  private String told(Figure<Span> figure, String before) {
    return told(figure, before, "");
  }

  private String told(Figure<Span> figure, String before, String after) {
    return figure
        .value()
        .map(span -> before + Saying.span(span) + after)
        .orElseGet(() -> unknown(figure));
  }

  /** The temperature's reason stands beside the temperature. */
  private String unknown(Figure<?> figure) {
    boolean isTold = plan.cold().filter(figure.why()::equals).isPresent();
    return isTold ? "unknown at this temperature" : "unknown: " + figure.why();
  }

  private void row(String label, String words) {
    String head = "  " + label + " ".repeat(LABEL - label.length()) + "  ";
    out.print(Paragraph.of(head, head.length(), words));
  }

  private void paragraph(String words) {
    out.print(Paragraph.of("", 0, words));
  }

  /** A coating that is not mixed is thinned and cleaned with solvent. */
  private Set<Caution> cautions() {
    Set<Caution> cautions =
        gaps.isCoating() ? EnumSet.noneOf(Caution.class) : EnumSet.of(Caution.RESIN, Caution.CUP);
    if (adhesive.mix().isEmpty()) {
      cautions.add(Caution.SOLVENT);
    }
    if (warmth.stream().flatMap(w -> w.stays().stream()).anyMatch(s -> isCold(s.at()))) {
      cautions.add(Caution.HEAT);
    }
    return cautions;
  }

  private static boolean isCold(Temperature at) {
    return at.in(Scale.F).degrees().compareTo(COLD) < 0;
  }
}
