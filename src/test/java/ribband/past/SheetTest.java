package ribband.past;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import ribband.problem.Problems;

/** How a file becomes rows, which columns are taken for what, and what is said of rows. */
class SheetTest {
  private static final String ONE = "2026-03-14 | - | planking | 2.75 | 23.70 | fitted";
  private static final Sheets SHEETS = Sheets.in("USD");

  @ParameterizedTest
  @ValueSource(
      strings = {
        "date,hours,phase,cost,note\n2026-03-14,2:45,planking,23.70,fitted\n",
        "date,hours,phase,cost,note\r\n2026-03-14,2:45,planking,23.70,fitted\r\n",
        "date,hours,phase,cost,note\r2026-03-14,2:45,planking,23.70,fitted",
        "\uFEFFdate;hours;phase;cost;note\n2026-03-14;2,75;planking;23,70;fitted\n",
        "date\thours\tphase\tcost\tnote\n2026-03-14\t2:45\tplanking\t23.70\tfitted\n",
        "sep=;\ndate;hours;phase;cost;note\n2026-03-14;2:45;planking;23.70;fitted\n",
        "SEP=,\r\ndate,hours,phase,cost,note\r\n2026-03-14,2:45,planking,23.70,fitted\r\n",
        "\"date\",\"hours\",\"phase\",\"cost\",\"note\"\n"
            + "\"2026-03-14\",\"2:45\",\"planking\",\"23.70\",\"fitted\"\n",
        "My boat\n\n,,,,\nNote,Cost,Phase,Hours,Date\n,,,,\nfitted,23.70,planking,2:45,2026-03-14\n",
        "Work done;When;Spent on it ($);Time worked (min);Stage\n"
            + "fitted;2026-03-14;23.70;165;Planking\n",
      })
  void theSameSheetInManyForms(String csv) {
    assertEquals(ONE, SHEETS.outcome(csv));
  }

  @ParameterizedTest
  @ValueSource(strings = {"UTF-16LE", "UTF-16BE"})
  void utf16WithAMarkIsRead(String charset) {
    String csv = "\uFEFFdate,hours,note\n2026-03-14,1,fünf\n";
    assertEquals(
        "2026-03-14 | - | - | 1 | 0.00 | fünf",
        SHEETS.told(SHEETS.read(csv.getBytes(Charset.forName(charset)), Asked.NOTHING)));
  }

  @Test
  void otherEncodingsAreToldWithTheirCell() {
    String csv = "date,hours,note\n2026-03-14,1,five\n2026-03-15,1,fünf\n2026-03-16,1,fünf\n";
    assertEquals(
        "past.csv:3:3: error: C3 holds byte FC, which is not UTF-8; save it as CSV UTF-8",
        problems(csv.getBytes(StandardCharsets.ISO_8859_1)));
    assertEquals(
        "past.csv:2:1: error: A2 holds byte FC, which is not UTF-8; save it as CSV UTF-8",
        problems("date,hours,note\nü".getBytes(StandardCharsets.ISO_8859_1)));
    assertEquals(
        "past.csv:1:2: error: the file holds zero bytes, so it is no UTF-8 text; save it as CSV"
            + " UTF-8",
        problems("date,h".getBytes(StandardCharsets.US_ASCII), new byte[] {0, 'o'}));
    assertEquals(
        "past.csv:1:1: error: A1 holds byte D8, which is not UTF-16LE; save it as CSV UTF-8",
        problems(new byte[] {(byte) 0xFF, (byte) 0xFE, 'x', 0, 0, (byte) 0xD8, 'y', 0})
            .replace("byte 00", "byte D8"));
  }

