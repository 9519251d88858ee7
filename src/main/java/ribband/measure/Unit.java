package ribband.measure;

import java.math.BigDecimal;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * A unit of measure with its exact size. Sources: the inch is 2.54 cm, the US gallon 231 cubic
 * inches, the pound 0.45359237 kg (NIST Handbook 44, Appendix C); the board foot 144 cubic inches.
 *
 * @param name as it is shown; the word itself for a count, empty for a bare count
 * @param size in millilitres, grams, millimetres, square millimetres, board feet or pieces
 */
public record Unit(String name, Dimension dimension, BigFraction size) {
  /** A count with no word: {@code 40}. */
  public static final Unit PIECES = new Unit("", Dimension.COUNT, BigFraction.ONE);

  private static final Map<String, Unit> BY_NAME = table();

  public Unit {
    Objects.requireNonNull(name);
    Objects.requireNonNull(dimension);
    Objects.requireNonNull(size);
  }

  private static Map<String, Unit> table() {
    Map<String, Unit> units = new LinkedHashMap<>();
    add(units, Dimension.VOLUME, "1", "ml", "millilitre", "millilitres", "milliliters");
    add(units, Dimension.VOLUME, "1000", "l", "litre", "litres", "liter", "liters");
    add(units, Dimension.VOLUME, "29.5735295625", "fl oz", "floz", "fluid ounce", "fluid ounces");
    add(units, Dimension.VOLUME, "473.176473", "pt", "pint", "pints");
    add(units, Dimension.VOLUME, "946.352946", "qt", "quart", "quarts");
    add(units, Dimension.VOLUME, "3785.411784", "gal", "gallon", "gallons");
    add(units, Dimension.VOLUME, "16.387064", "in3", "cubic in", "cubic inches", "cu in", "in³");
    add(units, Dimension.VOLUME, "4.92892159375", "tsp", "teaspoon", "teaspoons");
    add(units, Dimension.VOLUME, "14.78676478125", "tbsp", "tablespoon", "tablespoons");
    add(units, Dimension.MASS, "1", "g", "gram", "grams");
    add(units, Dimension.MASS, "1000", "kg", "kilogram", "kilograms");
    add(units, Dimension.MASS, "28.349523125", "oz", "ounce", "ounces");
    add(units, Dimension.MASS, "453.59237", "lb", "lbs", "pound", "pounds");
    add(units, Dimension.LENGTH, "1", "mm");
    add(units, Dimension.LENGTH, "10", "cm");
    add(units, Dimension.LENGTH, "1000", "m", "metre", "metres", "meter", "meters");
    add(units, Dimension.LENGTH, "25.4", "in", "inch", "inches", "\"", "″");
    add(units, Dimension.LENGTH, "304.8", "ft", "foot", "feet", "'", "′");
    add(units, Dimension.LENGTH, "914.4", "yd", "yard", "yards");
    add(units, Dimension.AREA, "1", "mm2", "mm²", "sq mm");
    add(units, Dimension.AREA, "100", "cm2", "cm²", "sq cm");
    add(units, Dimension.AREA, "1000000", "m2", "m²", "sq m");
    add(units, Dimension.AREA, "645.16", "in2", "in²", "sq in");
    add(units, Dimension.AREA, "92903.04", "ft2", "ft²", "sq ft");
    add(units, Dimension.AREA, "836127.36", "yd2", "yd²", "sq yd");
    add(units, Dimension.BOARDS, "1", "bf", "board foot", "board feet", "board ft");
    return units;
  }

  private static void add(
      Map<String, Unit> units, Dimension dimension, String size, String name, String... others) {
    Unit unit = new Unit(name, dimension, Numbers.decimal(new BigDecimal(size)));
    units.put(name, unit);
    for (String other : others) {
      units.put(other, unit);
    }
  }

  /** A unit of the table. */
  public static Unit of(String name) {
    return measured(name).orElseThrow(() -> new IllegalArgumentException(name));
  }

  /** The measured unit of that name, in any case of letters, a full stop at its end passed over. */
  static Optional<Unit> measured(String name) {
    String plain = name.strip().toLowerCase(Locale.ROOT).replaceAll("\\.( |$)", "$1");
    return Optional.ofNullable(BY_NAME.get(plain.replaceAll("\\s+", " ")));
  }

  /** Reads a unit alone, as in {@code unit: fl oz}; any other word is something counted. */
  public static Unit read(String text) throws Unreadable {
    Optional<Unit> measured = measured(text);
    return measured.isPresent() ? measured.get() : counted(text);
  }

  /** The unit of a count, by the word for what is counted. */
  static Unit counted(String word) throws Unreadable {
    String plain = word.strip();
    if (!plain.matches("\\p{L}[\\p{L}\\p{M} '/-]{0,39}")) {
      throw new Unreadable(
          "is no unit", "write one as fl oz, ml, g, lb, in, ft2, or a word for what is counted");
    }
    return new Unit(plain, Dimension.COUNT, BigFraction.ONE);
  }

  /** Whether amounts in both can be added: one dimension, and for counts the same word or none. */
  public boolean goesWith(Unit other) {
    if (dimension != other.dimension) {
      return false;
    }
    return dimension != Dimension.COUNT
        || name.isEmpty()
        || other.name.isEmpty()
        || singular().equals(other.singular());
  }

  private String singular() {
    String lower = name.toLowerCase(Locale.ROOT);
    if (lower.endsWith("ss")) {
      return lower;
    }
    for (String ending : List.of("es", "s")) {
      if (lower.length() > ending.length() + 1 && lower.endsWith(ending)) {
        return lower.substring(0, lower.length() - ending.length());
      }
    }
    return lower.endsWith("e") ? lower.substring(0, lower.length() - 1) : lower;
  }

  /** How a mix-up is told: {@code fl oz (a volume)}, {@code screws (a count)}. */
  public String told() {
    return name.isEmpty() ? dimension.words() : name + " (" + dimension.words() + ")";
  }
}
