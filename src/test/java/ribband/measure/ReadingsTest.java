package ribband.measure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.Map;
import org.apache.commons.numbers.fraction.BigFraction;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Every kind of value at the edges of what it takes, and word for word what it refuses. */
class ReadingsTest {
  private static final LocalDate TONIGHT = LocalDate.of(2026, 3, 14);
  private static final Currency DOLLAR = Currency.all().get("USD");
  private static final Currency YEN = Currency.all().get("JPY");

  private static final Map<String, Reading<?>> KINDS =
      Map.ofEntries(
          Map.entry("hours", text -> Hours.read(text).seconds()),
          Map.entry("dollars", text -> DOLLAR.read(text).decimal(DOLLAR)),
          Map.entry("yen", text -> YEN.read(text).decimal(YEN)),
          Map.entry("code", text -> Currency.readCode(text).code()),
          Map.entry("day", Dates::readDay),
          Map.entry("clock", Dates::readClock),
          Map.entry("moment", Dates.readMoment(TONIGHT)),
          Map.entry("span", text -> Span.read(text).seconds()),
          Map.entry("range", text -> told(SpanRange.read(text))),
          Map.entry("temperature", text -> Saying.temperature(Temperature.read(text))),
          Map.entry("share", text -> Percent.read(text).value()),
          Map.entry("proportion", text -> told(Proportion.read(text))),
          Map.entry("mix", text -> Mix.read(text).by() + " " + told(Mix.read(text).parts())),
          Map.entry("spread", text -> told(Spread.read(text))),
          Map.entry("amount", text -> Saying.quantity(Quantity.read(text))),
          Map.entry("packs", text -> Saying.quantity(Packs.read(text).total())));

  private static String told(SpanRange range) {
    return range.from().seconds() + " to " + range.to().seconds();
  }

  private static String told(Proportion parts) {
    return parts.first() + " to " + parts.second();
  }

