package ribband.ahead;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import org.apache.commons.numbers.fraction.BigFraction;
import ribband.measure.Quantity;
import ribband.measure.Saying;
import ribband.measure.Unit;
import ribband.pieces.Numbered;
import ribband.pieces.PieceCount;
import ribband.pieces.Rate;
import ribband.pieces.Side;

/** Says how far counted work is, in the terminal and on the site. */
public final class PieceWords {
  private PieceWords() {}

  /** {@code 14 of 16 made, 2 left: port number 8, starboard number 8}; {@code all 16 made}. */
  public static String count(PieceCount count) {
    if (count.left() == 0) {
      return switch (count.kind().total()) {
        case 1 -> "made";
        case 2 -> "both made";
        default -> "all " + Saying.count(count.kind().total()) + " made";
      };
    }
    String made =
        Saying.count(count.done())
            + " of "
            + Saying.count(count.kind().total())
            + " made, "
            + Saying.count(count.left())
            + " left";
    List<String> where = new ArrayList<>();
    count
        .numbered()
        .filter(numbered -> !numbered.done().isEmpty())
        .ifPresent(numbered -> where.add(numbers(numbered)));
    count.sides().forEach(side -> where.add(side(side)));
    if (!count.sides().isEmpty()) {
      untold(count.untold()).ifPresent(where::add);
    }
    return where.isEmpty() ? made : made + ": " + String.join("; ", where);
  }

  private static String side(Side side) {
    if (side.left() == 0) {
      return side.name() + " done";
    }
    return side.name()
        + " "
        + side.numbered()
            .filter(numbered -> !numbered.done().isEmpty())
            .map(PieceWords::numbers)
            .orElse(Saying.count(side.left()));
  }

  /** What the sides together have left over the whole, or the whole over them. */
  private static Optional<String> untold(int made) {
    if (made == 0) {
      return Optional.empty();
    }
    return Optional.of(
        made > 0
            ? "less " + Saying.count(made) + " made with no side told"
            : "and " + Saying.count(-made) + " taken back with no side told");
  }

  private static String numbers(Numbered numbered) {
    return "number " + Saying.list(runs(numbered.left()));
  }

  /** {@code 3}, {@code 5 to 8}. */
  private static List<String> runs(List<Integer> numbers) {
    List<String> runs = new ArrayList<>();
    int start = 0;
    for (int i = 1; i <= numbers.size(); i++) {
      if (i == numbers.size() || numbers.get(i) != numbers.get(i - 1) + 1) {
        int first = numbers.get(start);
        int last = numbers.get(i - 1);
        if (last == first + 1) {
          runs.add("" + first);
          runs.add("" + last);
        } else {
          runs.add(first == last ? "" + first : first + " to " + last);
        }
        start = i;
      }
    }
    return runs;
  }

  /**
   * {@code 2 a session, 4 sessions left; at the pace so far 6 nights left, the last on 6 March 2026
   * if every night from 1 March 2026 is worked}; empty where nothing is left or none is made.
   *
   * @param first of the nights to come
   */
  public static String pace(PieceCount count, LocalDate first) {
    if (count.left() == 0 || count.sessions().median().isEmpty()) {
      return "";
    }
    String sessions =
        number(count.sessions().median().get())
            + " a session, "
            + left(count.sessionsLeft(), "session", "sessions");
    String nights =
        count.nightsLeft().isEmpty()
            ? ""
            : "; at the pace so far " + left(count.nightsLeft(), "night", "nights");
    return sessions
        + nights
        + count
            .lastNight(first)
            .map(
                last ->
                    ", the last on "
                        + Saying.day(last)
                        + " if every night from "
                        + Saying.day(first)
                        + " is worked")
            .orElse("");
  }

  private static String left(OptionalLong number, String one, String several) {
    return number.isEmpty() ? "" : Saying.counted(number.getAsLong(), one, several) + " left";
  }

  /** {@code 5:10 hours each, 5 planned, starboard 4:20 by its own rate}. */
  public static String rate(PieceCount count) {
    List<String> parts = new ArrayList<>();
    Optional<Rate> own = count.rate().filter(rate -> rate.basis() == Rate.Basis.KIND);
    own.ifPresent(rate -> parts.add(Saying.hoursInWords(rate.each()) + " each"));
    count
        .kind()
        .hours()
        .filter(hours -> !hours.isZero())
        .map(Saying::hoursInWords)
        .ifPresent(hours -> parts.add(hours + (own.isPresent() ? " planned" : " each planned")));
    List<String> sides = new ArrayList<>();
    for (Side side : count.sides()) {
      count
          .rate(side)
          .filter(rate -> rate.basis() == Rate.Basis.SIDE)
          .ifPresent(rate -> sides.add(side.name() + " " + Saying.hoursInWords(rate.each())));
    }
    if (!sides.isEmpty()) {
      parts.add(
          String.join(", ", sides)
              + (sides.size() == 1 ? " by its own rate" : " by their own rates"));
    }
    return String.join(", ", parts);
  }

  /** {@code 1½}, {@code 2.33}. */
  public static String number(BigFraction number) {
    return Saying.quantity(new Quantity(number, Unit.PIECES)).strip();
  }
}
