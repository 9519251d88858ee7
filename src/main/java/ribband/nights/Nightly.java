package ribband.nights;

import java.math.BigInteger;
import java.math.RoundingMode;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;
import ribband.measure.Hours;
import ribband.pieces.PieceCount;
import ribband.shop.Figure;

/**
 * How many pieces of a kind a night can bring, and what keeps it from more.
 *
 * @param clampTime of the next ones
 * @param held clamps that are still on, of any kind
 * @param resin empty where the kind names no adhesive
 */
public record Nightly(
    PieceCount count,
    Setting setting,
    ClampTime clampTime,
    HeldClamps held,
    Optional<Resin> resin) {
  /** Why no nights are left to tell: no load of clamps holds one piece. */
  public static final String NONE = "none can be made";

  /** The clamps; unknown where the pieces hold none or nothing tells how many there are. */
  public Figure<Clamping> clamping() {
    int each = count.kind().clamps().orElse(0);
    if (each == 0) {
      return Figure.unknown(count.kind().name() + " hold no clamps in project.yaml");
    }
    return setting.clamps().isEmpty()
        ? Figure.unknown("project.yaml does not say how many clamps the shop has")
        : Figure.of(
            new Clamping(
                setting.clamps().getAsInt(),
                each,
                held.number(),
                clampTime.lasts(),
                setting.evening().hours()));
  }

  /** What a night is limited to by each, in pieces; what is unknown says why. */
  public Figure<BigFraction> by(Limit limit) {
    return switch (limit) {
      case CLAMPS -> clamping().map(Clamping::perNight);
      case CURE -> clamping().flatMap(Clamping::perNightOfCure);
      case HOURS -> byHours();
      case RESIN ->
          Figure.of(resin, count.kind().name() + " name no adhesive").flatMap(Resin::suffices);
    };
  }

  private Figure<BigFraction> byHours() {
    Figure<BigFraction> each =
        Figure.of(
            count.rate().map(rate -> rate.secondsEach()).filter(seconds -> seconds.signum() > 0),
            "nothing tells how long one of the " + count.kind().name() + " takes");
    return Figure.of(setting.evening().hours(), "no evening is given and no hours are written")
        .flatMap(evening -> each.map(seconds -> whole(evening.seconds()).divide(seconds)));
  }

  /** Each night, exact: the least that hours, clamps and cure allow; empty where none is known. */
  public Optional<BigFraction> piecesPerNight() {
    return least().map(Map.Entry::getValue);
  }

  private Optional<Map.Entry<Limit, BigFraction>> least() {
    Map<Limit, BigFraction> known = new LinkedHashMap<>();
    for (Limit limit : new Limit[] {Limit.CLAMPS, Limit.CURE, Limit.HOURS}) {
      by(limit).value().ifPresent(pieces -> known.put(limit, pieces));
    }
    return known.entrySet().stream().min(Map.Entry.comparingByValue());
  }

  /**
   * What binds; empty where nothing is left or nothing known limits it. Resin does where what is on
   * hand is not enough for a night's pieces, or for the one that a night cannot finish.
   */
  public Optional<Limit> binding() {
    if (count.left() == 0) {
      return Optional.empty();
    }
    Optional<Map.Entry<Limit, BigFraction>> least = least();
    BigFraction left = whole(count.left());
    BigFraction wanted =
        least.map(Map.Entry::getValue).filter(n -> n.compareTo(left) < 0).orElse(left);
    boolean none = wanted.signum() == 0;
    BigFraction night = wanted.compareTo(BigFraction.ONE) < 0 ? BigFraction.ONE : wanted;
    boolean lacking = by(Limit.RESIN).value().filter(n -> n.compareTo(night) < 0).isPresent();
    return lacking && !none ? Optional.of(Limit.RESIN) : least.map(Map.Entry::getKey);
  }

  /** Nights for all that are left; unknown with the reason. */
  public Figure<Long> nightsLeft() {
    if (count.left() == 0) {
      return Figure.of(0L);
    }
    return Figure.of(piecesPerNight(), "nothing known limits what a night can bring")
        .flatMap(
            each ->
                each.signum() == 0
                    ? Figure.unknown(NONE)
                    : Figure.of(
                        whole(count.left())
                            .divide(each)
                            .bigDecimalValue(0, RoundingMode.CEILING)
                            .longValueExact()));
  }

  /** Whole pieces that the free clamps and the resin allow tonight; what is left at most. */
  public long most() {
    long clamps = clamping().map(Clamping::tonight).value().orElse(Long.MAX_VALUE);
    long glue = resin.flatMap(r -> r.pieces().value()).orElse(Long.MAX_VALUE);
    return Math.min(count.left(), Math.min(clamps, glue));
  }

  /** Of those, what goes into the evening. */
  public long tonight() {
    return by(Limit.HOURS)
        .map(pieces -> pieces.bigDecimalValue(0, RoundingMode.FLOOR).longValueExact())
        .map(pieces -> Math.min(most(), pieces))
        .value()
        .orElseGet(this::most);
  }

  /** What one takes, as it went or as planned; empty where neither is known. */
  public Optional<Hours> each() {
    return count.rate().map(rate -> rate.each());
  }

  private static BigFraction whole(long number) {
    return BigFraction.of(BigInteger.valueOf(number));
  }
}
