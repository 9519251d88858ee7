package ribband.fuzz;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.code_intelligence.jazzer.junit.FuzzTest;
import java.nio.charset.StandardCharsets;
import ribband.measure.Hours;
import ribband.measure.Saying;
import ribband.measure.Unreadable;

/** A length of time is read and prints back, or is refused with advice that can be followed. */
class HoursFuzzTest {
  @FuzzTest(maxDuration = "4s")
  void hours(byte[] bytes) throws Unreadable {
    String text = new String(bytes, StandardCharsets.UTF_8);
    Hours hours;
    try {
      hours = Hours.read(text);
    } catch (Unreadable refusal) {
      Refusal.isOfUse(text, refusal, Hours::read);
      return;
    }
    assertTrue(hours.seconds() <= 100_000L * 3600, text);
    assertEquals(hours, Hours.read(hours.decimal()), text);
    long minutes = (hours.seconds() + 30) / 60;
    if (minutes < 1000 * 60) {
      assertEquals(Hours.ofMinutes(minutes), Hours.read(Saying.hours(hours)), text);
    }
  }
}
