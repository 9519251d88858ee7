package ribband.shop;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import ribband.measure.Span;
import ribband.measure.Temperature;
import ribband.measure.Unreadable;
import ribband.measure.Warmth;

/**
 * The rule that a rate doubles every 10 C (18 F): as builders quote it, "18 degrees cooler will
 * double, 18 warmer will halve"; its limits are discussed in "Old Rule of Thumb and the Arrhenius
 * Equation", J. Chem. Educ. The hours are 6 h at 77 F times 2^((77 - T)/18), reckoned by hand.
 */
class CureTest {
  private static final Cure RATED_AT_77 = new Cure(temperature("77 F"), Optional.empty());

  private static Optional<Temperature> temperature(String text) {
    try {
      return Optional.of(Temperature.read(text));
    } catch (Unreadable e) {
      throw new IllegalArgumentException(text, e);
    }
  }

  private static Figure<Span> lasts(Cure cure, String rated, String warmth) throws Unreadable {
    return cure.lasts(Span.read(rated), Optional.of(Warmth.read(warmth)));
  }

  @ParameterizedTest
  @CsvSource({"86 F, 15274", "77 F, 21600", "68 F, 30547", "59 F, 43200", "50 F, 61094"})
  void sixHoursAt77(String warmth, long seconds) throws Unreadable {
    assertEquals(Figure.of(new Span(seconds)), lasts(RATED_AT_77, "6 h", warmth));
    assertEquals(
        Figure.of(new Span(seconds)), lasts(RATED_AT_77, "6 h", warmth + " for 9 days then 70 F"));
  }

  /** 10 C is 18 F: the same in Celsius, exactly. */
  @Test
  void tenDegreesCelsiusAreOneDoubling() throws Unreadable {
    Cure cure = new Cure(temperature("25 C"), Optional.empty());
    assertEquals(Figure.of(new Span(7200)), lasts(cure, "1 h", "15 C"));
    assertEquals(Figure.of(new Span(1800)), lasts(cure, "1 h", "35 C"));
  }

  /** 4 h at 77 F and 8 h at 59 F are 8 hours of cure at 77 F. */
  @ParameterizedTest
  @CsvSource({
    "8 h, 77 F for 4 h then 59 F, 43200",
    "3 h, 77 F for 4 h then 59 F, 10800",
    "4 h, 77 F for 4 h then 59 F, 14400",
    "8 h, 77 F for 4 h then 59 F for 2 h then 77 F, 32400"
  })
  void sharesOfTheCureAddUp(String rated, String warmth, long seconds) throws Unreadable {
    assertEquals(Figure.of(new Span(seconds)), lasts(RATED_AT_77, rated, warmth));
  }

  @Test
  void belowTheColdestNoTimeIsPromised() throws Unreadable {
    Cure cure = new Cure(temperature("77 F"), temperature("50 F"));
    assertEquals(Optional.of(new Span(61094)), lasts(cure, "6 h", "50 F").value());
    assertEquals(
        Figure.unknown(
            "49 °F is below the coldest for it, 50 °F; no time is promised, see the maker's data"
                + " sheet"),
        lasts(cure, "6 h", "49 F"));
    assertEquals(
        Figure.unknown(
            "9 °C is below the coldest for it, 10 °C; no time is promised, see the maker's data"
                + " sheet"),
        lasts(cure, "6 h", "9 C"));
  }

  /** What is done before the cold comes is done. */
  @Test
  void coldAfterTheCureDoesNotMatter() throws Unreadable {
    Cure cure = new Cure(temperature("77 F"), temperature("50 F"));
    assertEquals(Figure.of(new Span(7200)), lasts(cure, "2 h", "77 F for 3 h then 40 F"));
    assertEquals(Optional.empty(), lasts(cure, "4 h", "77 F for 3 h then 40 F").value());
  }

  /** How far is far: common practice, no source. */
  @ParameterizedTest
  @CsvSource({"41 F, true", "40 F, false", "35 F, false", "95 F, true", "96 F, false"})
  void farFromTheRatedTemperatureNoTimeIsPromised(String warmth, boolean told) throws Unreadable {
    Figure<Span> figure = lasts(RATED_AT_77, "6 h", warmth);
    assertEquals(told, figure.value().isPresent());
    assertEquals(
        told
            ? ""
            : Temperature.read(warmth).degrees()
                + " °F is too far from 77 °F, which its times are rated at; no time is promised,"
                + " see the maker's data sheet",
        figure.why());
  }

  @Test
  void whatIsNotKnownChangesNothing() throws Unreadable {
    assertEquals(Figure.of(new Span(21600)), RATED_AT_77.lasts(Span.read("6 h"), Optional.empty()));
    Cure unrated = new Cure(Optional.empty(), temperature("50 F"));
    assertEquals(Figure.of(new Span(21600)), lasts(unrated, "6 h", "61 F"));
    assertEquals(Optional.empty(), lasts(unrated, "6 h", "45 F").value());
  }
}
