package ribband.pieces;

import java.math.BigInteger;
import java.math.RoundingMode;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalLong;
import org.apache.commons.numbers.fraction.BigFraction;
import ribband.journal.Journal;
import ribband.journal.PieceKind;
import ribband.measure.Hours;
import ribband.measure.Saying;

/**
 * How many pieces of a kind are made, how fast, and what that says of the rest.
 *
 * @param done less those taken back; 0 to the total
 * @param sides in the project's order; empty where the kind has none
 * @param numbered of a kind without sides; empty where some were told without a number
 * @param sessions those that made some
 * @param nights that made some or have hours in the kind's phase, from the first that made one on;
 *     in any phase where the kind has none
 */
public record PieceCount(
    PieceKind kind,
    int done,
    List<Side> sides,
    Optional<Numbered> numbered,
    Sessions sessions,
    int nights) {
  /** spec: a side goes by its own rate once it has three sessions. */
  private static final int ENOUGH = 3;

  public PieceCount {
    sides = List.copyOf(sides);
  }

  /**
   * Counts every kind of the project, in its order.
   *
   * @param asOf entries after it do not count
   * @return by folded name
   */
  public static Map<String, PieceCount> of(Journal journal, LocalDate asOf) {
    Counting counting = new Counting(journal.project());
    journal.entries().stream()
        .takeWhile(entry -> !entry.date().isAfter(asOf))
        .forEach(counting::add);
    return counting.counts();
  }

  public int left() {
    return kind.total() - done;
  }

  /**
   * Pieces made that no side was told of; below zero where more were taken back so. Of a kind
   * without sides, all.
   */
  public int untold() {
    return done - sides.stream().mapToInt(Side::done).sum();
  }

  /** Of all there are. */
  public BigFraction share() {
    return BigFraction.of(done, kind.total());
  }

  /** {@code 37%}. */
  public String shareInWords() {
    return Saying.share(done, kind.total());
  }

  /** Sessions for the rest, at the median of those before; empty without any. */
  public OptionalLong sessionsLeft() {
    return left() == 0
        ? OptionalLong.of(0)
        : sessions
            .median()
            .map(made -> OptionalLong.of(ceiling(whole(left()).divide(made))))
            .orElse(OptionalLong.empty());
  }

  /**
   * Nights for the rest at the builder's pace, in which the nights that finished none count too;
   * empty while none is done.
   */
  public OptionalLong nightsLeft() {
    if (left() == 0) {
      return OptionalLong.of(0);
    }
    return done == 0 || nights == 0
        ? OptionalLong.empty()
        : OptionalLong.of(ceiling(whole(left()).multiply(nights).divide(done)));
  }

  /**
   * The last of those nights, where every one from a first is worked.
   *
   * @param first it is night 1
   * @return empty where nothing is left or no pace is known
   */
  public Optional<LocalDate> lastNight(LocalDate first) {
    OptionalLong nights = nightsLeft();
    return nights.isEmpty() || nights.getAsLong() == 0
        ? Optional.empty()
        : Optional.of(first.plusDays(nights.getAsLong() - 1));
  }

  /** How long a piece took, else is planned to take; empty where neither is known. */
  public Optional<Rate> rate() {
    return sessions
        .secondsEach()
        .map(each -> new Rate(each, Rate.Basis.KIND))
        .or(() -> kind.hours().map(each -> new Rate(whole(each.seconds()), Rate.Basis.PLANNED)));
  }

  /** How long a piece of a side takes: by its own sessions once there are three, else as any. */
  public Optional<Rate> rate(Side side) {
    return side.sessions().timed() < ENOUGH
        ? rate()
        : side.sessions().secondsEach().map(each -> new Rate(each, Rate.Basis.SIDE));
  }

  /**
   * What is left at its own rate, side by side; at the planned hours where none was made yet.
   *
   * @return exact seconds; empty where neither is known
   */
  public Optional<BigFraction> secondsLeft() {
    if (left() == 0) {
      return Optional.of(BigFraction.ZERO);
    }
    int onSides = sides.stream().mapToInt(Side::left).sum();
    return rate()
        .map(
            rate ->
                onSides == 0
                    ? rate.secondsEach().multiply(left())
                    : onSides().multiply(left()).divide(onSides));
  }

  /** The same to the second. */
  public Optional<Hours> hoursLeft() {
    return secondsLeft().map(Rate::hours);
  }

  /** What is left of a side at its rate, to the second; empty where no rate is known. */
  public Optional<Hours> hoursLeft(Side side) {
    return side.left() == 0
        ? Optional.of(Hours.ZERO)
        : rate(side).map(rate -> Rate.hours(rate.secondsEach().multiply(side.left())));
  }

  private BigFraction onSides() {
    return sides.stream()
        .map(side -> rate(side).orElseThrow().secondsEach().multiply(side.left()))
        .reduce(BigFraction.ZERO, BigFraction::add);
  }

  private static BigFraction whole(long number) {
    return BigFraction.of(BigInteger.valueOf(number));
  }

  private static long ceiling(BigFraction number) {
    return number.bigDecimalValue(0, RoundingMode.CEILING).longValueExact();
  }
}
