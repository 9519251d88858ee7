package ribband.cli;

import java.time.LocalDate;
import java.time.YearMonth;
import ribband.measure.Dates;
import ribband.measure.Unreadable;

/** The days that a typed day, month or year stands for, both ends inclusive. */
record DayRange(LocalDate first, LocalDate last) {
  /** Reads {@code 2026-03-14}, {@code 2026-03} or {@code 2026}. */
  static DayRange read(String text) throws Unreadable {
    String plain = text.strip();
    if (plain.matches("[0-9]{4}")) {
      return new DayRange(Dates.readDay(plain + "-01-01"), Dates.readDay(plain + "-12-31"));
    }
    if (plain.matches("[0-9]{4}-[0-9]{2}")) {
      LocalDate first = Dates.readDay(plain + "-01");
      return new DayRange(first, YearMonth.from(first).atEndOfMonth());
    }
    try {
      LocalDate day = Dates.readDay(plain);
      return new DayRange(day, day);
    } catch (Unreadable e) {
      if (e.wrong().equals("is not a date")) {
        throw new Unreadable("is no day, month or year", "write it as 2026-03-14, 2026-03 or 2026");
      }
      throw e;
    }
  }

  static DayRange read(String option, String text) {
    try {
      return read(text);
    } catch (Unreadable e) {
      throw Refusal.wrongValue(option, text, e);
    }
  }
}
