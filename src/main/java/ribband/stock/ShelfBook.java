package ribband.stock;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;
import ribband.journal.Entry;
import ribband.journal.Outlay;
import ribband.measure.Money;
import ribband.measure.Quantity;
import ribband.measure.Unit;

/** Writes down what moves one material, while a journal is gone through in its order. */
final class ShelfBook {
  private final Unit unit;
  private final Quantity none;
  private final Kits kits = new Kits();
  private final List<Move> moves = new ArrayList<>();
  private Holding holding;
  private Known known;

  /**
   * Whether it is known what is on the shelf. What is listed is known from the start; anything else
   * from the first purchase or count on, and nothing can be short before.
   */
  enum Known {
    KNOWN,
    NOT_YET
  }

  ShelfBook(Unit unit, Known known) {
    this.unit = unit;
    this.none = Quantity.none(unit);
    this.known = known;
    this.holding = Holding.none(unit);
  }

  Unit unit() {
    return unit;
  }

  void open(Quantity amount, Money worth) {
    kits.add(Move.Kind.OPENING, Optional.empty(), Optional.empty(), Optional.empty(), amount);
    comes(Move.Kind.OPENING, Optional.empty(), Optional.empty(), amount, worth.minor());
  }

  /**
   * Puts a purchase on the shelf; money that came back is goods that went back.
   *
   * @return the move, with its shortfall where less was there to go back
   */
  Move buy(Entry entry, LocalDate day, Outlay outlay) {
    Quantity amount = outlay.purchase().orElseThrow().amount().orElseThrow().total().in(unit);
    if (outlay.amount().isNegative()) {
      return giveBack(entry, day, amount, outlay.amount());
    }
    kits.add(Move.Kind.BOUGHT, Optional.of(day), Optional.of(entry), Optional.of(outlay), amount);
    return comes(
        Move.Kind.BOUGHT, Optional.of(day), Optional.of(entry), amount, outlay.amount().minor());
  }

  private Move comes(
      Move.Kind kind, Optional<LocalDate> day, Optional<Entry> entry, Quantity amount, long cost) {
    known = Known.KNOWN;
    holding = holding.plus(amount, BigFraction.of(cost));
    return written(
        new Move(kind, day, entry, amount.in(unit), new Money(cost), none, onHand(), worth()));
  }

  /**
   * What goes back to the shop takes with it what was paid back for it, as far as that is there.
   */
  private Move giveBack(Entry entry, LocalDate day, Quantity amount, Money refund) {
    Quantity there = amount.isMoreThan(holding.amount()) ? holding.amount() : amount;
    Holding before = holding;
    BigFraction paid = BigFraction.of(-refund.minor());
    Quantity left = holding.amount().minus(there);
    BigFraction worth =
        left.isZero() || paid.compareTo(before.minor()) > 0
            ? BigFraction.ZERO
            : before.minor().subtract(paid);
    holding = new Holding(left, worth);
    kits.giveBack(there, day);
    return written(
        new Move(
            Move.Kind.RETURNED,
            Optional.of(day),
            Optional.of(entry),
            amount,
            before.worth().minus(holding.worth()),
            there == amount ? none : amount.minus(there),
            onHand(),
            worth()));
  }

  /**
   * Takes what an entry used.
   *
   * @return the move, with its shortfall where less was there
   */
  Move use(Move.Kind kind, Entry entry, Quantity used, Optional<GlueWork> work) {
    Quantity amount = used.in(unit);
    boolean enough = known == Known.NOT_YET || !amount.isMoreThan(holding.amount());
    Quantity there = enough ? amount : holding.amount();
    Holding before = holding;
    if (known == Known.KNOWN) {
      holding = holding.less(there);
      kits.take(there, entry.date(), work);
    }
    return written(
        new Move(
            kind,
            Optional.of(entry.date()),
            Optional.of(entry),
            amount,
            before.worth().minus(holding.worth()),
            there == amount ? none : amount.minus(there),
            onHand(),
            worth()));
  }

  private Move written(Move move) {
    moves.add(move);
    return move;
  }

  /**
   * spec: {@code left} is a count of the shelf: the figure starts again from it and the difference
   * is shown as unrecorded use. More than was known of is a find, which cost nothing known.
   */
  void count(Entry entry, Quantity counted) {
    Quantity there = counted.in(unit);
    known = Known.KNOWN;
    if (holding.amount().isMoreThan(there)) {
      use(Move.Kind.MISSING, entry, holding.amount().minus(there), Optional.empty());
    } else if (there.isMoreThan(holding.amount())) {
      Quantity found = there.minus(holding.amount());
      Optional<LocalDate> day = Optional.of(entry.date());
      kits.add(Move.Kind.FOUND, day, Optional.of(entry), Optional.empty(), found);
      comes(Move.Kind.FOUND, day, Optional.of(entry), found, 0);
    }
  }

  /** What is there; empty where nothing has told it. */
  Optional<Holding> held() {
    return known == Known.KNOWN ? Optional.of(holding) : Optional.empty();
  }

  private Optional<Quantity> onHand() {
    return held().map(Holding::amount);
  }

  private Optional<Money> worth() {
    return held().map(Holding::worth);
  }

  List<Move> moves() {
    return moves;
  }

  List<Kit> kits() {
    return kits.kits();
  }
}