  @Test
  void whatIsNoSheetIsToldInOneLine() {
    String own =
        "past.csv: error: the file is a spreadsheet program's own; open it there and save the sheet"
            + " as CSV UTF-8";
    assertEquals(own, problems(new byte[] {'P', 'K', 3, 4, 20, 0}));
    assertEquals(own, problems(new byte[] {(byte) 0xD0, (byte) 0xCF, 0x11, (byte) 0xE0}));
    assertEquals(
        "past.csv: error: the file is empty; save the sheet as CSV UTF-8", problems(new byte[0]));
    assertEquals(
        "past.csv: error: the file is empty; save the sheet as CSV UTF-8",
        problems("\uFEFF \n".getBytes(StandardCharsets.UTF_8)));
    assertEquals(
        "past.csv: error: the file is larger than 16 MiB; split it, and bring the parts one by one",
        problems(new byte[SheetText.MOST_BYTES + 1]));
    assertEquals(
        "past.csv: error: no row names a column for the date and one for what was done; name them"
            + " date, hours, phase, cost, note, or say where they are with --column date=A --column"
            + " hours=B",
        problems("PK is no mark\nof ours,hours\n".getBytes(StandardCharsets.UTF_8)));
    assertEquals(
        "past.csv: error: no row tells of a session; check that it is the right sheet",
        SHEETS.outcome("date,hours\n"));
  }

  @Test
  void aSheetHasAtMostFiftyThousandRows() {
    Problems problems = new Problems();
    String rows = "a\n".repeat(SheetRows.MOST_ROWS);
    assertTrue(SheetRows.of("past.csv", rows, Asked.NOTHING, problems).isPresent());
    assertEquals(List.of(), problems.sorted());
    assertTrue(SheetRows.of("past.csv", rows + "b", Asked.NOTHING, problems).isEmpty());
    assertEquals(
        "past.csv: error: the sheet has more than 50,000 rows; split it, and bring the parts one by"
            + " one",
        problems.sorted().get(0).toString());
  }

  @Test
  void quotesThatDoNotEndWhereTheCellDoesAreTold() {
    String told =
        "past.csv:3: error: a quoted cell of row 3 does not end where the cell does; close it, and"
            + " write a quote mark in it twice";
    assertEquals(told, SHEETS.outcome("date,note\n2026-03-14,a\n2026-03-15,\"b\n2026-03-16,c\n"));
    assertEquals(told, SHEETS.outcome("date,note\n2026-03-14,a\n2026-03-15,\"5\" plank\n"));
    assertEquals(
        "2026-03-14 | - | - | 0 | 0.00 | a 5\" plank",
        SHEETS.outcome("date,note\n2026-03-14,a 5\" plank\n"));
  }

  /**
   * The seven definitions of RFC 4180, section 2, with their examples: line ends, a last line
   * without one, a header, spaces that count, quotes, breaks and commas within, doubled quotes.
   */
  @Test
  void theExamplesOfRfc4180AreReadAsItSays() {
    List<List<String>> two = List.of(List.of("aaa", "bbb", "ccc"), List.of("zzz", "yyy", "xxx"));
    assertEquals(two, rows("aaa,bbb,ccc\r\nzzz,yyy,xxx\r\n"));
    assertEquals(two, rows("aaa,bbb,ccc\r\nzzz,yyy,xxx"));
    assertEquals(
        List.of(List.of("field_name", "field_name", "field_name"), two.get(0), two.get(1)),
        rows("field_name,field_name,field_name\r\naaa,bbb,ccc\r\nzzz,yyy,xxx\r\n"));
    assertEquals(List.of(List.of("aaa", " bbb ", "ccc")), rows("aaa, bbb ,ccc"));
    assertEquals(two, rows("\"aaa\",\"bbb\",\"ccc\"\r\nzzz,yyy,xxx"));
    assertEquals(
        List.of(List.of("aaa", "b\r\nbb", "ccc"), two.get(1)),
        rows("\"aaa\",\"b\r\nbb\",\"ccc\"\r\nzzz,yyy,xxx"));
    assertEquals(List.of(List.of("aaa", "b\"bb", "ccc")), rows("\"aaa\",\"b\"\"bb\",\"ccc\""));
  }

  private static List<List<String>> rows(String text) {
    return SheetRows.of("past.csv", text, Asked.NOTHING, new Problems()).orElseThrow().rows();
  }

  private static String problems(byte[]... parts) {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    for (byte[] part : parts) {
      bytes.writeBytes(part);
    }
    return Sheets.problems(SHEETS.read(bytes.toByteArray(), Asked.NOTHING));
  }

