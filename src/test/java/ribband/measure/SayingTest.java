package ribband.measure;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Values as a builder says them, the same under every locale. */
class SayingTest {
  @ParameterizedTest
  @CsvSource({
    "0, 0 hours",
    "1, 1 minute",
    "45, ¾ hour",
    "61, 1 hour 1 minute",
    "90, 1½ hours",
    "1600, 26 hours 40 minutes"
  })
  void hoursSpelledOut(long minutes, String said) {
    assertEquals(said, Saying.hoursSpelledOut(Hours.ofMinutes(minutes)));
  }

  @ParameterizedTest
  @CsvSource({
    "0, 0:00",
    "29, 0:00",
    "30, 0:01",
    "300, 0:05",
    "9900, 2:45",
    "10800, 3:00",
    "3600000, '1,000:00'"
  })
  void hoursInAColumnHaveTwoPlacesOfMinutes(long seconds, String said) {
    assertEquals(said, Saying.hoursInColumn(new Hours(seconds)));
  }

  @ParameterizedTest
  @CsvSource({
    "0, 0, 0 hours",
    "1, 0:01, 1 minute",
    "15, ¼, ¼ hour",
    "40, 0:40, 40 minutes",
    "60, 1, 1 hour",
    "90, 1½, 1½ hours",
    "1590, 26½, 26½ hours",
    "61, 1:01, 1:01 hours",
    "1600, 26:40, 26:40 hours",
    "75000, '1,250', '1,250 hours'"
  })
  void hours(long minutes, String said, String inWords) {
    assertEquals(said, Saying.hours(Hours.ofMinutes(minutes)));
    assertEquals(inWords, Saying.hoursInWords(Hours.ofMinutes(minutes)));
  }

  @ParameterizedTest
  @CsvSource({
    "0, hours",
    "29, hours",
    "30, hour",
    "900, hour",
    "3629, hour",
    "3630, hours",
    "5400, hours"
  })
  void oneHourAndPartsOfItAreHour(long seconds, String word) {
    assertEquals(word, Saying.hourOrHours(new Hours(seconds)));
  }

  @ParameterizedTest
  @CsvSource({
    "-1, −1",
    "0, no",
    "1, one",
    "12, twelve",
    "13, 13",
    "1000, '1,000'",
    "999, 999",
    "-1234, '−1,234'"
  })
  void smallNumbersAreWordsAndLargeOnesAreGrouped(long number, String said) {
    assertEquals(said, Saying.number(number));
  }

  @Test
  void clockTimesHaveTwoFiguresOnBothSides() {
    assertEquals("00:00", Saying.clock(LocalTime.of(0, 0)));
    assertEquals("09:09", Saying.clock(LocalTime.of(9, 9)));
    assertEquals("10:10", Saying.clock(LocalTime.of(10, 10)));
    assertEquals("23:59", Saying.clock(LocalTime.of(23, 59)));
  }

  @Test
  void aShareOfThePlanIsSaidWithoutZerosAtItsEnd() throws Unreadable {
    assertEquals("40%", Saying.percent(Percent.read("40%")));
    assertEquals("100%", Saying.percent(Percent.read("100%")));
  }

  @Test
  void secondsAreRoundedToTheMinuteHalfUp() {
    assertEquals("0:01", Saying.hours(new Hours(30)));
    assertEquals("0", Saying.hours(new Hours(29)));
    assertEquals("1", Saying.hours(new Hours(3599)));
  }

  @ParameterizedTest
  @CsvSource({
    "USD, 123450, '$1,234.50', '$1,235'", "USD, -2000, −$20.00, −$20",
        "JPY, 1200, '¥1,200', '¥1,200'",
    "USD, 0, $0.00, $0", "USD, -49, −$0.49, $0", "GBP, 5, £0.05, £0"
  })
  void money(String code, long minor, String said, String rounded) throws Unreadable {
    Currency currency = Currency.readCode(code);
    assertEquals(said, Saying.money(new Money(minor), currency));
    assertEquals(rounded, Saying.moneyRounded(new Money(minor), currency));
  }

  @Test
  void aShareIsWholeOnlyWhereAllOfItIsThere() {
    assertEquals("100%", Saying.share(3, 3));
    assertEquals(">99%", Saying.share(10_790, 10_800));
    assertEquals("<1%", Saying.share(1, 10_800));
    assertEquals("101%", Saying.share(101, 100));
    assertEquals("–", Saying.share(1, 0));
  }

  @Test
  void daysAndLists() {
    LocalDate day = LocalDate.of(2026, 3, 14);
    assertEquals("14 March 2026", Saying.day(day));
    assertEquals("Saturday 14 March 2026", Saying.dayInFull(day));
    assertEquals("14 Mar", Saying.shortDay(day));
    assertEquals("20:05", Saying.moment(LocalDateTime.of(2026, 3, 14, 20, 5), day));
    assertEquals(
        "00:10 on 15 March 2026", Saying.moment(LocalDateTime.of(2026, 3, 15, 0, 10), day));
    assertEquals("a, b and c", Saying.list(List.of("a", "b", "c")));
    assertEquals("a", Saying.list(List.of("a")));
    assertEquals("", Saying.list(List.of()));
  }

  @ParameterizedTest
  @CsvSource({
    "1, first",
    "2, second",
    "3, third",
    "4, 4th",
    "11, 11th",
    "12, 12th",
    "21, 21st",
    "22, 22nd",
    "103, 103rd",
    "113, 113th"
  })
  void ordinals(int number, String said) {
    assertEquals(said, Saying.ordinal(number));
  }

  @ParameterizedTest
  @CsvSource({
    "1, 3, 33%",
    "-1, 100, −1%",
    "2, 3, 67%",
    "1, 200, 1%",
    "1, 300, <1%",
    "0, 5, 0%",
    "0, 0, –",
    "5, 5, 100%"
  })
  void shares(long part, long whole, String said) {
    assertEquals(said, Saying.share(part, whole));
  }

  @ParameterizedTest
  @CsvSource({
    "1200, 20 min",
    "3540, 59 min",
    "3600, 1 h",
    "28800, 8 h",
    "5400, 1 h 30 min",
    "86400, 1 day",
    "604800, 7 days"
  })
  void spans(long seconds, String said) {
    assertEquals(said, Saying.span(new Span(seconds)));
  }

  @Test
  void noLocaleChangesAWord() throws Unreadable {
    Locale before = Locale.getDefault();
    try {
      for (String tag : List.of("tr", "ar-EG-u-nu-arab", "de", "th-TH-u-ca-buddhist")) {
        Locale.setDefault(Locale.forLanguageTag(tag));
        assertEquals("$1,234.50", Saying.money(new Money(123450), Currency.readCode("usd")), tag);
        assertEquals("26½", Saying.hours(Hours.read("26 1/2")), tag);
        assertEquals("14 March 2026", Saying.day(LocalDate.of(2026, 3, 14)), tag);
        assertEquals("title-id", Name.fold("TITLE ID"), tag);
        assertEquals("2026-W11", Week.of(LocalDate.of(2026, 3, 14)).toString(), tag);
      }
    } finally {
      Locale.setDefault(before);
    }
  }
}
