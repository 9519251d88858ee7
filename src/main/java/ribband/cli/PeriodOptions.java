package ribband.cli;

import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.time.Year;
import java.time.YearMonth;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import ribband.journal.JournalFolder;
import ribband.measure.Unreadable;

/** Which month or year of which journal, as typed. */
final class PeriodOptions {
  @Parameters(
      index = "0",
      arity = "0..1",
      paramLabel = "MONTH",
      description = "as 2026-03; without it the last full month")
  private String first;

  @Parameters(
      index = "1",
      arity = "0..1",
      paramLabel = "JOURNAL",
      description = "its folder; without it the nearest one upward with a project.yaml")
  private String second;

  @Option(names = "--year", paramLabel = "YEAR", description = "a whole year instead, as 2026")
  private String year;

  /**
   * What was asked for.
   *
   * @param month empty where none is named
   * @param folder of the journal, as typed
   */
  record Asked(Optional<YearMonth> month, Optional<Year> year, Optional<String> folder) {}

  /**
   * Reads it: the two arguments may stand in either order.
   *
   * @throws Refusal where one is neither a month nor a folder
   */
  Asked read(Surroundings around) {
    List<String> typed = Stream.of(first, second).flatMap(Stream::ofNullable).toList();
    List<YearMonth> months = typed.stream().flatMap(t -> MonthWord.read(t).stream()).toList();
    List<String> others = typed.stream().filter(t -> MonthWord.read(t).isEmpty()).toList();
    if (months.size() > 1) {
      throw Refusal.wrongUsage("two months are named, " + first + " and " + second + "; keep one");
    }
    for (String other : others) {
      boolean isOneTooMany = others.size() > 1 && !isThere(around, other);
      if (isOneTooMany || MonthWord.isMeant(other) && !isJournal(around, other)) {
        throw Refusal.wrongValue("MONTH", other, MonthWord.wrong(other));
      }
    }
    if (others.size() > 1) {
      throw Refusal.wrongUsage(
          "two folders are named, " + first + " and " + second + "; keep one, or write a month");
    }
    if (year != null && !months.isEmpty()) {
      throw Refusal.wrongUsage(
          "--year " + year + " and " + months.get(0) + " are both named; keep one");
    }
    return new Asked(months.stream().findFirst(), year(), others.stream().findFirst());
  }

  private static boolean isThere(Surroundings around, String folder) {
    try {
      return Files.isDirectory(around.path(folder));
    } catch (InvalidPathException e) {
      return false;
    }
  }

  /** A journal keeps its entries in a folder a year, and that is not what is meant by the year. */
  private static boolean isJournal(Surroundings around, String folder) {
    try {
      return Files.isRegularFile(around.path(folder).resolve(JournalFolder.PROJECT));
    } catch (InvalidPathException e) {
      return false;
    }
  }

  private Optional<Year> year() {
    if (year == null) {
      return Optional.empty();
    }
    if (!year.strip().matches("[0-9]{4}")) {
      throw Refusal.wrongValue("--year", year, new Unreadable("is no year", "write it as 2026"));
    }
    return Optional.of(Year.of(DayRange.read("--year", year).first().getYear()));
  }
}