  /** Which columns of a header are taken; the last line of what is said of them. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "date,hours | A date, B hours",
        "DAY,HRS | A date, B hours",
        "Date,Day,Hours | A date, C hours",
        "When,What,How long | A date, B note",
        "Night,Duration,Task,Price,Remarks | A date, B hours, C phase, D cost, E note",
        "Evening,h,stage,money,comment | A date, B hours, C phase, D cost, E note",
        "Date,Hours,Hours to date,Rank by hours | A date, B hours",
        "Date,Total hours,Worked | A date, C hours",
        "Date,Work hours,Work | A date, B hours, C phase",
        "Date of work,Time spent,Money spent | A date, B hours, C cost",
        "Session date,Hours on the boat,Cost of materials,Notes for later |"
            + " A date, B hours, C cost, D note",
        "Date,Hours,Start,End | A date, B hours",
        "Date,Hours,Planned cost,Cost per hour,Left | A date, B hours",
        "entry,sessions,hours,cost,hours_to_date,cost_to_date | A entry, C hours, D cost",
        "date,entry,hours | A date, C hours",
        "Date,Minutes | A date, B hours",
        "Part,Date | A phase, B date",
        "Date,Time (min) | A date, B hours",
        "Date:,Hours. | A date, B hours",
      })
  void columnsAreMatchedInPlainWords(String header, String taken) {
    Header found = Header.find(List.of(List.of(header.split(","))), Asked.NOTHING).orElseThrow();
    List<String> columns =
        found.columns().values().stream()
            .sorted((a, b) -> a.index() - b.index())
            .map(column -> CellAt.letters(column.index() + 1) + " " + column.what().word())
            .toList();
    assertEquals(taken, String.join(", ", columns));
  }

  @Test
  void twoColumnsAlikeHaveToBeTold() {
    assertEquals(
        "past.csv:1:2: error: B \"Hours\" and C \"Minutes\" may each be the hours; say which with"
            + " --column hours=B, or write them in one column, as 2:45",
        SHEETS.outcome("Date,Hours,Minutes\n2026-03-14,2,45\n"));
    assertEquals(
        "past.csv:1:2: error: B \"Boat hours\" and C \"Shop hours\" may each be the hours; say which"
            + " with --column hours=B, or write them in one column, as 2:45",
        SHEETS.outcome("Date,Boat hours,Shop hours\n2026-03-14,2,45\n"));
    assertEquals(
        "2026-03-14 | - | - | 0.75 | 0.00 | ",
        SHEETS.outcome(
            "Date,Hours,Minutes\n2026-03-14,2,45\n", Sheets.asked(Map.of(What.HOURS, "C"))));
    assertEquals(
        "past.csv:2:1: error: A \"date\" and B \"date\" may each be the date; say which with --column"
            + " date=A",
        SHEETS.outcome("\ndate,date,hours\n2026-03-14,2026-03-14,2\n"));
  }

  @Test
  void columnsMayBeNamedByLetterNumberOrHeading() {
    String csv = "x,Date,mine,Hours\n1:30,2026-03-14,abc,2\n";
    String half = "2026-03-14 | - | - | 1.5 | 0.00 | ";
    assertEquals(half, SHEETS.outcome(csv, Sheets.asked(Map.of(What.HOURS, "A"))));
    assertEquals(half, SHEETS.outcome(csv, Sheets.asked(Map.of(What.HOURS, "a"))));
    assertEquals(half, SHEETS.outcome(csv, Sheets.asked(Map.of(What.HOURS, "1"))));
    assertEquals(half, SHEETS.outcome(csv, Sheets.asked(Map.of(What.HOURS, "X"))));
    assertEquals(
        half + "abc",
        SHEETS.outcome(csv, Sheets.asked(Map.of(What.HOURS, "x", What.NOTE, "Mine"))));
    assertEquals(
        "2026-03-14 | - | - | 0 | 0.00 | abc",
        SHEETS.outcome(csv, Sheets.asked(Map.of(What.HOURS, "none", What.NOTE, "C"))));
    assertEquals(
        "past.csv:1: error: --column hours=tme names no column; there are x, Date, mine, Hours",
        SHEETS.outcome(csv, Sheets.asked(Map.of(What.HOURS, "tme", What.NOTE, "C"))));
    assertEquals(
        "past.csv:1: error: --column hours=E names no column; there are x, Date, mine, Hours",
        SHEETS.outcome(csv, Sheets.asked(Map.of(What.HOURS, "E", What.NOTE, "C"))));
  }

  @Test
  void columnsNamedByLettersNeedNoHeader() {
    Asked letters = Sheets.asked(Map.of(What.DATE, "A", What.HOURS, "B"));
    assertEquals(
        "2026-03-14 | - | - | 1 | 0.00 | \n2026-03-15 | - | - | 2 | 0.00 | ",
        SHEETS.outcome("2026-03-14;1\n2026-03-15;2\n", letters));
    assertEquals(
        "2026-03-15 | - | - | 2 | 0.00 | ", SHEETS.outcome("a;b\n2026-03-15;2\n", letters));
    assertEquals(
        "past.csv:1:2: error: B1 \"x\" is not a length of time; write 2:45, 2.75 or 2 3/4",
        SHEETS.outcome("2026-03-14;x\n2026-03-15;2\n", letters));
  }

  @Test
  void clockTimesAreNoHours() {
    String csv = "Date,Start,End\n2026-03-14,20:00,22:00\n";
    assertEquals(
        "past.csv:1:2: error: no column tells the hours, but B \"Start\" tells a time; reckon the"
            + " hours in a column of their own, or say --column hours=none",
        SHEETS.outcome(csv));
    assertEquals(
        "2026-03-14 | - | - | 0 | 0.00 | 22:00",
        SHEETS.outcome(csv, Sheets.asked(Map.of(What.HOURS, "none", What.NOTE, "C"))));
  }

  @Test
  void aColumnOfAnotherCurrencyIsRefused() {
    assertEquals(
        "past.csv:1:2: error: column B \"Cost (EUR)\" is in EUR, and the journal in USD; reckon it in"
            + " USD",
        SHEETS.outcome("Date,Cost (EUR)\n2026-03-14,2\n"));
    assertEquals(
        "past.csv:1:2: error: column B \"Cost €\" is in €, and the journal in USD; reckon it in USD",
        SHEETS.outcome("Date,Cost €\n2026-03-14,2\n"));
    String two = "2026-03-14 | - | - | 0 | 2.00 | ";
    for (String heading : List.of("Cost (USD)", "Cost [$]", "Cost (all)", "Cost {net}")) {
      assertEquals(two, SHEETS.outcome("Date," + heading + "\n2026-03-14,2\n"), heading);
    }
  }

  @Test
  void howItWasReadIsSaid() {
    assertEquals(
        List.of(
            "took column A \"Date\" for the date, C \"Time (min)\" for the hours and E \"Note\" for"
                + " the note",
            "did not use column B \"Weather\"",
            "passed over what stands above the header, which is row 3",
            "cells are parted by semicolons",
            "bare numbers of that column for the hours are minutes",
            "passed over row 11, which adds up the rows above it",
            "passed over 6 rows with no hours, cost or note: 5, 6, 7, 8, 9 and 1 more"),
        SHEETS
            .read(
                "Boat\n\nDate;Weather;Time (min);;Note\n2026-03-14;wet;60;;\n2026-03-15\n2026-03-16\n"
                    + "2026-03-17\n2026-03-18;dry\n2026-03-19\n2026-03-20\n;;60\n")
            .remarks());
    assertEquals(
        List.of(
            "took column A \"date\" for the date and B \"hours\" for the hours",
            "passed over 2 rows with no hours, cost or note: 3 and 4"),
        SHEETS.read("date,hours\n2026-03-14,1\n2026-03-15,-\n2026-03-16,0\n").remarks());
    assertEquals(
        List.of(
            "took column A \"date\" for the date and B \"hours\" for the hours",
            "cells are parted by tabs"),
        SHEETS.read("date\thours\n2026-03-14\t1\n").remarks());
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "Total,3,12.50 | passed over row 4, which adds up the rows above it",
        "grand total:,3:00,$12.50 | passed over row 4, which adds up the rows above it",
        ",3, | passed over row 4, which adds up the rows above it",
        "March total,3, | passed over row 4, which adds up the rows above it",
        "Total of March,3, | passed over row 4, which adds up the rows above it",
        "Sum,,12.5 | passed over row 4, which adds up the rows above it",
        "Total,4,12.50 | past.csv:4:1: error: A4 (date) begins a row of sums, but the rows above"
            + " come to 3 h and $12.50; mend a row, or take this one out",
        "Total,3,12.60 | past.csv:4:1: error: A4 (date) begins a row of sums, but the rows above"
            + " come to 3 h and $12.50; mend a row, or take this one out",
        "Total,three,12.50 | past.csv:4:1: error: A4 (date) begins a row of sums, but the rows above"
            + " come to 3 h and $12.50; mend a row, or take this one out",
        "Total,3,twelve | past.csv:4:1: error: A4 (date) begins a row of sums, but the rows above"
            + " come to 3 h and $12.50; mend a row, or take this one out",
        ",3,13 | past.csv:4:1: error: A4 (date) has no date; write one, or take the row out",
        ",2, | past.csv:4:1: error: A4 (date) has no date; write one, or take the row out",
      })
  void aRowOfSumsIsHeldAgainstTheRowsAboveIt(String row, String told) {
    Past past = SHEETS.read("date,hours,cost\n2026-03-14,1,12.50\n2026-03-15,2,\n" + row + "\n");
    assertEquals(
        told,
        past.isSound() ? past.remarks().get(past.remarks().size() - 1) : Sheets.problems(past));
    assertEquals(2, past.sessions().size());
  }

  /** With a row in error the sums cannot agree, so they are not blamed. */
  @Test
  void aRowOfSumsBelowAnErrorIsNotBlamed() {
    assertEquals(
        "past.csv:2:2: error: B2 (hours) \"x\" is not a length of time; write 2:45, 2.75 or 2 3/4",
        SHEETS.outcome("date,hours\n2026-03-14,x\nTotal,4\n"));
    assertEquals(
        "past.csv:2:1: error: A2 (date) has no date; write one, or take the row out",
        SHEETS.outcome("date,hours,note\n,,a word\n2026-03-14,1,\n"));
  }

