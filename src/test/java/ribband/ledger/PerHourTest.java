package ribband.ledger;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import ribband.measure.Hours;
import ribband.measure.Money;

class PerHourTest {
  @Test
  void aHalfGoesAwayFromZero() {
    Hours twoHours = Hours.ofMinutes(120);
    assertEquals(Optional.of(new Money(1)), PerHour.of(new Money(1), twoHours));
    assertEquals(Optional.of(new Money(-1)), PerHour.of(new Money(-1), twoHours));
    assertEquals(Optional.of(new Money(2)), PerHour.of(new Money(3), twoHours));
  }

  @Test
  void belowAHalfGoesTowardsZero() {
    Hours threeHours = Hours.ofMinutes(180);
    assertEquals(Optional.of(new Money(0)), PerHour.of(new Money(1), threeHours));
    assertEquals(Optional.of(new Money(0)), PerHour.of(new Money(-1), threeHours));
    assertEquals(Optional.of(new Money(3333)), PerHour.of(new Money(10_000), threeHours));
  }

  @Test
  void largeSumsDoNotOverflow() {
    assertEquals(
        Optional.of(new Money(999_999_999_999_99L)),
        PerHour.of(new Money(999_999_999_999_99L), Hours.ofMinutes(60)));
  }

  @Test
  void withoutHoursThereIsNone() {
    assertEquals(Optional.empty(), PerHour.of(new Money(100), Hours.ZERO));
  }
}