  private static String told(Spread spread) {
    return Saying.quantity(spread.area()) + " per " + Saying.quantity(spread.amount());
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          hours | 9999:59 | 35999940
          hours | 10000 | 36000000
          hours | 10000.0001 | is more than 10,000 hours; write 2:45, 2.75 or 2 3/4
          hours | 9999:60 | is more than 10,000 hours; write 2:45, 2.75 or 2 3/4
          hours | 9998:60 | has 60 minutes in its hour; minutes go up to 59, write 9999:00
          hours | 1:59 | 7140
          hours | 1:75 | has 75 minutes in its hour; minutes go up to 59, write 2:15
          hours | -1 | is below zero; hours only add up, write 2:45, 2.75 or 2 3/4
          hours | −1 | is below zero; hours only add up, write 2:45, 2.75 or 2 3/4
          hours | 2.00000 | has more than 4 decimal places; write it to the minute, as 2:45
          hours | 2:5 | has one digit of minutes; write 2:05 or, for tens of minutes, 2:50
          hours | 2h0 | has one digit of minutes; write 2:00
          hours | 2:6 | has one digit of minutes; write 2:06
          hours | 2:45:10 | has seconds; write 2:45
          hours | 2:60:10 | is not a length of time; write 2:45, 2.75 or 2 3/4
          hours | 08 | has a zero in front; write 8, or 0:08 for minutes
          hours | 045 | has a zero in front; write 45, or 0:45 for minutes
          hours | 060 | has a zero in front; write 60
          hours | .5 | has no figure before the point; write 0.5
          hours | + 3 | has a sign in front; write 3
          hours | +3x | is not a length of time; write 2:45, 2.75 or 2 3/4
          hours | 2,3/4 | is not a length of time; write 2:45, 2.75 or 2 3/4
          hours | 2 4/4 | is not a length of time; write 2:45, 2.75 or 2 3/4
          hours | 5/4 | 4500
          hours | 1/0 | is not a length of time; write 2:45, 2.75 or 2 3/4
          dollars | 10000000000.00 | 10000000000.00
          dollars | 10000000000.01 | is more than any boat costs; write figures alone, as 88.20
          dollars | -10000000000.01 | is more than any boat costs; write figures alone, as 88.20
          dollars | 99999999999.999 | is more than any boat costs; write figures alone, as 88.20
          dollars | $749424445444 | is more than any boat costs; write figures alone, as 88.20
          dollars | $10000000000 | has more than figures; write 10000000000
          dollars | 10,000,000,000.001 | has a thousands mark; write 10000000000.00
          dollars | −3 | -3.00
          dollars | 1.005 | has more decimal places than USD has (2); write 1.01
          dollars | 1,234 | has a thousands mark; write 1234
          dollars | 1.234,567 | has thousands marks and a decimal comma; write 1234.57
          dollars | 88,2 | has a decimal comma; write 88.2
          dollars | 007 | has a zero in front; write 7
          dollars | +5 | has a sign in front; write 5
          dollars | -.5 | has no figure before the point; write -0.5
          dollars | $ 88.20 | has more than figures; write 88.20
          dollars | 1234567890123456789012345678901234567 usd | is not an amount of money; \
          write figures alone, as 88.20
          dollars | eighty | is not an amount of money; write figures alone, as 88.20
          yen | 1,234.50 | has a thousands mark; write 1235
          yen | eighty | is not an amount of money; write figures alone, as 88
          code | usd | USD
          code | dollars | is no currency code of ISO 4217; write one as USD, EUR or GBP
          day | 1900-01-01 | 1900-01-01
          day | 1899-12-31 | is too long ago; write the year in full, as 2026-03-14
          day | 2026-00-10 | has no such month; months go from 01 to 12
          day | 2026-12-31 | 2026-12-31
          clock | 23:59 | 23:59
          clock | 24:00 | is not on the clock; clock times go from 00:00 to 23:59
          clock | 23:60 | is not on the clock; clock times go from 00:00 to 23:59
          clock | 8 PM | is not on the 24-hour clock; write 20:00
          clock | 12:30 a.m. | is not on the 24-hour clock; write 0:30
          clock | 12.05 pm | is not on the 24-hour clock; write 12:05
          clock | late | is not a clock time; write 20:25
          moment | 20:25 | 2026-03-14T20:25
          moment | 2026-03-15 07:30 | 2026-03-15T07:30
          moment | 2026-03-15T07:30 | 2026-03-15T07:30
          moment | 2026-3-15 07:30 | is not a date; write 2026-03-15 07:30
          moment | 2026-02-30 07:30 | is not in the calendar; that month ends with 2026-02-28
          moment | late night | is not a clock time; write 20:25, or 2026-03-15 07:30 on another day
          span | 20 min | 1200
          span | 1 h 30 min | 5400
          span | 1h30m | 5400
          span | 1/2 day | 43200
          span | 2 weeks | 1209600
          span | 3653 days | 315619200
          span | 3654 days | is more than ten years; write 20 min, 8 h or 7 days
          span | 1 min | 60
          span | 0 min | is no time at all; write 20 min, 8 h or 7 days
          span | 1/61 min | is no time at all; write 20 min, 8 h or 7 days
          span | 20 | has no unit of time; write 20 min, h or days
          span | soon | is not a length of time; write 20 min, 8 h or 7 days
          span | 2 h, or so | is not a length of time; write 20 min, 8 h or 7 days
          span | soon 2 h | is not a length of time; write 20 min, 8 h or 7 days
          span | 02 h | is not a length of time; write 20 min, 8 h or 7 days
          range | 3 h to 24 h | 10800 to 86400
          range | 3 h to 3 h | 10800 to 10800
          range | 3 h to 2 h | ends before it begins; write the shorter time first, as 3 h to 24 h
          range | 3 h | is not a range of times; write 3 h to 24 h
          range | 3 h to soon | is not a range of times; write 3 h to 24 h
          temperature | 61 F | 61 °F
          temperature | −5.5 °C | −5.5 °C
          temperature | 100 C | 100 °C
          temperature | 101 C | is no temperature of a shop; write it as 61 F or 16 C
          temperature | -50 C | −50 °C
          temperature | -51 C | is no temperature of a shop; write it as 61 F or 16 C
          temperature | 214 F | is no temperature of a shop; write it as 61 F or 16 C
          temperature | warm | is not a temperature; write 61 F or 16 C
          share | 40% | 40
          share | 0 % | 0
          share | 100.00% | 100.00
          share | 100.01% | is more than the whole; write 100% at most
          share | 40 | is not a share; write 40%
          share | 400 | is not a share; write 40%
          proportion | 1.15 to 0.97 | 23 / 20 to 97 / 100
          proportion | 2:1 | 2 to 1
          proportion | 0 to 1 | has a zero in it; write them as 1.15 to 0.97
          proportion | 1 to 0.0 | has a zero in it; write them as 1.15 to 0.97
          proportion | 1 | is not two numbers; write them as 1.15 to 0.97
          mix | 2 to 1 by Volume | VOLUME 2 to 1
          mix | 100 to 42 by weight | WEIGHT 100 to 42
          mix | 2 to 1 | does not say how it is mixed; write 2 to 1 by volume or 100 to 42 by weight
          mix | two to one by weight | is not two numbers; write them as 2 to 1 by volume
          spread | 140 in2 per fl oz | 140 in² per 1 fl oz
          spread | 200 cm2 per 30 g | 200 cm² per 30 g
          spread | 200 cm2 | is not a spread; write 140 in2 per fl oz or 200 cm2 per 30 ml
          spread | a per b | is not a spread; write 140 in2 per fl oz or 200 cm2 per 30 ml
          spread | 2 ft per fl oz | is not an area for an amount; \
          write 140 in2 per fl oz or 200 cm2 per 30 ml
          spread | 2 ft2 per ft | is not an area for an amount; \
          write 140 in2 per fl oz or 200 cm2 per 30 ml
          spread | 0 ft2 per fl oz | is not an area for an amount; \
          write 140 in2 per fl oz or 200 cm2 per 30 ml
          spread | 2 ft2 per 0 fl oz | is not an area for an amount; \
          write 140 in2 per fl oz or 200 cm2 per 30 ml
          amount | 2 in x 8 ft | 192 in²
          amount | 2 g x 8 ft | is not an amount; \
          write a number and a unit, as 2 fl oz, 1 1/2 qt or 40 screws
          amount | 2 x 8 ft | has a unit on one side alone; write 2 ft x 8 ft
          packs | 2 of 1 qt | 2 qt
          packs | 3 qt | 3 qt
          """)
  void isReadOrRefused(String kind, String written, String told) {
    String found;
    try {
      found = KINDS.get(kind).read(written).toString();
    } catch (Unreadable refusal) {
      found = refusal.wrong() + "; " + refusal.cure();
      assertEquals(found, refusal.getMessage());
    }
    assertEquals(told, found, kind + " " + written);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          planking | planking
          Planking | planking
          aZ{ | az{
          lead time | lead-time
          Lead_Time | lead-time
          lead - time | lead-time
          '  az ' | az
          '' | ''
          """)
  void namesAreComparedWithoutCaseAndGaps(String name, String folded) {
    assertEquals(folded, Name.fold(name));
  }