  @Test
  void everyBadCellIsToldInOneRun() {
    assertEquals(
        """
        past.csv:2:1: error: A2 (date) "soon" is not a date; write year-month-day, as 2026-03-14
        past.csv:2:2: error: B2 (hours) "2;45" is not a length of time; write 2:45, 2.75 or 2 3/4
        past.csv:2:3: error: C2 (phase) "hull" is not among the phases of project.yaml; there are \
        lofting, planking, side-decks; or say --phase "hull=lofting"
        past.csv:3:2: error: B3 (hours) "25" is more than a day has; write one row for each night
        past.csv:3:4: error: D3 (cost) "much" is not an amount of money; write figures alone, as \
        88.20
        past.csv:4:5: error: E4 (note) "a\\u0007b" holds a character that no text has; take it out
        past.csv:5:6: error: F5 "cleaned" stands behind the last heading; put quotes round a cell \
        that holds a separator, or give the column a heading""",
        SHEETS.outcome(
            "date,hours,phase,cost,note\nsoon,2;45,hull,,\n2026-03-14,25,,much,\n"
                + "2026-03-15,24,,,a\u0007b\n2026-03-16,1,,,fitted, cleaned\n"));
  }

  @Test
  void rowsThatSayTheSameAreAllBroughtWithAWarning() {
    Past past =
        SHEETS.read("date,hours\n2026-03-14,1\n2026-03-15,1\n2026-03-14,1:00\n2026-03-14,1\n");
    assertEquals(4, past.sessions().size());
    assertEquals(
        """
        past.csv:4: warning: row 4 says the same as row 2; both are brought, so take one out if it \
        is there twice
        past.csv:5: warning: row 5 says the same as row 2; both are brought, so take one out if it \
        is there twice""",
        Sheets.problems(past));
    assertEquals(
        "past.csv:3:1: error: A3 (entry) names the same entry as A2 (entry); give one another name",
        SHEETS.outcome("entry,hours\n2026-03-14-a,1\n2026-03-14-A,2\n"));
  }

