package ribband.site;

import java.time.LocalDate;
import java.time.YearMonth;
import java.util.Optional;

/**
 * Tells where a list by date turns to another month, for a rule there; keeps the month it is in.
 */
final class MonthTurn {
  private Optional<Optional<YearMonth>> at = Optional.empty();

  /**
   * Goes on by a line.
   *
   * @param date of the line; empty for what belongs to no month
   * @return whether the line before it was of another month
   */
  boolean at(Optional<LocalDate> date) {
    Optional<YearMonth> month = date.map(YearMonth::from);
    boolean turns = at.isPresent() && !at.get().equals(month);
    at = Optional.of(month);
    return turns;
  }
}
