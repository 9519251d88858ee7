package ribband.measure;

import java.util.Locale;
import java.util.Objects;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * An exact amount of something, in the unit the builder wrote.
 *
 * @param number how many of the unit, 0 or more
 */
public record Quantity(BigFraction number, Unit unit) {
  private static final Pattern ONE = Pattern.compile("(" + Numbers.PATTERN + ") ?(.*)");
  private static final Pattern FEET_AND_INCHES =
      Pattern.compile(
          "([0-9]{1,6}) ?(?:ft|feet|foot|'|′) ?(" + Numbers.PATTERN + ") ?(?:in|inch|inches|\"|″)");
  private static final Pattern BY = Pattern.compile(" ?[x×] ?");

  public Quantity {
    Objects.requireNonNull(unit);
    if (number.signum() < 0) {
      throw new IllegalArgumentException("negative quantity " + number);
    }
  }

  /**
   * Reads any amount: {@code 2 fl oz}, {@code 1 1/2 qt}, {@code 2 ft 6 in}, {@code 2 in x 8 ft},
   * {@code 40}, {@code 40 screws}.
   */
  public static Quantity read(String text) throws Unreadable {
    String plain = text.strip().replaceAll("\\s+", " ");
    if (plain.startsWith("-") || plain.startsWith("−")) {
      throw new Unreadable("is below zero", "write how much there is, as 2 fl oz");
    }
    Optional<Quantity> area = byTwoSides(plain);
    if (area.isPresent()) {
      return area.get();
    }
    Optional<Quantity> one = one(plain);
    if (one.isPresent()) {
      return one.get();
    }
    String pointed = plain.replaceFirst("^0+(?=[0-9])", "").replaceFirst(",", ".");
    throw plain.matches("[0-9]{1,3},[0-9]{1,4}( .*)?") && one(pointed).isPresent()
        ? new Unreadable("has a decimal comma", "write " + pointed)
        : new Unreadable(
            "is not an amount", "write a number and a unit, as 2 fl oz, 1 1/2 qt or 40 screws");
  }

  /**
   * Reads an amount that must measure one thing; the other dimension is named where it does not.
   */
  public static Reading<Quantity> of(Dimension wanted) {
    return text -> {
      Quantity quantity = read(text);
      if (quantity.unit().dimension() != wanted) {
        throw mismatch(text.strip(), quantity, wanted);
      }
      return quantity;
    };
  }

  private static Unreadable mismatch(String text, Quantity quantity, Dimension wanted) {
    Unit unit = quantity.unit();
    String found = unit.dimension().words();
    if (wanted == Dimension.VOLUME && unit.name().equals("oz")) {
      return new Unreadable(
          "is " + found + ", and a volume belongs here", "write fl oz for fluid ounces");
    }
    if (unit.equals(Unit.PIECES)) {
      return new Unreadable(
          "has no unit, and " + wanted.words() + " belongs here",
          "write its unit too, as " + text + " " + wanted.unit());
    }
    return new Unreadable(
        "is " + found + ", and " + wanted.words() + " belongs here",
        "write it as " + wanted.example());
  }

  private static Optional<Quantity> byTwoSides(String plain) throws Unreadable {
    String[] sides = BY.split(plain, -1);
    if (sides.length != 2) {
      return Optional.empty();
    }
    Optional<Quantity> near = length(sides[0]);
    Optional<Quantity> far = length(sides[1]);
    if (far.isPresent() && Numbers.read(sides[0]).isPresent()) {
      throw new Unreadable(
          "has a unit on one side alone",
          "write " + sides[0] + " " + far.get().unit().name() + " x " + sides[1]);
    }
    if (near.isPresent() && Numbers.read(sides[1]).isPresent()) {
      throw new Unreadable(
          "has a unit on one side alone",
          "write " + sides[0] + " x " + sides[1] + " " + near.get().unit().name());
    }
    if (far.isEmpty() || near.isEmpty()) {
      return Optional.empty();
    }
    Unit area = areaUnitOf(far.get().unit(), near.get().unit());
    BigFraction squareMillimetres = near.get().inBase().multiply(far.get().inBase());
    return Optional.of(new Quantity(squareMillimetres.divide(area.size()), area));
  }

  private static Unit areaUnitOf(Unit one, Unit other) {
    boolean metric = one.name().endsWith("m") && other.name().endsWith("m");
    return Unit.measured(metric ? "cm2" : "in2").orElseThrow();
  }

  private static Optional<Quantity> length(String text) {
    return one(text.strip()).filter(q -> q.unit().dimension() == Dimension.LENGTH);
  }

  private static Optional<Quantity> one(String plain) {
    Matcher both = FEET_AND_INCHES.matcher(plain.toLowerCase(Locale.ROOT));
    if (both.matches()) {
      BigFraction inches = Numbers.read(both.group(1)).orElse(BigFraction.ZERO).multiply(12);
      Unit inch = Unit.measured("in").orElseThrow();
      return Numbers.read(both.group(2)).map(n -> new Quantity(inches.add(n), inch));
    }
    Matcher one = ONE.matcher(plain);
    if (!one.matches()) {
      return Optional.empty();
    }
    Optional<BigFraction> number = Numbers.read(one.group(1));
    Optional<Unit> unit = unit(one.group(2).strip());
    return number.isPresent() && unit.isPresent()
        ? Optional.of(new Quantity(number.get(), unit.get()))
        : Optional.empty();
  }

  private static Optional<Unit> unit(String name) {
    if (name.isEmpty()) {
      return Optional.of(Unit.PIECES);
    }
    try {
      return Optional.of(Unit.read(name));
    } catch (Unreadable e) {
      return Optional.empty();
    }
  }

  /** How much in the base unit of its dimension: ml, g, mm, mm2, board feet, pieces. */
  public BigFraction inBase() {
    return number.multiply(unit.size());
  }

  /** None of a unit. */
  public static Quantity none(Unit unit) {
    return new Quantity(BigFraction.ZERO, unit);
  }

  /**
   * So much of a base unit, as {@link #inBase()} counts it, said in a unit.
   *
   * @param base 0 or more
   */
  public static Quantity ofBase(BigFraction base, Unit unit) {
    return new Quantity(base.divide(unit.size()), unit);
  }

  /** The same amount, times a whole number. */
  public Quantity times(int count) {
    return times(BigFraction.of(count));
  }

  /** The same amount, times a number of 0 or more. */
  public Quantity times(BigFraction factor) {
    return new Quantity(number.multiply(factor), unit);
  }

  /**
   * Both together, in this one's unit.
   *
   * @throws IllegalArgumentException where they measure different things; readers refuse that first
   */
  public Quantity plus(Quantity other) {
    return new Quantity(number.add(other.in(unit).number), unit);
  }

  /**
   * This less the other, in this one's unit.
   *
   * @throws IllegalArgumentException where less than nothing is left
   */
  public Quantity minus(Quantity other) {
    return new Quantity(number.subtract(other.in(unit).number), unit);
  }

  /** The same amount in another unit, exactly. */
  public Quantity in(Unit wanted) {
    if (unit.equals(wanted)) {
      return this;
    }
    if (!unit.goesWith(wanted)) {
      throw new IllegalArgumentException(unit.told() + " is not " + wanted.told());
    }
    return ofBase(inBase(), wanted);
  }

  /** How many times the other goes into this one. */
  public BigFraction over(Quantity other) {
    return inBase().divide(other.in(unit).inBase());
  }

  public boolean isZero() {
    return number.signum() == 0;
  }

  public boolean isMoreThan(Quantity other) {
    return inBase().compareTo(other.in(unit).inBase()) > 0;
  }
}
