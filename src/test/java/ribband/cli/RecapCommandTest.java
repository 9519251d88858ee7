package ribband.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import ribband.cli.InMemory.Run;

/** Which month or year is told, and what is said where none can be. */
class RecapCommandTest {
  @TempDir Path folder;

  private InMemory boat(String... days) throws IOException {
    InMemory here = new InMemory(folder).with("boat/project.yaml", "name: Teal\nphases: [hull]\n");
    for (String day : days) {
      here.with("boat/" + day + ".md", "---\nphase: hull\nhours: 1\n---\n");
    }
    return here;
  }

  /** The heading, and what is noted. */
  private static String told(Run run) {
    assertEquals(0, run.code(), run.err());
    return run.out().lines().findFirst().orElseThrow()
        + (run.err().isEmpty() ? "" : "; ")
        + run.err().strip();
  }

  private static void refused(String sentence, Run run) {
    assertEquals(new Run(2, "", "ribband: " + sentence + "\n"), run);
  }

  @Test
  void withoutAMonthTheLastFullOneIsTold() throws IOException {
    InMemory here = boat("2026-03-01", "2026-07-01");
    for (String today : List.of("2026-06-01", "2026-06-30")) {
      assertEquals("Teal, May 2026", told(here.run("recap", "boat", "--today", today, "--quiet")));
    }
    assertEquals("Teal, May 2026", told(here.run("recap", "boat", "--quiet")));
  }

  @Test
  void whereTheJournalEndsBeforeItItsLastMonthIsTold() throws IOException {
    InMemory here = boat("2026-02-01", "2026-03-01");
    assertEquals(
        "Teal, March 2026; the last entry is of March 2026, so that month is told",
        told(here.run("recap", "boat")));
    assertEquals("Teal, March 2026", told(here.run("recap", "boat", "--quiet")));
  }

  @Test
  void whereTheJournalBeginsAfterItItsFirstMonthIsTold() throws IOException {
    InMemory here = boat("2026-06-01");
    assertEquals(
        "Teal, June 2026 so far; the journal begins in June 2026, so that month is told",
        told(here.run("recap", "boat")));
  }

  @Test
  void aMonthOrYearIsToldSoFarUntilItsLastDayIsOver() throws IOException {
    InMemory here = boat("2026-04-30");
    assertEquals(
        "Teal, April 2026 so far",
        told(here.run("recap", "2026-04", "boat", "--today", "2026-04-30")));
    assertEquals(
        "Teal, April 2026", told(here.run("recap", "2026-04", "boat", "--today", "2026-05-01")));
    assertEquals(
        "Teal, 2026 so far",
        told(here.run("recap", "boat", "--year", "2026", "--today", "2026-12-31")));
    assertEquals(
        "Teal, 2026", told(here.run("recap", "boat", "--year", "2026", "--today", "2027-01-01")));
  }

  @Test
  void monthAndJournalStandInEitherOrder() throws IOException {
    InMemory here = boat("2026-03-01", "2026-04-01");
    assertEquals("Teal, March 2026", told(here.run("recap", "2026-03", "boat")));
    assertEquals("Teal, March 2026", told(here.run("recap", "boat", "2026-03")));
    assertEquals(
        "Teal, March 2026", told(new InMemory(folder.resolve("boat")).run("recap", "2026-03")));
  }

  @Test
  void aFolderMayBeCalledLikeAMonthMistyped() throws IOException {
    InMemory here = boat("2026-03-01", "2026-04-01");
    Files.move(folder.resolve("boat"), folder.resolve("2026"));
    assertEquals("Teal, March 2026", told(here.run("recap", "2026", "2026-03")));
    Files.move(folder.resolve("2026"), folder.resolve("2026-03"));
    assertEquals("Teal, April 2026", told(here.run("recap", "./2026-03", "2026-04")));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = ';',
      value = {
        "2026-13; has no such month; months go from 01 to 12",
        "2026-00; has no such month; months go from 01 to 12",
        "1026-03; is too long ago; write the year in full, as 2026-03",
        "2026-3; is no month; write 2026-03",
        "2026-03-14; is no month; write 2026-03",
        "2026/03; is no month; write 2026-03",
        "202603; is no month; write 2026-03",
        "03/2026; is no month; write 2026-03",
        "3.2026; is no month; write 2026-03",
        "march 2026; is no month; write 2026-03",
        "Mar. 2026; is no month; write 2026-03",
        "'March, 2026'; is no month; write 2026-03",
        "2026-march; is no month; write 2026-03",
        "dec-2025; is no month; write 2025-12",
        "march; is no month; write it as 2026-03",
        "marhc; is no month; write it as 2026-03",
        "sept; is no month; write it as 2026-03",
        "13/2026; is no month; write it as 2026-03",
        "2026-14-01; is no month; write it as 2026-03",
        "3; is no month; write it as 2026-03",
        "2026; is a year and no month; write --year 2026"
      })
  void aMistypedMonthIsToldWithItsCure(String typed, String wrong, String cure) throws IOException {
    InMemory here = boat("2026-03-01");
    String line = "MONTH \"" + typed + "\" " + wrong + "; " + cure;
    refused(line, here.run("recap", typed, "boat"));
    refused(line, here.run("recap", "boat", typed));
    refused(line, new InMemory(folder.resolve("boat")).run("recap", typed));
  }