  /** 32 F is 0 C and 212 F is 100 C: the scales' definitions. */
  @Test
  void temperaturesTurnFromOneScaleToTheOther() throws Unreadable {
    Temperature cold = Temperature.read("32 F");
    assertEquals("0 °C", Saying.temperature(cold.in(Temperature.Scale.C)));
    assertEquals("212 °F", Saying.temperature(Temperature.read("100 C").in(Temperature.Scale.F)));
    assertEquals(cold, cold.in(Temperature.Scale.F));
    assertEquals("17 °C", Saying.temperature(Temperature.read("16.5 C").whole()));
  }

  @Test
  void sumsAndSigns() {
    Money two = new Money(2);
    assertEquals(new Money(5), two.plus(new Money(3)));
    assertEquals(new Money(-1), two.minus(new Money(3)));
    assertTrue(Money.ZERO.isZero());
    assertFalse(two.isZero());
    assertTrue(new Money(-1).isNegative());
    assertFalse(Money.ZERO.isNegative());
    assertTrue(two.compareTo(new Money(3)) < 0);
    assertTrue(Hours.ZERO.isZero());
    assertFalse(Hours.ofMinutes(1).isZero());
    assertTrue(Hours.ZERO.compareTo(Hours.ofMinutes(1)) < 0);
    assertEquals("0", new Hours(0).decimal());
    assertEquals("0.0003", new Hours(1).decimal());
    assertTrue(new Span(1).compareTo(new Span(2)) < 0);
    assertTrue(new Percent(new BigDecimal("100.0")).isWhole());
    assertFalse(new Percent(BigDecimal.ONE).isWhole());
    assertEquals(BigFraction.of(1200), Numbers.decimal(new BigDecimal("1.2E+3")));
    assertEquals(BigFraction.of(3), Numbers.decimal(BigDecimal.valueOf(3)));
  }

  @Test
  void weeksAreInTheOrderOfTheirDays() {
    assertTrue(new Week(2026, 53).compareTo(new Week(2027, 1)) < 0);
    assertTrue(new Week(2026, 2).compareTo(new Week(2026, 10)) < 0);
    assertEquals("2026-W09", new Week(2026, 9).toString());
    assertEquals("2026-W10", new Week(2026, 10).toString());
  }

  @Test
  void valuesThatCannotBeAreNeverMade() {
    assertThrows(IllegalArgumentException.class, () -> new Hours(-1));
    assertThrows(IllegalArgumentException.class, () -> new Span(0));
    assertThrows(IllegalArgumentException.class, () -> new Packs(0, null));
    assertThrows(IllegalArgumentException.class, () -> new Currency("XXX", -1, ""));
    assertThrows(IllegalArgumentException.class, () -> new Currency("XXX", 5, ""));
    assertEquals(4, new Currency("XXX", 4, "").digits());
    assertThrows(IllegalArgumentException.class, () -> new SpanRange(new Span(2), new Span(1)));
    assertThrows(
        IllegalArgumentException.class, () -> new Proportion(BigFraction.ZERO, BigFraction.ONE));
    assertThrows(
        IllegalArgumentException.class, () -> new Proportion(BigFraction.ONE, BigFraction.ZERO));
    assertThrows(
        IllegalArgumentException.class, () -> new Quantity(BigFraction.of(-1), Unit.PIECES));
  }
}
