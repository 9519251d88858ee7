package ribband.shop;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.apache.commons.numbers.fraction.BigFraction;
import ribband.measure.Dimension;
import ribband.measure.Quantity;
import ribband.measure.Unit;
import ribband.measure.Unreadable;

/**
 * A board: {@code 6 in x 12 ft}, {@code 1 in x 6 in x 12 ft}, {@code 5/4 x 7 1/2 in x 11 ft}.
 *
 * @param thickness empty where it is not said
 */
public record Board(Optional<Quantity> thickness, Quantity width, Quantity length) {
  private static final Pattern BY = Pattern.compile("\\s*[x×]\\s*");

  /** Rough hardwood is named in quarters of an inch: 4/4 is 1 in, 8/4 is 2 in. */
  private static final Pattern QUARTERS = Pattern.compile("([1-9][0-9]?)/4");

  private static final Quantity LEAST = new Quantity(BigFraction.of(1, 10), Unit.of("mm"));
  private static final Quantity LONGEST = new Quantity(BigFraction.of(100), Unit.of("m"));

  /** What stands for a thickness that is not said. */
  private static final Quantity INCH = new Quantity(BigFraction.ONE, Unit.of("in"));

  private static final String WRITE =
      "write its width and length, as 6 in x 12 ft, with its thickness in front where it matters,"
          + " as 1 in x 6 in x 12 ft or 5/4 x 6 in x 12 ft";

  public static Board read(String text) throws Unreadable {
    String[] sides = BY.split(text.strip(), -1);
    if (sides.length < 2 || sides.length > 3) {
      throw new Unreadable("is not a board", WRITE);
    }
    Optional<Quantity> thickness =
        sides.length == 3 ? Optional.of(thickness(sides[0])) : Optional.empty();
    return new Board(thickness, side(sides[sides.length - 2]), side(sides[sides.length - 1]));
  }

  private static Quantity thickness(String text) throws Unreadable {
    Matcher quarters = QUARTERS.matcher(text);
    return quarters.matches()
        ? new Quantity(BigFraction.of(Integer.parseInt(quarters.group(1)), 4), Unit.of("in"))
        : side(text);
  }

  private static Quantity side(String text) throws Unreadable {
    Quantity side;
    try {
      side = Quantity.read(text);
    } catch (Unreadable e) {
      throw new Unreadable("is not a board", WRITE);
    }
    if (side.unit().dimension() != Dimension.LENGTH) {
      throw new Unreadable(
          "has a side that is " + side.unit().dimension().words() + ", and a length belongs there",
          WRITE);
    }
    if (LEAST.isMoreThan(side)) {
      throw new Unreadable("has a side of nothing", WRITE);
    }
    if (side.isMoreThan(LONGEST)) {
      throw new Unreadable("is longer than any board", WRITE);
    }
    return side;
  }

  /** Its thickness, 1 in where none is said. */
  public Quantity thick() {
    return thickness.orElse(INCH);
  }

  /**
   * Board feet: thickness times width times length, 144 cubic inches each; nominal sizes.
   *
   * @return exact; of a board 1 in thick where its thickness is not said
   */
  public Quantity boardFeet() {
    return boardFeet(thick());
  }

  /**
   * What is billed of stock thinner than an inch: as if it were one. Common practice, no source.
   */
  public Optional<Quantity> billedAsInch() {
    return INCH.isMoreThan(thick()) ? Optional.of(boardFeet(INCH)) : Optional.empty();
  }

  private Quantity boardFeet(Quantity thick) {
    BigFraction cubicInches = inches(thick).multiply(inches(width)).multiply(inches(length));
    return new Quantity(cubicInches.divide(144), Unit.of("bf"));
  }

  private static BigFraction inches(Quantity length) {
    return length.in(Unit.of("in")).number();
  }
}
