package ribband.fuzz;

import static org.junit.jupiter.api.Assertions.assertEquals;

import com.code_intelligence.jazzer.junit.FuzzTest;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import ribband.measure.Dates;
import ribband.measure.Reading;
import ribband.measure.Saying;
import ribband.measure.Unreadable;

/** A day, a clock time or a moment is read as it stands there, or is refused. */
class DatesFuzzTest {
  private static final LocalDate TONIGHT = LocalDate.of(2026, 3, 14);

  @FuzzTest(maxDuration = "4s")
  void dates(byte[] bytes) throws Unreadable {
    String text = new String(bytes, StandardCharsets.UTF_8);
    day(text);
    clock(text);
    moment(text);
  }

  private static void day(String text) {
    try {
      assertEquals(text.strip(), Dates.readDay(text).toString());
    } catch (Unreadable refusal) {
      Refusal.isOfUse(text, refusal, Dates::readDay);
    }
  }

  private static void clock(String text) throws Unreadable {
    LocalTime time;
    try {
      time = Dates.readClock(text);
    } catch (Unreadable refusal) {
      Refusal.isOfUse(text, refusal, Dates::readClock);
      return;
    }
    assertEquals(time, Dates.readClock(Saying.clock(time)), text);
  }

  private static void moment(String text) throws Unreadable {
    Reading<LocalDateTime> reading = Dates.readMoment(TONIGHT);
    LocalDateTime moment;
    try {
      moment = reading.read(text);
    } catch (Unreadable refusal) {
      Refusal.isOfUse(text, refusal, reading);
      return;
    }
    assertEquals(moment, reading.read(moment.toLocalDate() + " " + moment.toLocalTime()), text);
  }
}