  @Test
  void whatIsNeitherIsAFolderWhereItStandsAloneAndAMonthBesideOne() throws IOException {
    InMemory here = boat("2026-03-01");
    refused(
        "there is no folder bota; begin a journal there with: ribband lay bota",
        here.run("recap", "bota"));
    refused(
        "there is no folder bota; begin a journal there with: ribband lay bota",
        here.run("recap", "bota", "2026-03"));
    refused("MONTH \"last\" is no month; write it as 2026-03", here.run("recap", "last", "boat"));
  }

  @Test
  void whatIsNamedTwiceIsRefused() throws IOException {
    InMemory here = boat("2026-03-01");
    refused(
        "two months are named, 2026-03 and 2026-04; keep one",
        here.run("recap", "2026-03", "2026-04"));
    refused(
        "two folders are named, boat and .; keep one, or write a month",
        here.run("recap", "boat", "."));
    refused(
        "--year 2026 and 2026-03 are both named; keep one",
        here.run("recap", "boat", "2026-03", "--year", "2026"));
  }

  @Test
  void whatTheJournalDoesNotHaveIsRefusedWithWhatItHas() throws IOException {
    InMemory here = boat("2025-12-01", "2026-03-01");
    String has = "; it has December 2025 to March 2026";
    refused("the journal has nothing of November 2025" + has, here.run("recap", "2025-11", "boat"));
    refused("the journal has nothing of April 2026" + has, here.run("recap", "2026-04", "boat"));
    refused(
        "the journal has nothing of 2024; it has 2025 to 2026",
        here.run("recap", "boat", "--year", "2024"));
    assertEquals("Teal, January 2026", told(here.run("recap", "2026-01", "boat")));
  }

  @Test
  void oneMonthAloneIsNamedAlone() throws IOException {
    InMemory here = boat("2026-03-01");
    refused(
        "the journal has nothing of April 2026; it has March 2026 alone",
        here.run("recap", "2026-04", "boat"));
    refused(
        "the journal has nothing of 2027; it has 2026 alone",
        here.run("recap", "boat", "--year", "2027"));
  }

  @Test
  void aJournalWithoutAnEntryHasNoMonth() throws IOException {
    refused(
        "the journal has no entry yet, so there is no month to tell", boat().run("recap", "boat"));
    refused(
        "the journal has no entry yet, so there is no month to tell",
        boat().run("recap", "boat", "--year", "2026"));
  }

  @Test
  void aMistypedYearOrFormatIsToldWithItsCure() throws IOException {
    InMemory here = boat("2026-03-01");
    refused(
        "--year \"26\" is no year; write it as 2026", here.run("recap", "boat", "--year", "26"));
    refused(
        "--year \"2026-03\" is no year; write it as 2026",
        here.run("recap", "boat", "--year", "2026-03"));
    refused(
        "--format \"markdwon\" is no format; did you mean \"markdown\"?",
        here.run("recap", "boat", "--format", "markdwon"));
    assertEquals(
        "## Teal, March 2026",
        here.run("recap", "2026-03", "boat", "--format", "MARKDOWN").out().lines().toList().get(0));
  }

  @Test
  void noFigureIsToldOfAJournalWithErrors() throws IOException {
    InMemory here = boat("2026-03-01");
    here.with("boat/2026-03-02.md", "---\nhours: lots\n---\n");
    Run run = here.run("recap", "boat");
    assertEquals(1, run.code());
    assertEquals("", run.out());
    List<String> lines = run.err().lines().toList();
    assertTrue(lines.get(0).startsWith("2026-03-02.md:2:8: error: hours \"lots\""), run.err());
    assertEquals("1 error in 2 entries, no figure is told", lines.get(1));
  }
}