  @Test
  void sessionsStandInTheOrderOfTheirDates() {
    assertEquals(
        "2026-03-13 | - | - | 3 | 0.00 | \n2026-03-14 | - | - | 1 | 0.00 | \n"
            + "2026-03-14 | - | - | 2 | 0.00 | ",
        SHEETS.outcome("date,hours\n2026-03-14,1\n2026-03-14,2\n2026-03-13,3\n"));
  }

  /** The mark that our own CSV puts before words which a spreadsheet would take for a formula. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '"',
      value = {
        "'=1+1 | =1+1",
        "'- swept | - swept",
        "'@home | @home",
        "'+ more | + more",
        "'tis done | 'tis done",
        "' = | ' =",
      })
  void theGuardAgainstFormulasIsTakenOff(String cell, String note) {
    assertEquals(
        "2026-03-14 | - | - | 0 | 0.00 | " + note,
        SHEETS.outcome("date\tnote\n2026-03-14\t" + cell + "\n"));
  }

  @Test
  void aNoteKeepsItsLines() {
    assertEquals(
        "2026-03-14 | - | - | 0 | 0.00 | a\nb\n\nc\nd",
        SHEETS.outcome("date,note\n2026-03-14,\" a\r\nb\r\rc\u2028d \"\n"));
  }

  @Test
  void twelveMayBeADayOrAMonth() {
    for (String date : List.of("12/5/2026", "5/12/2026")) {
      assertEquals(
          "past.csv:2:1: error: A2 (date) \""
              + date
              + "\" may have the day or the month first; say which with --dates day-first or"
              + " --dates month-first",
          SHEETS.outcome("date,hours\n" + date + ",1\n"));
    }
    assertEquals(
        1,
        SHEETS
            .read("date,hours\n14/3/2026,1\n3/14/2026,1\n13/12/2026,1\n12/13/2026,1\n")
            .problems()
            .size());
  }

  @Test
  void aRowThatIsTooLongIsToldOnceAndOnlyBelowAHeader() {
    assertEquals(1, SHEETS.read("date,hours\nsoon,x,y\n").problems().size());
    assertEquals(
        "2026-03-14 | - | - | 1 | 0.00 | \n2026-03-15 | - | - | 2 | 0.00 | ",
        SHEETS.outcome(
            "2026-03-14,1\n2026-03-15,2,swept\n",
            Sheets.asked(Map.of(What.DATE, "A", What.HOURS, "B"))));
  }

  @Test
  void aPhaseForRowsWithoutOneIsToldAtTheirDate() {
    Asked asked = new Asked(Map.of(), Map.of("", "hull"), Optional.empty());
    assertEquals(
        "past.csv:2:1: error: A2 (date) \"\" is not among the phases of project.yaml; there are"
            + " lofting, planking, side-decks; or say --phase \"hull=lofting\"",
        SHEETS.outcome("date,hours\n2026-03-14,1\n", asked));
  }

  @Test
  void emptyRowsAndHeadingsAreNothing() {
    Past past = SHEETS.read("date,,hours\n\n2026-03-14,,1\n,,\n\n2026-03-15,,1\n");
    assertEquals(
        List.of("took column A \"date\" for the date and C \"hours\" for the hours"),
        past.remarks());
    assertEquals(
        List.of(3, 6), past.sessions().stream().map(session -> session.at().row()).toList());
    assertEquals(
        "past.csv:1: error: --column note=z names no column; there are date, hours",
        SHEETS.outcome("date,,hours\n2026-03-14,,1\n", Sheets.asked(Map.of(What.NOTE, "z"))));
  }

  @Test
  void aColumnIsTakenForOneThing() {
    assertEquals(
        "2026-03-14 | - | - | 0 | 0.00 | 2",
        SHEETS.outcome("date,hours\n2026-03-14,2\n", Sheets.asked(Map.of(What.NOTE, "B"))));
    assertTrue(
        SHEETS.outcome("date\n2026-03-14\n").startsWith("past.csv: error: no row names a column"));
  }

  @Test
  void thousandsMarksTellTheDecimalMarkToo() {
    assertEquals(
        "2026-03-14 | - | - | 0 | 1234567.00 | \n2026-03-15 | - | - | 0 | 1234.00 | ",
        SHEETS.outcome("date;cost\n2026-03-14;1,234,567\n2026-03-15;1,234\n"));
    assertEquals(
        "past.csv:2:2: error: B2 (cost) \"123,456\" may be 123456 or 123.456; write it without a"
            + " thousands mark, as 123456.00",
        SHEETS.outcome("date;cost\n2026-03-14;123,456\n"));
  }

  @Test
  void columnsHaveLetters() {
    assertEquals(
        List.of("A", "Z", "AA", "AZ", "BA", "ZZ", "AAA"),
        List.of(1, 26, 27, 52, 53, 702, 703).stream().map(CellAt::letters).toList());
  }

  /** A first line that names the separator is no row, and only that line is one. */
  @Test
  void theLineThatNamesTheSeparatorIsNoRow() {
    Past named = SHEETS.read("sep=;\ndate;hours\n2026-03-14;1\n");
    List<String> told =
        List.of(
            "took column A \"date\" for the date and B \"hours\" for the hours",
            "cells are parted by semicolons");
    assertEquals(told, named.remarks());
    assertEquals(2, named.sessions().get(0).at().row());
    assertEquals(told, SHEETS.read("SEP=;\r\ndate;hours\r\n2026-03-14;1\r\n").remarks());
    assertEquals(
        List.of(
            told.get(0),
            "passed over what stands above the header, which is row 2",
            "cells are parted by semicolons"),
        SHEETS.read("sep=; it says\ndate;hours\n2026-03-14;1\n").remarks());
    // What the line names is taken, though another would know more of the headings.
    assertEquals(
        "past.csv: error: no row names a column for the date and one for what was done; name them"
            + " date, hours, phase, cost, note, or say where they are with --column date=A --column"
            + " hours=B",
        SHEETS.outcome("sep=;\ndate,hours\n2026-03-14,1\n"));
    Problems problems = new Problems();
    assertEquals(
        Optional.of(new SheetRows(SheetRows.Separator.SEMICOLON, List.of())),
        SheetRows.of("past.csv", "sep=;", Asked.NOTHING, problems));
  }

