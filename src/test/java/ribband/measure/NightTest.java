package ribband.measure;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.time.LocalDate;
import java.time.LocalDateTime;
import org.junit.jupiter.api.Test;

class NightTest {
  @Test
  void aNightBelongsToTheDayOnWhichItBeganUntilFourInTheMorning() {
    LocalDate day = LocalDate.of(2026, 2, 28);
    assertEquals(LocalDateTime.of(2026, 3, 1, 4, 0), Night.endOf(day));
    assertEquals(day, Night.at(Night.endOf(day).minusNanos(1)));
    assertEquals(day.plusDays(1), Night.at(Night.endOf(day)));
    assertEquals(day, Night.at(day.atTime(22, 30)));
  }
}
