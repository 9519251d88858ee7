package ribband.past;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import ribband.measure.Unreadable;
import ribband.past.HoursCell.Unit;

/** What one cell may hold, and what is told where it cannot be read. */
class CellsTest {
  private static String tell(Unreadable e) {
    return e.wrong() + "; " + e.cure();
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "2 | 2",
        "2.75 | 2.75",
        "2,75 | 2.75",
        "2:45 | 2.75",
        "2:45:00 | 2.75",
        "0:20:01 | 0.3336",
        "2:45:00,000 | 2.75",
        "2 3/4 | 2.75",
        "2¾ | 2.75",
        "45 min | 0.75",
        "2h45 | 2.75",
        "2.75 h | 2.75",
        "5.3333 | 5.3333",
        "2;45 | is not a length of time; write 2:45, 2.75 or 2 3/4",
        "-1 | is below zero; hours only add up, write 2:45, 2.75 or 2 3/4",
        "2:45 PM | is a time of day; show the column as hours and minutes, as 2:45",
        "12:45:00 a.m. | is a time of day; show the column as hours and minutes, as 2:45",
        "0.114583333 | has more than 4 decimal places; show the column as hours and minutes, as"
            + " 2:45, or with 4 places",
        "2:60 | has 60 minutes in its hour; minutes go up to 59, write 3:00",
      })
  void hours(String text, String expected) {
    assertEquals(expected, hours(text, Unit.HOURS));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "165 | 2.75",
        "20 | 0.3333",
        "7.5 | 0.125",
        "7,5 | 0.125",
        "0.0001 | 0",
        "0.0125 | 0.0003",
        "2:45 | 2.75",
        "1 h | 1",
      })
  void minutes(String text, String expected) {
    assertEquals(expected, hours(text, Unit.MINUTES));
  }

  private static String hours(String text, Unit unit) {
    try {
      return HoursCell.read(text, unit).decimal();
    } catch (Unreadable e) {
      return tell(e);
    }
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '"',
      value = {
        "12.50 | 12.50",
        "12 | 12.00",
        "1,234.50 | 1234.50",
        "1.234,50 | 1234.50",
        "1 234,50 | 1234.50",
        "1\u00a0234,5 | 1234.50",
        "1\u202f234 | 1234.00",
        "1'234.50 | 1234.50",
        "1’234 | 1234.00",
        "1,234,567 | 1234567.00",
        "1.234.567 | 1234567.00",
        "1.234.567,8 | 1234567.80",
        "1,234,567.80 | 1234567.80",
        "12,5 | 12.50",
        "0,50 | 0.50",
        "$12 | 12.00",
        "-$12 | -12.00",
        "$-12.00 | -12.00",
        "$ 1,234.50 | 1234.50",
        "12.00 USD | 12.00",
        "usd12 | 12.00",
        "12.00- | -12.00",
        "(12.00) | -12.00",
        "($1,234.50) | -1234.50",
        "−3 | -3.00",
        "–3 | -3.00",
        "0 | 0.00",
        "12.345 | may be 12345 or 12.345; write it without a thousands mark, as 12345.00",
        "12,345 | may be 12345 or 12.345; write it without a thousands mark, as 12345.00",
        "0.123 | has more decimal places than USD has (2); write 0.12",
        "12.3456 | has more decimal places than USD has (2); write 12.35",
        "1234,567 | has more decimal places than USD has (2); write 1234.57",
        "€12 | is in €, and the journal in USD; reckon it in USD",
        "12 EUR | is in EUR, and the journal in USD; reckon it in USD",
        "-(12) | is below zero twice; write one minus, as -12.00",
        "1,23,456 | is not an amount of money; write figures alone, as 88.20",
        "0,123,456 | is not an amount of money; write figures alone, as 88.20",
        "free | is not an amount of money; write figures alone, as 88.20",
        "n/a | is not an amount of money; write figures alone, as 88.20",
        "12 abc | has more than figures; write 12",
        "12. | is not an amount of money; write figures alone, as 88.20",
        "1 23 | is not an amount of money; write figures alone, as 88.20",
        ".5 | has no figure before the point; write 0.5",
        "$ | is not an amount of money; write figures alone, as 88.20",
        "() | is not an amount of money; write figures alone, as 88.20",
        "( | is not an amount of money; write figures alone, as 88.20",
        "-- | is below zero twice; write one minus, as -12.00",
        "$- | is not an amount of money; write figures alone, as 88.20",
      })
  void dollars(String text, String expected) {
    assertEquals(expected, cost("USD", text));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "JPY | 1,234 | 1234",
        "JPY | 1.234 | 1234",
        "JPY | ¥1,234 | 1234",
        "JPY | 12.5 | has more decimal places than JPY has (0); write 13",
        "KWD | 1.234 | 1.234",
        "KWD | 0,500 | 0.500",
        "KWD | 12345,678 | 12345.678",
        "KWD | 1,234 | may be 1234 or 1.234; write it without a thousands mark, as 1234.000",
        "EUR | €12,50 | 12.50",
        "EUR | 12,50 € | 12.50",
        "EUR | $12 | is in $, and the journal in EUR; reckon it in EUR",
        "CAD | $12 | 12.00",
        "CAD | CAD 12 | 12.00",
        "CAD | 12 USD | is in USD, and the journal in CAD; reckon it in CAD",
        "GBP | £3.50 | 3.50",
        "CNY | ¥3 | 3.00",
        "INR | ₹3 | 3.00",
      })
  void otherCurrencies(String currency, String text, String expected) {
    assertEquals(expected, cost(currency, text));
  }

  private static String cost(String currency, String cell) {
    String csv = "date\tcost\tnote\n2026-03-14\t" + cell + "\tx\n";
    String told = Sheets.in(currency).outcome(csv);
    return told.contains("error: B2 (cost) ")
        ? told.substring(told.indexOf("\" ", told.indexOf('"') + 1) + 2)
        : told.split(" \\| ", -1)[4];
  }

  /** One cell that shows its decimal mark tells it for the whole sheet. */
  @Test
  void theDecimalMarkIsOneForTheSheet() {
    Sheets sheets = Sheets.in("USD");
    assertEquals(
        "2026-03-14 | - | - | 0 | 1234.00 | \n2026-03-15 | - | - | 0 | 12.50 | ",
        sheets.outcome("date,cost\n2026-03-14,\"1,234\"\n2026-03-15,12.50\n"));
    assertEquals(
        "2026-03-14 | - | - | 0 | 1234.00 | \n2026-03-15 | - | - | 0 | 12.50 | ",
        sheets.outcome("date;cost\n2026-03-14;1.234\n2026-03-15;12,50\n"));
    assertEquals(
        "2026-03-14 | - | - | 2.75 | 1234.00 | ",
        sheets.outcome("date;hours;cost\n2026-03-14;2,75;1.234\n"));
    assertEquals(
        "2026-03-14 | - | - | 2.75 | 1234.00 | ",
        sheets.outcome("date;hours;cost\n2026-03-14;2.75;1,234\n"));
    assertEquals(
        "past.csv:2:2: error: B2 (cost) \"1,234\" has more decimal places than USD has (2); write"
            + " 1.23",
        sheets.outcome("date;cost\n2026-03-14;1,234\n2026-03-15;12,50\n"));
    assertEquals(
        "past.csv:2:2: error: B2 (cost) \"1,234\" may be 1234 or 1.234; write it without a thousands"
            + " mark, as 1234.00",
        sheets.outcome("date;cost\n2026-03-14;1,234\n2026-03-15;12,50\n2026-03-16;12.50\n"));
  }

  @Test
  void aJournalWithoutACurrencyTakesNoMoney() {
    Sheets sheets = Sheets.of("name: Teal\n");
    assertEquals(
        "2026-03-14 | - | - | 2 | 0 | ", sheets.outcome("date,hours,cost\n2026-03-14,2,0.00\n"));
    assertEquals(
        "past.csv:2:3: error: C2 (cost) \"12\" is an amount, and the journal names no currency; write"
            + " currency: USD, or another code of ISO 4217, into project.yaml",
        sheets.outcome("date,hours,cost\n2026-03-14,2,12\n"));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "2026-03-14 | 2026-03-14",
        "2026/3/4 | 2026-03-04",
        "2026.03.14 | 2026-03-14",
        "2026. 3. 14 | is not a date; write year-month-day, as 2026-03-14",
        "20260314 | 2026-03-14",
        "2026-03-14 00:00:00 | 2026-03-14",
        "2026-03-14T20:15:00.000Z | 2026-03-14",
        "3/14/2026 8:15 PM | 2026-03-14",
        "14.03.2026 | 2026-03-14",
        "4.3.2026 | 2026-03-04",
        "4. 3. 2026 | 2026-03-04",
        "14/03/2026 | 2026-03-14",
        "3/14/2026 | 2026-03-14",
        "14-3-2026 | 2026-03-14",
        "03/03/2026 | 2026-03-03",
        "14 Mar 2026 | 2026-03-14",
        "14-Mar-2026 | 2026-03-14",
        "14. March 2026 | 2026-03-14",
        "14th march, 2026 | 2026-03-14",
        "Mar 14, 2026 | 2026-03-14",
        "March 1st 2026 | 2026-03-01",
        "Sept. 3, 2026 | 2026-09-03",
        "Sat 14 Mar 2026 | 2026-03-14",
        "Saturday, March 14, 2026 | 2026-03-14",
        "Sun. 2026-03-15 | 2026-03-15",
        "2026-02-30 | is not in the calendar; that month ends with 2026-02-28",
        "30.2.2026 | is not in the calendar; that month ends with 2026-02-28",
        "2026-13-01 | has no such month; months go from 01 to 12",
        "14 Foo 2026 | names no month; write year-month-day, as 2026-03-14",
        "13/14/2026 | is not in the calendar; write year-month-day, as 2026-03-14",
        "3/14/26 | 2026-03-14",
        "3-14-26 | 2026-03-14",
        "03/14/26 8:15 PM | 2026-03-14",
        "3/3/26 | 2026-03-03",
        "4.3.26 | 2026-03-04",
        "14.3.00 | 2000-03-14",
        "14/03/00 | 2000-03-14",
        "14/03/32 | 2032-03-14",
        "14-Mar-26 | 2026-03-14",
        "Sat 14 Mar '26 | 2026-03-14",
        "March 14, 26 | 2026-03-14",
        "2/29/26 | is not in the calendar; that month ends with 2026-02-28",
        "32/03/14 | begins with a year of two figures; show the column as year-month-day, as"
            + " 2026-03-14",
        "32.03.14 | begins with a year of two figures; show the column as year-month-day, as"
            + " 2026-03-14",
        "13/14/26 | is not in the calendar; write year-month-day, as 2026-03-14",
        "3/14/026 | is not a date; write year-month-day, as 2026-03-14",
        "46095 | is a spreadsheet's day number; show the column as year-month-day, as 2026-03-14",
        "46095.5 | is a spreadsheet's day number; show the column as year-month-day, as 2026-03-14",
        "1826-03-14 | is too long ago; write the year in full, as 2026-03-14",
        "2926-03-14 | is too far ahead; check the year, as in 2026-03-14",
        "soon | is not a date; write year-month-day, as 2026-03-14",
      })
  void dates(String text, String expected) {
    String csv = "date\tnote\n" + text + "\tx\n";
    String told = Sheets.in("USD").outcome(csv);
    String found =
        told.contains("error: A2 (date) ")
            ? told.substring(told.indexOf("\" ", told.indexOf('"') + 1) + 2)
            : told.split(" \\| ", -1)[0];
    assertEquals(expected, found);
  }

  @Test
  void anyDateWithAFigureOverTwelveTellsTheOrderOfAll() {
    Sheets sheets = Sheets.in("USD");
    assertEquals(
        "2026-03-04 | - | - | 1 | 0.00 | \n2026-03-14 | - | - | 1 | 0.00 | ",
        sheets.outcome("date,hours\n4/3/2026,1\n14/3/2026,1\n"));
    assertEquals(
        "2026-03-14 | - | - | 1 | 0.00 | \n2026-04-03 | - | - | 1 | 0.00 | ",
        sheets.outcome("date,hours\n4/3/2026,1\n3/14/2026,1\n"));
    String open = "date,hours\n3/3/2026,1\n4/3/2026,1\n5/3/2026,1\n";
    assertEquals(
        "past.csv:3:1: error: A3 (date) \"4/3/2026\" may have the day or the month first, and 1 more"
            + " date too; say which with --dates day-first or --dates month-first",
        sheets.outcome(open));
    assertEquals(
        "2026-03-03 | - | - | 1 | 0.00 | \n2026-03-04 | - | - | 1 | 0.00 | \n"
            + "2026-03-05 | - | - | 1 | 0.00 | ",
        sheets.outcome(open, order(DayOrder.DAY_FIRST)));
    assertEquals(
        "2026-03-03 | - | - | 1 | 0.00 | \n2026-04-03 | - | - | 1 | 0.00 | \n"
            + "2026-05-03 | - | - | 1 | 0.00 | ",
        sheets.outcome(open, order(DayOrder.MONTH_FIRST)));
    assertEquals(
        "past.csv:2:1: error: A2 (date) \"14/3/2026\" has no such month; months go from 01 to 12",
        sheets.outcome("date,hours\n14/3/2026,1\n", order(DayOrder.MONTH_FIRST)));
    assertEquals(
        "past.csv:3:1: error: A3 (date) \"3/14/2026\" has the month first, but A2 (date) \"14/3/2026\" has"
            + " the day first; show the column as year-month-day, as 2026-03-14",
        sheets.outcome("date,hours\n14/3/2026,1\n3/14/2026,1\n"));
    assertEquals(
        "past.csv:3:1: error: A3 (date) \"14/3/2026\" has the day first, but A2 (date) \"3/14/2026\" has the"
            + " month first; show the column as year-month-day, as 2026-03-14",
        sheets.outcome("date,hours\n3/14/2026,1\n14/3/2026,1\n"));
  }

  private static final String YEAR_IS_OPEN =
      " may have the year first or last; say --dates day-first if it is last, or show the column as"
          + " year-month-day, as 2026-03-14";

  /** Nothing in 26/03/14 tells whether 26 is the day or the year. */
  @Test
  void aYearOfTwoFiguresIsReadWhereItCanOnlyBeTheLastFigure() {
    Sheets sheets = Sheets.in("USD");
    for (String open :
        List.of("26/03/14", "14/03/26", "14.03.26", "03/03/26", "31/03/26", "12/12/31")) {
      assertEquals(
          "past.csv:2:1: error: A2 (date) \"" + open + "\"" + YEAR_IS_OPEN,
          sheets.outcome("date,hours\n" + open + ",1\n"));
    }
    assertEquals(
        "past.csv:2:1: error: A2 (date) \"14/03/26\""
            + YEAR_IS_OPEN.replace("last;", "last, and 1 more date too;"),
        sheets.outcome("date,hours\n14/03/26,1\n15/03/26,1\n"));
    assertEquals(
        "past.csv:2:1: error: A2 (date) \"04/03/26\" may have the day or the month first; say which"
            + " with --dates day-first or --dates month-first",
        sheets.outcome("date,hours\n04/03/26,1\n"));
    String first = "2026-03-04 | - | - | 1 | 0.00 | \n2026-03-14 | - | - | 1 | 0.00 | ";
    assertEquals(first, sheets.outcome("date,hours\n4/3/26,1\n14/03/26,1\n"));
    assertEquals(first, sheets.outcome("date,hours\n04/03/2026,1\n14/03/26,1\n"));
    assertEquals(first, sheets.outcome("date,hours\n03/04/26,1\n03/14/26,1\n"));
    assertEquals(
        first, sheets.outcome("date,hours\n04/03/26,1\n14/03/26,1\n", order(DayOrder.DAY_FIRST)));
    assertEquals(
        "2014-03-26 | - | - | 1 | 0.00 | ",
        sheets.outcome("date,hours\n26/03/14,1\n", order(DayOrder.DAY_FIRST)));
    assertEquals(
        "past.csv:2:1: error: A2 (date) \"26/03/14\" has no such month; months go from 01 to 12",
        sheets.outcome("date,hours\n26/03/14,1\n", order(DayOrder.MONTH_FIRST)));
    assertEquals(
        "past.csv:3:1: error: A3 (date) \"26/03/14\" has the day first, but A2 (date) \"3/14/26\" has"
            + " the month first; show the column as year-month-day, as 2026-03-14",
        sheets.outcome("date,hours\n3/14/26,1\n26/03/14,1\n"));
    assertEquals(
        "past.csv:3:1: error: A3 (date) \"99/03/14\" begins with a year of two figures; show the"
            + " column as year-month-day, as 2026-03-14",
        sheets.outcome("date,hours\n3/14/26,1\n99/03/14,1\n"));
  }

  @Test
  void thatAYearOfTwoFiguresIsReadAsOfThisCenturyIsToldOnce() {
    Sheets sheets = Sheets.in("USD");
    String took = "took column A \"date\" for the date and B \"hours\" for the hours";
    String told = "years of two figures are read as 20..";
    assertEquals(List.of(took, told), sheets.read("date,hours\n3/14/26,1\n3/15/26,1\n").remarks());
    assertEquals(List.of(took, told), sheets.read("date,hours\n14-Mar-26,1\n").remarks());
    assertEquals(List.of(took), sheets.read("date,hours\n3/14/2026,1\n").remarks());
  }

  private static Asked order(DayOrder order) {
    return new Asked(Map.of(), Map.of(), Optional.of(order));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "planking | planking",
        "PLANKING | planking",
        "Lofting and moulds | lofting",
        "lofting_and moulds | lofting",
        "side decks | side-decks",
        "'' | -",
        "unsorted | -",
        "planing | is not among the phases of project.yaml; did you mean \"planking\"? Then say"
            + " --phase \"planing=planking\"",
        "hull | is not among the phases of project.yaml; there are lofting, planking, side-decks; or"
            + " say --phase \"hull=lofting\"",
        "'planking,' | is not among the phases of project.yaml; did you mean \"planking\"? Then say"
            + " --phase \"planking,=planking\"",
        "planking / lofting | names several phases; write a row for each, with its own hours",
        "planking and lofting | names several phases; write a row for each, with its own hours",
        "planking and hull | is not among the phases of project.yaml; there are lofting, planking,"
            + " side-decks; or say --phase \"planking and hull=lofting\"",
      })
  void phases(String text, String expected) {
    assertEquals(expected, phase(Sheets.in("USD"), text));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "Side Decks | side-decks",
        "Planche à voile | planche-à-voile",
        "/hull/ | is no name to count under; write letters, figures and hyphens, as side-decks",
        "unsorted | -",
      })
  void phasesAreFreeWhereTheProjectListsNone(String text, String expected) {
    assertEquals(expected, phase(Sheets.of("name: Teal\n"), text));
  }

  /** The journal's own rule for a name to count under. */
  @Test
  void aFreePhaseHasAtMostSixtyLetters() {
    Sheets free = Sheets.of("name: Teal\n");
    assertEquals("a".repeat(60), phase(free, "a".repeat(60)));
    assertEquals("is too long for a name; write at most 60 letters", phase(free, "a".repeat(61)));
  }

  private static String phase(Sheets sheets, String text) {
    String told = sheets.outcome("date\thours\tphase\n2026-03-14\t1\t" + text + "\n");
    return told.contains("error: C2 (phase) ")
        ? told.substring(told.indexOf("\" ", told.indexOf('"') + 1) + 2)
        : told.split(" \\| ", -1)[2];
  }

  @Test
  void aWordOfTheSheetMayMeanAPhase() {
    Asked asked =
        new Asked(
            Map.of(),
            Map.of("hull-work", "Planking", "", "lofting", "odd", "decks"),
            Optional.empty());
    assertEquals(
        "2026-03-14 | - | planking | 1 | 0.00 | \n2026-03-15 | - | lofting | 1 | 0.00 | ",
        Sheets.in("USD")
            .outcome("date,hours,phase\n2026-03-14,1,Hull Work\n2026-03-15,1,\n", asked));
    assertEquals(
        "past.csv:2:3: error: C2 (phase) \"odd\" is not among the phases of project.yaml; there are"
            + " lofting, planking, side-decks; or say --phase \"decks=lofting\"",
        Sheets.in("USD").outcome("date,hours,phase\n2026-03-14,1,odd\n", asked));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "2026-03-14-garboard | 2026-03-14-garboard",
        "2026-03-14 | 2026-03-14",
        "14.03.2026 | 2026-03-14",
        "3/14/2026 | 2026-03-14",
        "2026-03-14-Été~1_a.b | 2026-03-14-Été~1_a.b",
        "2026-03-14-../x | !",
        "2026-03-14- | !",
        "2026-03-14--x | !",
        "2026-03-14-x. | !",
        "2026-03-14 garboard | !",
        "2026-03-14garboard | !",
        "garboard | !",
        "17 | !",
      })
  void entryNames(String text, String expected) {
    String told = Sheets.in("USD").outcome("entry\thours\n" + text + "\t1\n");
    String refused =
        "past.csv:2:1: error: A2 (entry) \""
            + text
            + "\" is no entry's name; write its date and words without spaces, as"
            + " 2026-03-14-garboard";
    assertEquals(
        expected.equals("!") ? refused : "2026-03-14 | " + expected + " | - | 1 | 0.00 | ", told);
  }

  @Test
  void anEntrysNameHasALimit() {
    String name = "2026-03-14-" + "x".repeat(189);
    assertEquals(
        "2026-03-14 | " + name + " | - | 1 | 0.00 | ",
        Sheets.in("USD").outcome("entry,hours\n" + name + ",1\n"));
    assertEquals(1, Sheets.in("USD").read("entry,hours\n" + name + "x,1\n").problems().size());
  }

  @Test
  void whatAndInWhichOrderMayBeSaidInWords() throws Unreadable {
    for (What what : What.values()) {
      assertEquals(what, What.read(" " + what.word().toUpperCase(Locale.ROOT)));
    }
    assertEquals(
        "names nothing that is brought; did you mean \"hours\"?",
        tell(assertThrows(Unreadable.class, () -> What.read("hurs"))));
    assertEquals(DayOrder.DAY_FIRST, DayOrder.read("day-first"));
    assertEquals(DayOrder.MONTH_FIRST, DayOrder.read("month-first"));
    assertEquals(
        "is no order of dates; write day-first or month-first",
        tell(assertThrows(Unreadable.class, () -> DayOrder.read("european"))));
  }
}