  @Test
  void emptyRowsTellNothingOfTheSheet() {
    Asked letters = Sheets.asked(Map.of(What.DATE, "A", What.HOURS, "B"));
    String sessions = "2026-03-14 | - | - | 1 | 0.00 | \n2026-03-15 | - | - | 2 | 0.00 | ";
    assertEquals(sessions, SHEETS.outcome("\n2026-03-14;1\n2026-03-15;2\n", letters));
    assertEquals(sessions, SHEETS.outcome(",\n2026-03-14,1\n2026-03-15,2,swept\n", letters));
  }

  /** The weather of a night without work. */
  @Test
  void aRowWithNothingInTheColumnsThatAreTakenIsPassedOver() {
    Past past = SHEETS.read("date,weather,hours\n2026-03-14,,1\n,wet,\n");
    assertEquals(
        "passed over 1 row with no hours, cost or note: 3",
        past.remarks().get(past.remarks().size() - 1));
    assertEquals("", Sheets.problems(past));
  }

  @Test
  void zeroBytesAreToldOnceWhereverTheyStand() {
    assertEquals(
        "past.csv:1:1: error: the file holds zero bytes, so it is no UTF-8 text; save it as CSV UTF-8",
        SHEETS.outcome("\0date,hours\n2026-03-14,1\n"));
    assertEquals(
        "past.csv:2:2: error: the file holds zero bytes, so it is no UTF-8 text; save it as CSV UTF-8",
        SHEETS.outcome("date,hours\n2026-03-14,1\0\nsoon,2\n"));
  }

  @Test
  void theLargestFileIsRead() {
    byte[] blank = new byte[PastReader.MOST_BYTES];
    Arrays.fill(blank, (byte) ' ');
    assertEquals(
        "past.csv: error: the file is empty; save the sheet as CSV UTF-8",
        Sheets.problems(SHEETS.read(blank, Asked.NOTHING)));
    byte[] larger = Arrays.copyOf(blank, blank.length + 1);
    assertEquals(
        "past.csv: error: the file is larger than 16 MiB; split it, and bring the parts one by one",
        Sheets.problems(SHEETS.read(larger, Asked.NOTHING)));
  }
}
