package ribband.measure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Hours as exact seconds. */
class HoursTest {
  @ParameterizedTest
  @CsvSource({
    "2, 7200", "2.75, 9900", "'2,75', 9900", "2:45, 9900", "2h45, 9900", "0h05, 300", "2h, 7200",
    "45m, 2700", "45 min, 2700", "1.5 h, 5400", "2 3/4, 9900", "3/4, 2700", "2¾, 9900", "¾, 2700",
    "1/3, 1200", "⅔, 2400", "0.01, 36", "0.0001, 0", "0.0002, 1", "0:00, 0", "9999:59, 35999940"
  })
  void everyFormIsReadToTheSecond(String written, long seconds) throws Unreadable {
    assertEquals(new Hours(seconds), Hours.read(written));
  }

  /** spec: a decimal is read to the nearest second. */
  @Test
  void fractionsOfASecondGoToTheNearestHalfUp() throws Unreadable {
    assertEquals(450, Hours.read("0.1251").seconds()); // 450.36 s
    assertEquals(1, Hours.read("1/7200").seconds()); // 0.5 s
    assertEquals(0, Hours.read("1/7201").seconds());
  }

  /** Worked by hand: 1:45 + 2:30 + 0:50 = 5:05 = 305 min, not 4:25. */
  @Test
  void minutesCarryIntoHours() throws Unreadable {
    Hours sum = Hours.sum(List.of(Hours.read("1:45"), Hours.read("2:30"), Hours.read("0:50")));
    assertEquals(Hours.ofMinutes(305), sum);
    assertEquals("5:05", Saying.hours(sum));
    assertEquals("25:25", Saying.hours(Hours.ofMinutes(1525)));
  }

  /**
   * Rounding each session to quarter hours first (as 29 CFR 785.48(b) allows for wages: 1 to 7
   * minutes down, 8 to 14 up) would make four sessions of 0:07 none; the exact sum is 0:28.
   */
  @Test
  void sumsAreNeverRoundedFirst() throws Unreadable {
    Hours seven = Hours.read("0:07");
    assertEquals(Hours.ofMinutes(28), Hours.sum(List.of(seven, seven, seven, seven)));
  }

  @Test
  void everyMinuteOfADayEqualsItsFractionOfAnHour() throws Unreadable {
    for (int hour = 0; hour < 24; hour++) {
      for (int minute = 0; minute < 60; minute++) {
        Hours clocked = Hours.read(hour + ":" + (minute < 10 ? "0" : "") + minute);
        assertEquals(clocked, Hours.read(hour + " " + minute + "/60"), hour + ":" + minute);
        assertEquals(clocked, Hours.read(hour + "h " + minute + (minute < 10 ? "m" : "")));
      }
    }
  }

  @Test
  void sumsOfManyTenthsAreExact() throws Unreadable {
    List<Hours> tenths = new ArrayList<>();
    for (int i = 0; i < 10_000; i++) {
      tenths.add(Hours.read("0.1"));
    }
    // As doubles these come to 1000.0000000001588.
    assertEquals("1000", Hours.sum(tenths).decimal());
  }

  @Test
  void decimalsReadBackAsTheSameSeconds() throws Unreadable {
    SplittableRandom random = new SplittableRandom(1);
    for (int i = 0; i < 5_000; i++) {
      Hours hours = new Hours(random.nextLong(36_000_000));
      assertEquals(hours, Hours.read(hours.decimal()), hours.toString());
    }
  }

  @ParameterizedTest
  @CsvSource({
    "0, 0",
    "1, 0.0003",
    "36, 0.01",
    "3600, 1",
    "9900, 2.75",
    "7500, 2.0833",
    "36000, 10"
  })
  void dataFilesHaveAtMostFourPlacesAndNoZerosAtTheEnd(long seconds, String decimal) {
    assertEquals(decimal, new Hours(seconds).decimal());
    assertEquals(
        new BigDecimal(seconds)
            .divide(new BigDecimal(3600), 4, java.math.RoundingMode.HALF_UP)
            .compareTo(new BigDecimal(decimal)),
        0);
  }

  @Test
  void negativeHoursAreAProgrammersMistake() {
    assertThrows(IllegalArgumentException.class, () -> new Hours(-1));
  }
}
