package ribband.stock;

import java.math.RoundingMode;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;
import ribband.journal.Entry;
import ribband.journal.Journal;
import ribband.journal.Material;
import ribband.journal.Outlay;
import ribband.journal.Purchase;
import ribband.measure.Name;
import ribband.measure.Packs;
import ribband.measure.Quantity;
import ribband.measure.Span;
import ribband.measure.Unit;
import ribband.pieces.PieceCount;
import ribband.shop.Adhesive;

/** Reckons what is still needed of each material. */
final class Needs {
  /** The present pace is that of the last 8 weeks; of a younger journal, of 2 weeks at least. */
  private static final long PACE_DAYS = 56;

  private static final long FEWEST_DAYS = 14;
  private static final long DAY_SECONDS = 86_400;
  private static final int FARTHEST_DAYS = 36_500;
  private static final int MOST_PACKS = 99_999;

  private final Journal journal;
  private final LocalDate asOf;
  private final Map<String, PieceCount> pieces;
  private final Map<String, SpreadRate> spreads;

  /**
   * @param spreads by folded name of the adhesive
   */
  Needs(Journal journal, LocalDate asOf, Map<String, SpreadRate> spreads) {
    this.journal = journal;
    this.asOf = asOf;
    this.pieces = PieceCount.of(journal, asOf);
    this.spreads = spreads;
  }

  /** What is needed of one material. */
  Need of(String key, Quantity onHand, Quantity onOrder, List<Move> moves) {
    Unit unit = onHand.unit();
    Optional<Material> listed = Optional.ofNullable(journal.project().materials().get(key));
    Quantity held = onHand.plus(onOrder);
    Gluing gluing = gluing(key, unit);
    Quantity neverBelow =
        listed.flatMap(Material::neverBelow).map(q -> q.in(unit)).orElse(Quantity.none(unit));
    Quantity wanted = gluing.amount.plus(neverBelow);
    Quantity lacking = wanted.isMoreThan(held) ? wanted.minus(held) : Quantity.none(unit);
    Optional<LocalDate> runsOut = runsOut(held, moves);
    Optional<LocalDate> orderBy =
        orderBy(held, neverBelow, runsOut, listed.flatMap(Material::leadTime));
    boolean enough = lacking.isZero();
    return new Need(
        gluing.area,
        gluing.amount,
        gluing.unreckoned,
        neverBelow,
        lacking,
        enough ? Optional.empty() : lastPack(key).flatMap(pack -> packs(lacking, pack)),
        runsOut,
        enough ? Optional.empty() : orderBy);
  }

  /** What the pieces not yet made are glued over, and what that takes. */
  private record Gluing(Quantity area, Quantity amount, List<String> unreckoned) {}

  private Gluing gluing(String key, Unit unit) {
    Quantity area = Quantity.none(Unit.of("in2"));
    Quantity amount = Quantity.none(unit);
    List<String> unreckoned = new ArrayList<>();
    for (PieceCount count : pieces.values()) {
      Optional<Adhesive> adhesive = adhesive(count).filter(a -> GlueWork.materialOf(a).equals(key));
      if (adhesive.isPresent() && count.left() > 0) {
        Optional<Quantity> over = count.kind().glueArea().map(each -> each.times(count.left()));
        Optional<Quantity> takes = over.flatMap(all -> amount(adhesive.get(), all, unit));
        if (takes.isPresent()) {
          area = area.plus(over.orElseThrow());
          amount = amount.plus(takes.get());
        } else {
          unreckoned.add(count.kind().name());
        }
      }
    }
    return new Gluing(area, amount, unreckoned);
  }

  private Optional<Adhesive> adhesive(PieceCount count) {
    return count.kind().adhesive().map(name -> journal.project().adhesives().get(Name.fold(name)));
  }

  private Optional<Quantity> amount(Adhesive adhesive, Quantity area, Unit unit) {
    return Optional.ofNullable(spreads.get(Name.fold(adhesive.name())))
        .flatMap(rate -> rate.takes(area, unit.dimension()));
  }

  /** The pack of the latest purchase, whether it has come or not. */
  private Optional<Quantity> lastPack(String key) {
    Optional<Quantity> last = Optional.empty();
    for (Entry entry : journal.entries()) {
      if (entry.date().isAfter(asOf)) {
        break;
      }
      for (Outlay outlay : entry.outlays()) {
        if (!outlay.amount().isNegative()) {
          Optional<Quantity> pack =
              outlay
                  .purchase()
                  .filter(p -> p.material().map(Name::fold).filter(key::equals).isPresent())
                  .flatMap(Purchase::amount)
                  .map(Packs::pack)
                  .filter(p -> !p.isZero());
          last = pack.isPresent() ? pack : last;
        }
      }
    }
    return last;
  }

  /** Nobody buys so many of a pack that its size must be a slip. */
  private static Optional<Packs> packs(Quantity lacking, Quantity pack) {
    BigFraction count = lacking.over(pack);
    return count.compareTo(BigFraction.of(MOST_PACKS)) > 0
        ? Optional.empty()
        : Optional.of(
            new Packs(count.bigDecimalValue(0, RoundingMode.CEILING).intValueExact(), pack));
  }

  private Optional<LocalDate> runsOut(Quantity held, List<Move> moves) {
    LocalDate from = asOf.minusDays(PACE_DAYS - 1);
    LocalDate first = journal.entries().isEmpty() ? asOf : journal.entries().get(0).date();
    LocalDate start = first.isAfter(from) ? first : from;
    long days = Math.max(FEWEST_DAYS, ChronoUnit.DAYS.between(start, asOf) + 1);
    Quantity used =
        moves.stream()
            .filter(move -> move.kind().isUse())
            .filter(move -> move.date().filter(day -> !day.isBefore(from)).isPresent())
            .map(Move::amount)
            .reduce(Quantity.none(held.unit()), Quantity::plus);
    if (used.isZero()) {
      return Optional.empty();
    }
    BigFraction lasts = held.over(used).multiply(days);
    return lasts.compareTo(BigFraction.of(FARTHEST_DAYS)) > 0
        ? Optional.empty()
        : Optional.of(asOf.plusDays(lasts.bigDecimalValue(0, RoundingMode.FLOOR).longValueExact()));
  }

  /** What is down to its last reserve is ordered now, whatever the pace. */
  private Optional<LocalDate> orderBy(
      Quantity held, Quantity neverBelow, Optional<LocalDate> runsOut, Optional<Span> leadTime) {
    if (!held.isMoreThan(neverBelow)) {
      return Optional.of(asOf);
    }
    long days = leadTime.map(span -> -Math.floorDiv(-span.seconds(), DAY_SECONDS)).orElse(0L);
    return runsOut.map(day -> day.minusDays(days)).map(day -> day.isBefore(asOf) ? asOf : day);
  }
}
