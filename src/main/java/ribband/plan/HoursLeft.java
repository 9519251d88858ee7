package ribband.plan;

import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;
import ribband.measure.Hours;
import ribband.pieces.PieceCount;
import ribband.shop.Figure;

/**
 * The hours of work that are left.
 *
 * @param parts what is known of each phase, in order; finished ones with none left
 * @param leftOut titles of phases, and names of piece kinds, that nothing is known of
 */
public record HoursLeft(List<Part> parts, List<String> leftOut) {
  /** How the hours left of a part are reckoned. */
  public enum Basis {
    /** Nothing is left. */
    FINISHED,
    /** None, as the planned hours are used up and nothing but them tells how far it stands. */
    USED_UP,
    /** Pieces left, at their own rate. */
    PIECES,
    /** Plan x (1 - complete) / CPI. */
    RATE,
    /** Plan x (1 - complete), as there is no rate yet. */
    PLAN
  }

  /**
   * One phase, or one kind of pieces that belongs to none.
   *
   * @param name the phase's title or the kind's name
   * @param seconds 0 or more
   */
  public record Part(String name, BigFraction seconds, Basis basis) {
    public Part {
      Objects.requireNonNull(name);
      Objects.requireNonNull(basis);
      if (seconds.signum() < 0) {
        throw new IllegalArgumentException(name + ": " + seconds);
      }
    }

    /** Rounded up to the second. */
    public Hours hours() {
      return new Hours(seconds.bigDecimalValue(0, RoundingMode.CEILING).longValueExact());
    }
  }

  public HoursLeft {
    parts = List.copyOf(parts);
    leftOut = List.copyOf(leftOut);
  }

  public static HoursLeft of(Standing standing) {
    List<Part> parts = new ArrayList<>();
    List<String> leftOut = new ArrayList<>();
    for (PhaseStanding phase : standing.phases()) {
      part(phase, standing.piecesOf(phase))
          .ifPresentOrElse(parts::add, () -> leftOut.add(phase.phase().title()));
    }
    boolean isPlanned = standing.whole().isPresent();
    for (PieceCount count : standing.piecesOfNoPhase()) {
      if (count.left() > 0) {
        // Beside planned phases they would be counted twice: one of those holds their hours.
        Optional<BigFraction> known = isPlanned ? Optional.empty() : count.secondsLeft();
        known.ifPresentOrElse(
            left -> parts.add(new Part(count.kind().name(), left, Basis.PIECES)),
            () -> leftOut.add(count.kind().name()));
      }
    }
    return new HoursLeft(parts, leftOut);
  }

  /** spec: pieces left at their own rate; else plan x (1 - complete) / CPI. */
  private static Optional<Part> part(PhaseStanding phase, List<PieceCount> pieces) {
    String title = phase.phase().title();
    if (phase.complete().isWhole()) {
      Basis basis = phase.isDone() ? Basis.FINISHED : Basis.USED_UP;
      return Optional.of(new Part(title, BigFraction.ZERO, basis));
    }
    return atOwnRate(pieces)
        .map(left -> new Part(title, left, Basis.PIECES))
        .or(() -> phase.earned().map(earned -> byPlan(title, earned)));
  }

  private static Optional<BigFraction> atOwnRate(List<PieceCount> pieces) {
    List<PieceCount> unfinished = pieces.stream().filter(count -> count.left() > 0).toList();
    List<BigFraction> known = unfinished.stream().flatMap(c -> c.secondsLeft().stream()).toList();
    return unfinished.isEmpty() || known.size() < unfinished.size()
        ? Optional.empty()
        : known.stream().reduce(BigFraction::add);
  }

  private static Part byPlan(String title, EarnedValue earned) {
    return earned
        .etc()
        .map(left -> new Part(title, left, Basis.RATE))
        .orElseGet(() -> new Part(title, earned.left(), Basis.PLAN));
  }

  /** All of it, rounded up to the second once; unknown where nothing is planned or counted. */
  public Figure<Hours> total() {
    if (parts.isEmpty()) {
      return Figure.unknown("no phase has planned hours");
    }
    BigFraction all = parts.stream().map(Part::seconds).reduce(BigFraction.ZERO, BigFraction::add);
    return Figure.of(new Hours(all.bigDecimalValue(0, RoundingMode.CEILING).longValueExact()));
  }
}
