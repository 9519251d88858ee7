package ribband.journal;

import java.util.Locale;
import java.util.regex.Pattern;
import ribband.measure.Reading;
import ribband.measure.Unreadable;

/** Readings of plain words and whole numbers that several keys share. */
final class Readings {
  private static final Pattern ID =
      Pattern.compile("[\\p{L}\\p{N}](?:[\\p{L}\\p{M}\\p{N}' _.-]{0,58}[\\p{L}\\p{M}\\p{N}])?");

  private static final int LONGEST_ID = 60;
  private static final int LONGEST_MARK = 32;

  private Readings() {}

  /** A name that can stand in an address. */
  static String id(String text) throws Unreadable {
    if (text.length() > LONGEST_ID) {
      throw new Unreadable("is too long for a name", "write at most " + LONGEST_ID + " letters");
    }
    if (!ID.matcher(text).matches()) {
      throw new Unreadable(
          "is no name to count under", "write letters, figures and hyphens, as side-decks");
    }
    return text;
  }

  /** The name of a thing in the shop, such as {@code 1/4 in ply}. */
  static String name(String text) throws Unreadable {
    if (text.isEmpty() || text.length() > 60 || text.indexOf('\n') >= 0) {
      throw new Unreadable("is no name", "write at most 60 letters in one line");
    }
    return text;
  }

  /** A note for the charts: so short that it finds its place there; line ends count as spaces. */
  static String mark(String text) throws Unreadable {
    String line = text.replaceAll("\\s+", " ").strip();
    if (line.isEmpty() || line.codePointCount(0, line.length()) > LONGEST_MARK) {
      throw new Unreadable(
          "is too long for a chart", "write at most " + LONGEST_MARK + " letters, as Turned over");
    }
    return line;
  }

  /** A whole number within bounds. */
  static Reading<Integer> whole(int least, int most) {
    return text -> {
      if (!text.matches("-?(0|[1-9][0-9]{0,6})")) {
        throw new Unreadable(
            "is not a whole number", "write figures alone, as " + Math.max(2, least));
      }
      int number = Integer.parseInt(text);
      if (number < least || number > most) {
        throw new Unreadable("is out of bounds", "write a number from " + least + " to " + most);
      }
      return number;
    };
  }

  /** {@code true} or {@code false}, also {@code yes} or {@code no}. */
  static boolean trueOrFalse(String text) throws Unreadable {
    return switch (text.toLowerCase(Locale.ROOT)) {
      case "true", "yes" -> true;
      case "false", "no" -> false;
      default -> throw new Unreadable("is neither true nor false", "write true or false");
    };
  }
}
