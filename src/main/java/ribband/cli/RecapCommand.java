package ribband.cli;

import java.io.IOException;
import java.time.LocalDate;
import java.time.Year;
import java.time.YearMonth;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import ribband.journal.Journal;
import ribband.ledger.Ledger;
import ribband.measure.Saying;
import ribband.recap.Recap;
import ribband.recap.Recaps;
import ribband.telling.RecapText;

/** Tells a month or a year as text. */
@Command(
    name = "recap",
    header = "Tell a month or a year, to be pasted under a video or a post",
    description =
        "Hours and how they rank, where they went, money, pieces, the longest night and what comes"
            + " next. What the journal hides stays hidden: with show money: false no amount is told,"
            + " and of a private entry its figures alone.",
    footer = {
      "  ribband recap                              the last full month",
      "  ribband recap 2026-03                      one month",
      "  ribband recap 2026-03 --format markdown    for a post",
      "  ribband recap --year 2026                  a whole year"
    })
final class RecapCommand implements Callable<Integer> {
  private final Surroundings around;

  @Mixin private PeriodOptions period;

  @Option(
      names = "--format",
      paramLabel = "HOW",
      defaultValue = "plain",
      order = 80,
      description = TextFormat.NAMES)
  private String format;

  @Mixin private Common options;

  RecapCommand(Surroundings around) {
    this.around = around;
  }

  @Override
  public Integer call() throws IOException, InterruptedException {
    TextFormat how = TextFormat.read(format);
    PeriodOptions.Asked asked = period.read(around);
    LocalDate today = options.today(around.clock());
    Journal read = SoundJournal.read(around, asked.folder(), options);
    Recaps recaps = Recaps.of(read, Ledger.of(read));
    Recap recap = recap(recaps, asked, today);
    around.out().print(how.of(new RecapText(recap, recaps.next(recap))));
    return ExitCode.DONE;
  }

  private Recap recap(Recaps recaps, PeriodOptions.Asked asked, LocalDate today) {
    if (recaps.months().isEmpty()) {
      throw Refusal.wrongUsage("the journal has no entry yet, so there is no month to tell");
    }
    Recap recap =
        asked
            .year()
            .map(year -> year(recaps, year))
            .orElseGet(() -> month(recaps, asked.month().orElseGet(() -> last(recaps, today))));
    return today.isAfter(recap.last()) ? recap : recap.soFar();
  }

  private static Recap month(Recaps recaps, YearMonth month) {
    return recaps
        .month(month)
        .orElseThrow(
            () ->
                notThere(
                    month,
                    Saying.month(recaps.months().get(0)),
                    Saying.month(recaps.months().get(recaps.months().size() - 1))));
  }

  private static Recap year(Recaps recaps, Year year) {
    return recaps
        .year(year)
        .orElseThrow(
            () ->
                notThere(
                    year,
                    recaps.years().get(0).toString(),
                    recaps.years().get(recaps.years().size() - 1).toString()));
  }

  private static Refusal notThere(Object asked, String first, String last) {
    return Refusal.wrongUsage(
        "the journal has nothing of "
            + asked
            + "; it has "
            + (first.equals(last) ? first + " alone" : first + " to " + last));
  }

  /** The last full month, or the one nearest to it that the journal has. */
  private YearMonth last(Recaps recaps, LocalDate today) {
    YearMonth full = YearMonth.from(today).minusMonths(1);
    YearMonth first = recaps.months().get(0);
    YearMonth last = recaps.months().get(recaps.months().size() - 1);
    if (full.isBefore(first)) {
      note("the journal begins in " + Saying.month(first) + ", so that month is told");
      return first;
    }
    if (full.isAfter(last)) {
      note("the last entry is of " + Saying.month(last) + ", so that month is told");
      return last;
    }
    return full;
  }

  private void note(String line) {
    if (!options.isQuiet()) {
      around.err().println(line);
    }
  }
}
