package ribband.ledger;

import java.util.Objects;
import java.util.OptionalInt;
import ribband.measure.Hours;
import ribband.measure.Money;

/**
 * One period's figures.
 *
 * @param period a {@code YearMonth}, a {@code Year}, a {@code Week} or an {@code Entry}
 * @param sums of the period alone
 * @param nights dates with hours
 * @param toDate of all up to and with the period, carried work included where it is counted
 * @param rank by hours among the rows shown, 1 the most, ties share (1, 2, 2, 4); empty for entries
 */
public record Row<P>(P period, Sums sums, int nights, Sums toDate, OptionalInt rank) {
  public Row {
    Objects.requireNonNull(period);
    Objects.requireNonNull(sums);
    Objects.requireNonNull(toDate);
    Objects.requireNonNull(rank);
  }

  public Hours hours() {
    return sums.totalHours();
  }

  public Money cost() {
    return sums.totalCost();
  }

  public Hours hoursToDate() {
    return toDate.totalHours();
  }

  public Money costToDate() {
    return toDate.totalCost();
  }
}
