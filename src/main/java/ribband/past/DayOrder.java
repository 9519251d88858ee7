package ribband.past;

import ribband.measure.Unreadable;

/** Which of two figures comes first in {@code 3/4/2026}. */
public enum DayOrder {
  DAY_FIRST,
  MONTH_FIRST;

  public static DayOrder read(String text) throws Unreadable {
    return switch (text) {
      case "day-first" -> DAY_FIRST;
      case "month-first" -> MONTH_FIRST;
      default -> throw new Unreadable("is no order of dates", "write day-first or month-first");
    };
  }
}
