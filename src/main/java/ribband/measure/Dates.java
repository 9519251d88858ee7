package ribband.measure;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.time.YearMonth;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Reads calendar days and clock times (ISO 8601), strictly. */
public final class Dates {
  private static final Pattern DAY = Pattern.compile("([0-9]{4})-([0-9]{2})-([0-9]{2})");
  private static final Pattern LOOSE =
      Pattern.compile("([0-9]{4})[-./_ ]?([0-9]{1,2})[-./_ ]?([0-9]{1,2})");
  private static final Pattern CLOCK = Pattern.compile("([0-9]{1,2}):([0-9]{2})");
  private static final Pattern HALF_DAY =
      Pattern.compile("(0?[1-9]|1[0-2])(?:[:.]([0-5][0-9]))? ?([ap])\\.?m\\.?");

  private static final int LATEST_YEAR = 2199;

  private Dates() {}

  /** Reads {@code 2026-03-14}; nothing else. */
  public static LocalDate readDay(String text) throws Unreadable {
    Matcher day = DAY.matcher(text.strip());
    if (day.matches()) {
      return day(day, text.strip());
    }
    throw new Unreadable(
        "is not a date", "write " + strictly(text.strip()).orElse("year-month-day, as 2026-03-14"));
  }

  /** What a loosely written day means, as {@code 2026-3-14} or {@code 20260314}. */
  public static Optional<String> strictly(String text) {
    Matcher loose = LOOSE.matcher(text);
    if (!loose.matches()) {
      return Optional.empty();
    }
    String strict =
        loose.group(1) + "-" + twoDigits(loose.group(2)) + "-" + twoDigits(loose.group(3));
    try {
      return Optional.of(readDay(strict).toString());
    } catch (Unreadable e) {
      return Optional.empty();
    }
  }

  private static LocalDate day(Matcher parts, String text) throws Unreadable {
    int year = Integer.parseInt(parts.group(1));
    int month = Integer.parseInt(parts.group(2));
    int day = Integer.parseInt(parts.group(3));
    if (month < 1 || month > 12) {
      throw new Unreadable("has no such month", "months go from 01 to 12");
    }
    if (year < 1900) {
      throw new Unreadable("is too long ago", "write the year in full, as 2026-03-14");
    }
    // Every month up to the last entry has its page: one wrong figure would draw thousands.
    if (year > LATEST_YEAR) {
      throw new Unreadable("is too far ahead", "check the year, as in 2026-03-14");
    }
    try {
      return LocalDate.of(year, month, day);
    } catch (DateTimeException e) {
      int last = YearMonth.of(year, month).lengthOfMonth();
      throw new Unreadable(
          "is not in the calendar", "that month ends with " + text.substring(0, 8) + last);
    }
  }

  private static String twoDigits(String figures) {
    return figures.length() == 1 ? "0" + figures : figures;
  }

  /** Reads {@code 20:25}. */
  public static LocalTime readClock(String text) throws Unreadable {
    String plain = text.strip().toLowerCase(Locale.ROOT);
    Matcher clock = CLOCK.matcher(plain);
    if (clock.matches()) {
      int hour = Integer.parseInt(clock.group(1));
      int minute = Integer.parseInt(clock.group(2));
      if (hour > 23 || minute > 59) {
        throw new Unreadable("is not on the clock", "clock times go from 00:00 to 23:59");
      }
      return LocalTime.of(hour, minute);
    }
    Matcher half = HALF_DAY.matcher(plain);
    if (half.matches()) {
      int hour = Integer.parseInt(half.group(1)) % 12 + (half.group(3).equals("p") ? 12 : 0);
      String minute = half.group(2) == null ? "00" : half.group(2);
      throw new Unreadable("is not on the 24-hour clock", "write " + hour + ":" + minute);
    }
    throw new Unreadable("is not a clock time", "write 20:25");
  }

  /** Reads {@code 20:25} as on that day, or {@code 2026-03-15 07:30} as it stands. */
  public static Reading<LocalDateTime> readMoment(LocalDate day) {
    return text -> {
      String[] parts = text.strip().split("[ T]+", -1);
      if (parts.length == 2 && parts[0].length() >= 8) {
        return dayBefore(parts[1], parts[0]).atTime(readClock(parts[1]));
      }
      try {
        return day.atTime(readClock(text));
      } catch (Unreadable e) {
        throw new Unreadable(e.wrong(), e.cure() + ", or 2026-03-15 07:30 on another day");
      }
    };
  }

  /** Advice on the day of a moment keeps the time that stands behind it. */
  private static LocalDate dayBefore(String time, String day) throws Unreadable {
    try {
      return readDay(day);
    } catch (Unreadable e) {
      throw e.cure().startsWith("write ") ? new Unreadable(e.wrong(), e.cure() + " " + time) : e;
    }
  }
}
