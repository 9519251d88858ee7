package ribband.card;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class WindowTest {
  private static final LocalDate TONIGHT = LocalDate.of(2026, 3, 14);

  @ParameterizedTest
  @CsvSource(
      nullValues = "-",
      value = {
        "2026-03-12T23:00:00, OLDER",
        "2026-03-13T03:59:59, OLDER",
        "2026-03-13T04:00:00, -",
        "2026-03-14T20:25:41, -",
        "2026-03-15T00:00:00, -",
        "2026-03-15T03:59:59, -",
        "2026-03-15T04:00:00, LATER",
        "2027-01-01T00:00:00, LATER"
      })
  void nightsEndAtFourInTheMorning(LocalDateTime moment, Reason reason) {
    Window window = Window.since(Optional.of(LocalDate.of(2026, 3, 12)), TONIGHT);
    assertEquals(Optional.ofNullable(reason), window.outside(moment));
  }

  @Test
  void firstEntryTakesAllThatCameBefore() {
    Window window = Window.since(Optional.empty(), TONIGHT);
    assertEquals(Optional.empty(), window.outside(LocalDateTime.of(1999, 1, 1, 0, 0)));
    assertEquals(LocalDateTime.of(2026, 3, 15, 4, 0), window.until());
  }

  @Test
  void monthAndYearTurnWithTheNight() {
    Window window =
        Window.since(Optional.of(LocalDate.of(2024, 2, 28)), LocalDate.of(2024, 12, 31));
    assertEquals(
        new Window(LocalDateTime.of(2024, 2, 29, 4, 0), LocalDateTime.of(2025, 1, 1, 4, 0)),
        window);
  }

  @Test
  void windowThatEndsBeforeItBeginsIsRefused() {
    LocalDateTime noon = LocalDateTime.of(2026, 3, 14, 12, 0);
    assertEquals(Optional.of(Reason.LATER), new Window(noon, noon).outside(noon));
    IllegalArgumentException thrown =
        assertThrows(
            IllegalArgumentException.class,
            () -> Window.since(Optional.of(TONIGHT.plusDays(1)), TONIGHT));
    assertEquals("from 2026-03-16T04:00 until 2026-03-15T04:00", thrown.getMessage());
  }
}
