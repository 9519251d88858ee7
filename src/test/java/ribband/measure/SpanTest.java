package ribband.measure;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A deadline is told at the minute before, a wait at the minute after. */
class SpanTest {
  @ParameterizedTest
  @CsvSource({"1, 60, 60", "60, 60, 60", "61, 60, 120", "119, 60, 120", "120, 120, 120"})
  void wholeMinutes(long seconds, long before, long after) {
    Span span = new Span(seconds);
    assertEquals(new Span(before), span.minutesBefore());
    assertEquals(new Span(after), span.minutesAfter());
  }
}
